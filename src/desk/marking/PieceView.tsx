import type { VNode } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { replay } from '../../drafting/replay.ts';
import { sentenceOf } from '../../drafting/sentence.ts';
import type { WorkRow } from '../../exchange/grade-row.ts';
import type { HandIn } from '../../exchange/hand-in.ts';
import { type MarkedWork, markWork } from '../../exchange/mark-work.ts';
import type { ProblemSet } from '../../exchange/set.ts';
import { writeHandIn } from '../../exchange/write-hand-in.ts';
import type { Exercise } from '../../grader/exercise.ts';
import { layOut } from '../../grader/lay-out.ts';
import { SheetDrawing } from '../../table/drawing/SheetDrawing.tsx';
import { pictureOf } from '../../table/model/picture.ts';
import { noPencil, redPencil } from '../../table/model/red-pencil.ts';
import { homeOf, shownOn } from '../../table/model/sheet-box.ts';
import type { Say } from '../../table/say.ts';
import { spelled } from '../../words/unseen.ts';
import { momentText } from '../setting/date-time.ts';

interface PieceViewProps {
  readonly handIn: HandIn;
  readonly row: WorkRow;
  readonly exercise: Exercise;
  readonly set: ProblemSet | null;
  readonly say: Say;
  readonly onClose: () => void;
}

/** One piece of work: the draft with the red pencil on it, its working step by step, and what is said of it. */
export function PieceView({ handIn, row, exercise, set, say, onClose }: PieceViewProps): VNode {
  const head = useRef<HTMLHeadingElement>(null);
  const marked = useMemo(
    () => markWork(writeHandIn(handIn), { load: () => exercise, set, strictness: null }),
    [handIn, exercise, set],
  );
  useEffect(() => head.current?.focus(), []);
  const student = row.student.trim() === '' ? say('mark.nobody') : spelled(row.student);
  return (
    <section
      class="piece"
      aria-labelledby="piece-title"
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <header class="piece-head">
        <h2 id="piece-title" tabIndex={-1} ref={head}>
          {say('mark.piece', { student, title: exercise.title })}
        </h2>
        <button type="button" class="button" data-do="close-piece" onClick={onClose}>
          {say('mark.close')}
        </button>
      </header>
      <p class="small">{howItCame(row, say)}</p>
      {marked.ok ? <Draft marked={marked} say={say} /> : <p class="trouble">{say.message(marked.message)}</p>}
    </section>
  );
}

function Draft({ marked, say }: { readonly marked: MarkedWork; readonly say: Say }): VNode | null {
  const { exercise, order, grade, handIn } = marked;
  const { steps } = handIn;
  const [upTo, setUpTo] = useState(steps.length);
  const laid = useMemo(() => layOut(exercise, order), [exercise, order]);
  if (!laid.ok) return <p class="trouble">{say.message(laid.message)}</p>;
  const { learner } = laid;
  const whole = replay(learner, steps);
  const sheet = upTo === steps.length ? whole : replay(learner, steps.slice(0, upTo));
  const targets = new Set(grade.checks.map(({ target }) => target));
  const drawing = pictureOf({
    sheet,
    givens: learner,
    shows: exercise.shows,
    box: homeOf(learner, whole, shownOn(exercise.shows, learner)),
    unit: say.reader.unit,
    lit: [],
    ahead: null,
    red: upTo === steps.length ? redPencil(grade.checks, targets) : noPencil,
    right: [],
  });
  return (
    <div class="piece-draft">
      <div class="piece-sheet">
        <SheetDrawing drawing={drawing} reader={say.reader} id="piece" />
      </div>
      <div>
        <div class="ends">
          <button
            type="button"
            class="button"
            data-do="piece-back"
            disabled={upTo === 0}
            onClick={() => setUpTo(upTo - 1)}
          >
            {say('mark.step-back')}
          </button>
          <button
            type="button"
            class="button"
            data-do="piece-on"
            disabled={upTo === steps.length}
            onClick={() => setUpTo(upTo + 1)}
          >
            {say('mark.step-on')}
          </button>
          <span role="status">{say('mark.step-at', { at: upTo, of: steps.length })}</span>
        </div>
        <ol class="piece-working">
          {steps.map((step, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the steps stand still.
            <li key={index} data-ahead={index >= upTo}>
              {spelled(sentenceOf(step, say.reader))}
            </li>
          ))}
        </ol>
      </div>
      <div class="piece-notes">
        {grade.problems.map((problem) => (
          <p key={say.message(problem)} class="trouble">
            {spelled(say.message(problem))}
          </p>
        ))}
        {grade.reports.map(({ target, status, sentences }) => (
          <div key={target} class="piece-note" data-status={status}>
            <h3>
              {say('table.label', { name: { named: target } })}{' '}
              <span class="piece-status">{say('table.status', { status })}</span>
            </h3>
            <p>{spelled(sentences.map((sentence) => say.message(sentence)).join(' '))}</p>
          </div>
        ))}
      </div>
    </div>
  );
}

/** Marks, when it was drawn and saved, and what help it had. */
function howItCame({ marks, of, inSet, saved, checked, hints, shown }: WorkRow, say: Say): string {
  const counted = inSet ?? { marks, of };
  const taken = Object.values(hints).reduce<number>((sum, tier) => sum + tier, 0);
  const when = saved === null ? say('mark.no-date') : momentText(saved, say.reader.language);
  const tidy = (value: number): number => Math.round(value * 10) / 10;
  return say('mark.came', {
    marks: tidy(counted.marks),
    of: counted.of,
    when,
    checked,
    hints: taken,
    shown: shown.length,
  });
}
