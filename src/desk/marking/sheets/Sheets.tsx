import type { VNode } from 'preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { BookLine, Gradebook } from '../../../exchange/class/gradebook.ts';
import { draftKey } from '../../../exchange/notes/draft-key.ts';
import type { Notes } from '../../../exchange/notes/notes.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import type { Say } from '../../../table/say.ts';
import type { ClassInHand } from '../class/use-class.ts';
import { studentName } from '../student-name.ts';
import type { TheClass } from '../the-class.ts';
import { ALL, choiceOf, chosen } from './choice.ts';
import { type ClassSheets, FeedbackSheet } from './FeedbackSheet.tsx';
import './sheets.css';
import { type ExerciseWork, studentWork } from './student-work.ts';
import { useSheets } from './use-sheets.ts';

interface SheetsProps {
  readonly book: Gradebook;
  readonly inHand: ClassInHand;
  readonly set: ProblemSet | null;
  readonly titles: ReadonlyMap<string, string>;
  readonly notes: Notes;
  readonly say: Say;
  /** Whose sheet is shown first (`choice.ts`). */
  readonly first: string;
  readonly onClose: () => void;
}

/** The feedback sheets of a class as they will be printed: all of them, or one student's. */
export function Sheets({ book, inHand, set, titles, notes, say, first, onClose }: SheetsProps): VNode {
  const { known: exercises, missing } = inHand.exercises;
  const head = useRef<HTMLHeadingElement>(null);
  const [whose, setWhose] = useState(first);
  const lines = useMemo(() => chosen(book.lines, whose), [book, whose]);
  useLayoutEffect(() => head.current?.focus(), []);
  return (
    <section class="sheets" aria-labelledby="sheets-title">
      <div class="sheets-head">
        <h2 id="sheets-title" tabIndex={-1} ref={head}>
          {say('feedback.title')}
        </h2>
        <p class="small">{say('feedback.lead')}</p>
        <Whose lines={book.lines} whose={whose} say={say} onChoice={setWhose} />
        {missing ? <p class="trouble">{say('mark.no-exercises')}</p> : null}
        <div class="ends">
          <button type="button" class="button" data-do="close-sheets" onClick={onClose}>
            {say('feedback.close')}
          </button>
        </div>
      </div>
      {exercises === null ? null : (
        <Made
          key={whose}
          lines={lines}
          work={inHand.work}
          book={book}
          sheets={{ set, of: book.of, titles, exercises, notes, say }}
        />
      )}
    </section>
  );
}

interface WhoseProps {
  readonly lines: readonly BookLine[];
  readonly whose: string;
  readonly say: Say;
  readonly onChoice: (whose: string) => void;
}

/** Whose sheets are shown. */
function Whose({ lines, whose, say, onChoice }: WhoseProps): VNode {
  return (
    <label class="field">
      <span>{say('feedback.whose')}</span>
      <select name="whose" value={whose} onChange={({ currentTarget }) => onChoice(currentTarget.value)}>
        <option value={ALL}>{say('feedback.all')}</option>
        {lines.map(({ key, student, number }) => (
          <option key={key} value={choiceOf(key)}>
            {studentName({ student, number }, say)}
          </option>
        ))}
      </select>
    </label>
  );
}

interface MadeProps {
  readonly lines: readonly BookLine[];
  readonly work: TheClass;
  readonly book: Gradebook;
  readonly sheets: ClassSheets;
}

function Made({ lines, work, book, sheets }: MadeProps): VNode {
  const { say, set, notes } = sheets;
  const workOf = (line: BookLine): readonly ExerciseWork[] =>
    studentWork(line, book, work, set?.exercises.map(({ exercise }) => exercise) ?? []);
  const made = useSheets(
    lines,
    (line) => [
      set,
      say,
      sheets.of,
      ...lineDependsOn(line, notes),
      ...workOf(line).flatMap((one) => dependsOn(one, notes)),
    ],
    (line, place) => <FeedbackSheet key={line.key} line={line} work={workOf(line)} place={place} sheets={sheets} />,
  );
  const ready = made.length === lines.length;
  return (
    <>
      <div class="ends sheets-head">
        <button
          type="button"
          class="button button--first"
          data-do="print-sheets"
          disabled={!ready}
          onClick={() => window.print()}
        >
          {say('feedback.print')}
        </button>
        <span role="status">
          {ready
            ? say('feedback.made', { of: lines.length })
            : say('feedback.making', { done: made.length, of: lines.length })}
        </span>
      </div>
      {made}
    </>
  );
}

function lineDependsOn({ key, marks, until, unread }: BookLine, { students }: Notes): readonly unknown[] {
  return [students.get(key), marks, until, unread.length];
}

function dependsOn({ exercise, counted }: ExerciseWork, { pieces }: Notes): readonly unknown[] {
  return counted === null
    ? [exercise]
    : [counted.piece, counted.entry.marks, counted.entry.remarks.length, pieces.get(draftKey(counted.piece.handIn))];
}
