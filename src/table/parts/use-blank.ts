import { useLayoutEffect, useState } from 'preact/hooks';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Blank } from '../../drafting/verbs.ts';
import { type Message, message } from '../../words/message.ts';
import type { Filling } from '../model/bench.ts';
import type { Option } from '../model/options.ts';
import { readTyped, type Typed } from '../model/typed.ts';
import type { Say } from '../say.ts';
import { amountText, isAmount, isWrong, narrowed, onlyOne } from './blank-list.ts';

/** A blank as it is filled by hand: what it takes, what its list offers, and what to do with what was chosen. */
export interface BlankControl {
  readonly blank: Blank;
  /** As it reads while nobody types in it, and as it is typed. */
  readonly text: string;
  readonly typed: string;
  readonly options: readonly Option[];
  /** Whether its entries lie in a row beside it already: the list then opens only for what is not among them. */
  readonly inRow?: boolean;
  readonly sheet: Sheet;
  readonly say: Say;
  readonly onFill: (value: Filling) => void;
  /** Emptied by deleting its words. */
  readonly onClear: () => void;
  readonly onLight: (name: Name | null) => void;
  /** Filled by keys: on to the next blank. */
  readonly onNext: () => void;
  /** Enter where there is nothing left to take. */
  readonly onEnter: () => void;
  readonly onEscape: () => void;
}

export interface BlankState {
  readonly value: string;
  readonly open: boolean;
  readonly active: number;
  /** Whether words stand in it that were left there and could not be read. */
  readonly unread: boolean;
  readonly trouble: string | null;
  /** What an amount comes to while it is typed. */
  readonly worth: string | null;
  readonly shown: readonly Option[];
  readonly focus: () => void;
  readonly type: (text: string) => void;
  readonly choose: (option: Option) => void;
  readonly light: (index: number) => void;
  readonly key: (event: KeyboardEvent) => void;
  /** Whether what was typed was taken, or nothing was. */
  readonly blur: () => boolean;
  readonly toggle: () => void;
}

/**
 * The state of a combobox: typed words, the open list and its active entry. Every way of filling ends in `onFill`. `begins`:
 * whether it has the focus from the first. Its list is then open too, for a finger may find no keyboard under it (`inputMode`);
 * an amount's is not, for that is typed.
 */
export function useBlank(control: BlankControl, begins = false): BlankState {
  const [typing, setters] = useTyping(control, begins);
  const { words, read, shown, open, active, focused } = typing;
  const { blank, say } = control;
  const light = (index: number): void => {
    setters.setOpen(true);
    setters.setActive(index);
    control.onLight(shown[index]?.lights ?? null);
  };
  const hand = handOf(control, typing, setters);
  return {
    value: words ?? (focused && isAmount(blank) ? control.typed : control.text),
    open: open && shown.length > 0,
    active,
    unread: words !== null && words.trim() !== '' && !focused,
    trouble:
      read && !read.ok && (!focused || isWrong(blank, shown)) ? say.message(troubleOf(read, blank, typing)) : null,
    worth: read?.ok && read.worth ? amountText(read.worth, say) : null,
    shown,
    focus: () => {
      setters.setFocused(true);
      // Words that were left here unread: which of the list was meant?
      if (words !== null) setters.setOpen(true);
    },
    type: (text) => {
      setters.setWords(text);
      setters.setOpen(
        !control.inRow || narrowed(control.options, text, blank, say).some(({ lights }) => lights !== null),
      );
      setters.setActive(-1);
    },
    choose: hand.choose,
    light,
    key: (event) => {
      const act = keyAct(event.key, { hand, light, open, active, last: shown.length - 1 });
      if (!act) return;
      event.preventDefault();
      event.stopPropagation();
      act();
    },
    blur: () => leaveBlank(hand, setters),
    toggle: () => setters.setOpen(!open && !control.inRow),
  };
}

/** What is typed, and how the list under it lies. */
function useTyping(control: BlankControl, begins: boolean): readonly [Typing, Setters] {
  const { blank, options, sheet, say, typed } = control;
  const [words, setWords] = useState<string | null>(null);
  const [open, setOpen] = useState(begins && !isAmount(blank));
  const [active, setActive] = useState(-1);
  const [focused, setFocused] = useState(begins);
  // biome-ignore lint/correctness/useExhaustiveDependencies: filled from the sheet meanwhile, what was being typed is over.
  useLayoutEffect(() => setWords(null), [typed]);
  const shown = narrowed(options, words, blank, say);
  const read = words === null || words.trim() === '' ? null : readTyped(words, blank, sheet, options, say.message);
  return [
    { words, read, shown, open, active, focused },
    { setWords, setOpen, setActive, setFocused },
  ];
}

/** Leaves the blank: what was typed is taken where it can be read, and stays with its trouble where it cannot. */
function leaveBlank(hand: BlankHand, { setFocused, setOpen }: Setters): boolean {
  setFocused(false);
  const taken = hand.take();
  if (taken) hand.settle();
  else setOpen(false);
  return taken;
}

/** Of words that several entries of the list have in them, which of these are meant has to be said. */
function troubleOf({ message: why }: Typed & { readonly ok: false }, blank: Blank, { words, shown }: Typing): Message {
  return !isAmount(blank) && shown.length > 1 ? message('table.which-of', { text: (words ?? '').trim() }) : why;
}

interface Typing {
  readonly words: string | null;
  readonly read: Typed | null;
  readonly shown: readonly Option[];
  readonly open: boolean;
  readonly active: number;
  readonly focused: boolean;
}

interface Setters {
  readonly setWords: (words: string | null) => void;
  readonly setOpen: (open: boolean) => void;
  readonly setActive: (active: number) => void;
  readonly setFocused: (focused: boolean) => void;
}

/** What a key or a press comes to in the end. */
interface BlankHand {
  readonly settle: () => void;
  readonly choose: (option: Option) => void;
  /** Takes what was typed; false when it cannot be read. */
  readonly take: () => boolean;
  readonly enter: () => void;
  readonly leave: () => void;
}

function handOf(
  control: BlankControl,
  { words, read, shown, open, active }: Typing,
  { setWords, setOpen, setActive }: Setters,
): BlankHand {
  const settle = (): void => {
    setWords(null);
    setOpen(false);
    setActive(-1);
    control.onLight(null);
  };
  const choose = (option: Option): void => {
    settle();
    control.onFill(option.value);
  };
  const take = (): boolean => {
    if (words === null) return true;
    const only = words.trim() === '' ? null : onlyOne(shown, words, control.say);
    if (words.trim() === '') control.onClear();
    else if (read?.ok) control.onFill(read.value);
    else if (only) control.onFill(only.value);
    else return false;
    settle();
    return true;
  };
  const enter = (): void => {
    const option = open ? shown[active] : undefined;
    if (option) {
      choose(option);
      control.onNext();
    } else if (words === null) control.onEnter();
    else if (take()) control.onNext();
    else setOpen(shown.length > 0);
  };
  const leave = (): void => (open || words !== null ? settle() : control.onEscape());
  return { settle, choose, take, enter, leave };
}

interface KeyInputs {
  readonly hand: BlankHand;
  readonly light: (index: number) => void;
  readonly open: boolean;
  readonly active: number;
  readonly last: number;
}

/** What a key does in a blank; null where it is only typed. */
function keyAct(key: string, { hand, light, open, active, last }: KeyInputs): (() => void) | null {
  if (key === 'Enter') return hand.enter;
  if (key === 'Escape') return hand.leave;
  if (key === 'ArrowDown') return () => light(Math.min(last, open ? active + 1 : Math.max(active, 0)));
  return key === 'ArrowUp' ? () => light(Math.max(0, open ? active - 1 : last)) : null;
}
