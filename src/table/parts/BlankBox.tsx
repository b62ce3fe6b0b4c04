import type { VNode } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Option } from '../model/options.ts';
import type { Say } from '../say.ts';
import { type BlankControl, type BlankState, useBlank } from './use-blank.ts';
import { useSelectOnPress } from './use-select-on-press.ts';
import { useWithinPage } from './use-within-page.ts';

export interface BlankBoxProps extends BlankControl {
  readonly id: string;
  readonly label: string;
  /** What it asks for, in the empty blank. */
  readonly wanted: string;
  /** The blank that pointing fills. */
  readonly current: boolean;
  readonly field: string;
  readonly autoFocus?: boolean;
  readonly onFocus: () => void;
  /** Left, with nothing in it that could not be read. */
  readonly onTaken?: () => void;
}

/** A blank in a sentence: type into it, or open its list. (The third hand, pointing, fills it from the sheet.) */
export function BlankBox(props: BlankBoxProps): VNode {
  const { id, label, current, field, say } = props;
  const state = useBlank(props, props.autoFocus === true);
  return (
    <span class="blank" data-current={current} data-field={field} data-unread={state.unread}>
      <BlankInput {...props} state={state} />
      <BlankNote id={id} state={state} />
      <BlankList id={id} label={label} state={state} say={say} />
    </span>
  );
}

/** What is typed into, and works the list. */
function BlankInput(props: BlankBoxProps & { readonly state: BlankState }): VNode {
  const { id, label, wanted, state } = props;
  const input = useRef<HTMLInputElement>(null);
  const pressed = useSelectOnPress(state.toggle);
  useLayoutEffect(() => {
    if (!props.autoFocus) return;
    input.current?.focus();
    // What is typed takes the place of what stands there.
    input.current?.select();
  }, [props.autoFocus]);
  return (
    <input
      ref={input}
      id={id}
      class="blank-input"
      type="text"
      role="combobox"
      aria-label={label}
      aria-expanded={state.open}
      aria-controls={`${id}-list`}
      aria-autocomplete="list"
      aria-activedescendant={state.open && state.active >= 0 ? `${id}-${state.active}` : undefined}
      aria-invalid={state.trouble !== null}
      aria-describedby={state.trouble || state.worth ? `${id}-note` : undefined}
      autocomplete="off"
      autocapitalize="none"
      spellcheck={false}
      inputMode={keyboardFor(props.blank)}
      size={Math.max(4, Math.min(34, (state.value || wanted).length))}
      placeholder={wanted}
      value={state.value}
      onFocus={() => {
        state.focus();
        props.onFocus();
      }}
      {...pressed}
      onInput={(event) => state.type(event.currentTarget.value)}
      onKeyDown={state.key}
      onBlur={() => {
        if (state.blur()) props.onTaken?.();
      }}
    />
  );
}

/** On a screen with its own keyboard, objects are pointed at or chosen: the keyboard would cover the sheet. */
function keyboardFor({ takes }: BlankControl['blank']): 'none' | 'text' {
  return takes === 'object' || takes === 'objects' || takes === 'run' ? 'none' : 'text';
}

function BlankNote({ id, state }: { readonly id: string; readonly state: BlankState }): VNode | null {
  const note = state.trouble ?? state.worth;
  const hung = useRef<HTMLSpanElement>(null);
  useWithinPage(hung, note);
  if (note === null) return null;
  return (
    <span
      ref={hung}
      id={`${id}-note`}
      class={state.trouble ? 'blank-note blank-note--trouble' : 'blank-note'}
      role={state.trouble ? 'alert' : undefined}
    >
      {note}
    </span>
  );
}

interface BlankListProps {
  readonly id: string;
  readonly label: string;
  readonly state: BlankState;
  readonly say: Say;
}

function BlankList({ id, label, state, say }: BlankListProps): VNode {
  const hung = useRef<HTMLDivElement>(null);
  useWithinPage(hung, state.open);
  return (
    // A list that the combobox works: it keeps the focus and points at the active entry.
    <div ref={hung} id={`${id}-list`} class="blank-list" role="listbox" aria-label={label} hidden={!state.open}>
      {state.shown.map((option: Option, index) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: keys are taken by the combobox.
        <div
          key={JSON.stringify(option.value)}
          id={`${id}-${index}`}
          class="blank-option"
          role="option"
          tabIndex={-1}
          aria-selected={index === state.active}
          onPointerEnter={() => state.light(index)}
          // Before the input loses the focus.
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => state.choose(option)}
        >
          {say.message(option.words)}
        </div>
      ))}
    </div>
  );
}
