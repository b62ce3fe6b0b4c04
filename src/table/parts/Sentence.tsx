import type { VNode } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Blank } from '../../drafting/verbs.ts';
import type { Target } from '../../grader/exercise.ts';
import type { Hand } from '../model/bench.ts';
import { kindMade, missing, takesMore } from '../model/hand.ts';
import { type Option, optionsFor } from '../model/options.ts';
import { readingOf } from '../model/reading.ts';
import { fieldsOf, toolFor } from '../model/tools.ts';
import type { Say } from '../say.ts';
import { useUnder } from '../under-pointer.ts';
import type { Dispatch } from '../use-bench.ts';
import type { Looks } from './Ahead.tsx';
import { AnyBlank } from './AnyBlank.tsx';
import { blankFor } from './blank-for.ts';
import { wantedIn } from './blank-words.ts';
import { Chips } from './Chips.tsx';
import { DrawIt, NEXT_BLANK, UNREAD_BLANK } from './DrawIt.tsx';
import { type Piece, piecesOf } from './sentence-pieces.ts';
import { TargetSelect } from './TargetSelect.tsx';
import { useInSight } from './use-in-sight.ts';

interface SentenceProps {
  readonly hand: Hand | null;
  readonly sheet: Sheet;
  readonly looks: Looks;
  readonly targets: readonly Target[];
  readonly shown: (name: Name) => boolean;
  readonly say: Say;
  readonly dispatch: Dispatch;
  readonly onLight: (name: Name | null) => void;
  /** Counts up when a tool was taken by keys, so that its first blank takes the focus. */
  readonly toFirst: number;
  readonly onDrawn: () => void;
}

/** The one line of plain language that a tool in hand opens, with its blanks. */
export function Sentence(props: SentenceProps): VNode {
  const { hand, say, toFirst } = props;
  const line = useRef<HTMLDivElement>(null);
  const follow = useRef(false);
  // A blank filled by keys hands the focus on, as soon as the next one is drawn.
  useLayoutEffect(() => {
    if (follow.current && line.current) focusNext(line.current);
    follow.current = false;
  });
  useInSight(line, hand !== null, toFirst);
  return (
    <section class="sentence" data-holding={hand !== null} aria-label={say('table.sentence')} ref={line}>
      {hand ? (
        <InHand {...props} hand={hand} follow={follow} line={line} />
      ) : (
        <p class="sentence-idle">{say('table.sentence-idle')}</p>
      )}
    </section>
  );
}

interface InHandProps extends SentenceProps {
  readonly hand: Hand;
  /** Set when the focus is to go on to the next blank. */
  readonly follow: { current: boolean };
  readonly line: { readonly current: HTMLElement | null };
}

function InHand(props: InHandProps): VNode {
  const { hand, sheet, say, dispatch } = props;
  const complete = missing(hand).length === 0;
  const draw = (): void => {
    if (!complete || hand.tool === 'measure') return;
    const unread = props.line.current?.querySelector<HTMLElement>(UNREAD_BLANK);
    if (unread) {
      unread.focus();
      return;
    }
    dispatch({ do: 'draw' });
    props.onDrawn();
  };
  const reading = readingOf(hand, sheet);
  return (
    <>
      <Ways hand={hand} say={say} dispatch={dispatch} />
      <p class="sentence-line">
        {piecesOf(hand.tool, hand.filled, sheet, say).map((piece) =>
          piece.kind === 'words' ? (
            <span key={piece.key}>{piece.text}</span>
          ) : (
            <span key={piece.field.field} class="blank-and-stop">
              <HandBlank piece={piece} draw={draw} {...props} />
              {piece.stop}
            </span>
          ),
        )}
        {reading ? <output class="sentence-reading">{say.message(reading)}</output> : null}
      </p>
      <Chips hand={hand} options={chipOptions(props)} say={say} dispatch={dispatch} onLight={props.onLight} />
      <Note {...props} complete={complete} />
      <div class="sentence-ends">
        {hand.tool === 'measure' ? null : <CallIt {...props} />}
        {hand.tool === 'measure' ? null : <DrawIt complete={complete} say={say} onDraw={draw} />}
        <button type="button" class="button" data-do="put-down" onClick={() => dispatch({ do: 'put-down' })}>
          {say('table.put-down')}
        </button>
      </div>
    </>
  );
}

/** Other ways to use the same tool. */
function Ways({
  hand,
  say,
  dispatch,
}: {
  readonly hand: Hand;
  readonly say: Say;
  readonly dispatch: Dispatch;
}): VNode | null {
  const { uses } = toolFor(hand.tool);
  if (uses.length < 2) return null;
  return (
    <fieldset class="ways">
      <legend>{say('table.ways')}</legend>
      {uses.map((use) => (
        <label key={use} class="way">
          <input
            type="radio"
            name="way"
            checked={use === hand.tool}
            onChange={() => dispatch({ do: 'take', tool: use })}
          />
          <span>{say(`table.use.${use}`)}</span>
        </label>
      ))}
    </fieldset>
  );
}

interface HandBlankProps extends InHandProps {
  readonly piece: Extract<Piece, { kind: 'blank' }>;
  readonly draw: () => void;
}

function HandBlank({ piece, hand, sheet, shown, say, dispatch, onLight, follow, draw }: HandBlankProps): VNode {
  const { field } = piece;
  return (
    <AnyBlank
      {...blankFor(piece, hand.filled, { sheet, shown, say })}
      id={`blank-${field.field}`}
      inRow={isInRow(field.blank)}
      current={hand.at === field.field}
      onFill={(filling) => dispatch({ do: 'fill', field: field.field, value: filling })}
      onClear={() => dispatch({ do: 'clear', field: field.field })}
      onFocus={() => dispatch({ do: 'turn-to', field: field.field })}
      onLight={onLight}
      onNext={() => {
        follow.current = !takesMore(hand, field.field);
      }}
      onEnter={draw}
      onEscape={() => dispatch({ do: 'put-down' })}
    />
  );
}

/** On to the blank that is next; when none is left, to the drawing of it. */
function focusNext(line: HTMLElement): void {
  const next = line.querySelector<HTMLElement>(NEXT_BLANK);
  (next ?? line.querySelector<HTMLElement>('[data-do="draw"]'))?.focus();
}

/** Few enough to stand in a row: measures by name, ways and turns. */
function chipOptions({ hand, sheet, shown }: InHandProps): readonly Option[] {
  const field = fieldsOf(hand.tool).find((one) => one.field === hand.at);
  if (!field) return [];
  if (!isInRow(field.blank)) return [];
  return optionsFor(field.blank, sheet, shown, hand.filled[field.field]).filter((option) => option.lights === null);
}

function isInRow({ takes }: Blank): boolean {
  return takes === 'length' || takes === 'angle' || takes === 'toward' || takes === 'turn' || takes === 'near';
}

/** What to do next; or why the step, as it is pointed out, could not be carried out. */
function Note({ looks, hand, say, complete }: InHandProps & { readonly complete: boolean }): VNode {
  const { pointed } = useUnder(looks.pointer);
  const preview = looks.ahead(pointed);
  return (
    <p class="sentence-note">
      {preview.kind === 'problem' ? say.sentence(preview.message) : nextFor(hand, say, complete)}
    </p>
  );
}

function nextFor(hand: Hand, say: Say, complete: boolean): string {
  const field = fieldsOf(hand.tool).find((one) => one.field === hand.at);
  if (complete && hand.tool !== 'measure')
    return field && takesMore(hand, field.field) ? say('table.more-or-draw') : say('table.ready');
  if (!field) return '';
  if (field.blank.takes === 'length') return say('table.number-stays');
  if (field.blank.takes === 'run') return say('table.run-hint');
  if (field.blank.takes === 'place') return say('table.place-hint');
  if (field.blank.takes === 'toward' || field.blank.takes === 'turn') return say('table.side-hint');
  return say('table.point-hint', { what: wantedIn({ ...field, optional: false }, say) });
}

/** "It is my break point": said as it is drawn, or later in the working. */
function CallIt({ hand, sheet, targets, say, dispatch }: InHandProps): VNode {
  const kind = kindMade(hand, sheet);
  return (
    <TargetSelect
      class="call-it"
      words={say('table.call-it')}
      value={hand.answers}
      targets={targets.filter(({ makes }) => makes === kind)}
      none={say('table.call-none')}
      say={say}
      onTarget={(target) => dispatch({ do: 'call', target })}
    />
  );
}
