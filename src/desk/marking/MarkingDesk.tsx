import type { VNode } from 'preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import { latestOf } from '../../exchange/class/class-work.ts';
import { gradebookOf } from '../../exchange/class/gradebook.ts';
import { gradebookCsv } from '../../exchange/class/gradebook-csv.ts';
import { classReport } from '../../exchange/class/report.ts';
import { fileNameOf } from '../../exchange/file-name.ts';
import { studentKey } from '../../exchange/student.ts';
import { download } from '../../table/download.ts';
import { sayFor } from '../../table/say.ts';
import { useReader } from '../../table/use-reader.ts';
import type { ExerciseCard } from '../setting/exercise-card.ts';
import { BookTable } from './BookTable.tsx';
import { ClassView } from './ClassView.tsx';
import { Intray } from './Intray.tsx';
import type { Taken } from './intake.ts';
import './marking.css';
import { PieceView } from './PieceView.tsx';
import { Untaken } from './Untaken.tsx';
import { useExercises } from './use-exercises.ts';
import { useMarkingDesk } from './use-marking-desk.ts';

interface MarkingDeskProps {
  readonly cards: readonly ExerciseCard[];
  /** Where the exercises lie, whole, from the page's own address. */
  readonly exercises: string;
  readonly language: string;
}

type Sound = Extract<Taken, { readonly ok: true }>;

/** The desk on which hand-ins are marked: what came in, the gradebook, and what the class has misunderstood. */
export function MarkingDesk({ cards, exercises, language }: MarkingDeskProps): VNode {
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  const titles = useMemo(() => new Map(cards.map(({ id, title }) => [id, title])), [cards]);
  const desk = useMarkingDesk(exercises);
  const { set, taken } = desk;
  const sound = useMemo(() => taken.filter((one): one is Sound => one.ok), [taken]);
  const book = useMemo(
    () =>
      gradebookOf(
        sound.map(({ entry }) => entry),
        set,
      ),
    [sound, set],
  );
  const report = useMemo(
    () => (desk.progress ? null : classReport(sound.map(({ kept }) => kept))),
    [sound, desk.progress],
  );
  const [known, wantExercises] = useExercises(exercises);
  const [open, setOpen] = useState<Opened | null>(null);
  const opened = open && lastOf(sound, open);
  const exercise = opened && known?.[opened.row.exercise];
  const [note, setNote] = useState<string | null>(null);
  const head = useRef<HTMLHeadingElement>(null);
  const saveCsv = (): void => {
    const file = fileNameOf([set?.title ?? say('mark.file')], 'csv');
    download(file, gradebookCsv(book, reader), 'text/csv');
    setNote(say('mark.csv-saved', { file }));
  };
  return (
    <div class="marking">
      <Intray desk={desk} say={say} />
      {taken.length === 0 ? null : (
        <>
          <section aria-labelledby="mark-book">
            <h2 id="mark-book" tabIndex={-1} ref={head}>
              {set === null ? say('mark.book') : say('mark.book-of', { title: set.title })}
            </h2>
            <p class="small">
              {say('mark.counted', { students: book.lines.length, work: sound.length - book.repeated })}{' '}
              {book.repeated > 0 ? say('mark.repeated', { repeated: book.repeated }) : null}
            </p>
            <BookTable
              book={book}
              titles={titles}
              say={say}
              onOpen={(student, name) => {
                wantExercises();
                setOpen({ student, exercise: name });
              }}
            />
            {opened && exercise ? (
              <PieceView
                key={`${open.student}/${open.exercise}`}
                handIn={opened.handIn}
                row={opened.row}
                exercise={exercise}
                set={set}
                say={say}
                onClose={() => {
                  setOpen(null);
                  focusCell(open);
                }}
              />
            ) : null}
            <div class="ends">
              <button type="button" class="button button--first" data-do="csv" onClick={saveCsv}>
                {say('mark.csv')}
              </button>
              <button type="button" class="button button--quiet" data-do="clear" onClick={desk.clear}>
                {say('mark.clear')}
              </button>
            </div>
            <p role="status">{note}</p>
          </section>
          <Untaken taken={taken} say={say} />
          {report ? <ClassView report={report} titles={titles} say={say} /> : null}
        </>
      )}
    </div>
  );
}

/** Whose work on which exercise lies open. */
interface Opened {
  readonly student: string;
  readonly exercise: string;
}

/** Of a student's work on an exercise, the piece that counts. */
function lastOf(sound: readonly Sound[], { student, exercise }: Opened): Sound | undefined {
  const own = sound.filter(({ row }) => row.exercise === exercise && studentKey(row) === student);
  const [counts] = latestOf(own.map((one) => ({ student, exercise, saved: one.row.saved, one })));
  return counts?.one;
}

function focusCell({ student, exercise }: Opened): void {
  const cells = document.querySelectorAll<HTMLElement>('[data-cell]');
  [...cells].find(({ dataset }) => dataset['cell'] === `${student}/${exercise}`)?.focus();
}
