import type { VNode } from 'preact';
import { handedOn, type LooseNote } from '../../../exchange/notes/loose-notes.ts';
import { type Notes, type PieceNotes, withMark, withPiece } from '../../../exchange/notes/notes.ts';
import { studentKey } from '../../../exchange/student.ts';
import type { Say } from '../../../table/say.ts';
import { spelledLines } from '../../../words/unseen.ts';
import { nameAlone } from '../student-name.ts';
import type { TheClass } from '../the-class.ts';
import { tidyMarks } from '../tidy-marks.ts';
import { useListHead } from '../use-list-head.ts';

interface LooseProps {
  readonly loose: readonly LooseNote[];
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
  /** The piece that counts of a student and an exercise. */
  readonly pieceOf: TheClass['pieceOf'];
  readonly onWrite: (change: (now: Notes) => Notes) => void;
}

/** Marks and comments that count nowhere by now: told with the reason, and gone only when the teacher says so. */
export function Loose({ loose, titles, say, pieceOf, onWrite }: LooseProps): VNode | null {
  const { head, after } = useListHead(loose.length);
  if (loose.length === 0) return null;
  return (
    <section aria-labelledby="mark-loose">
      <h2 id="mark-loose" tabIndex={-1} ref={head}>
        {say('mark.loose')}
      </h2>
      <p class="small">{say('mark.loose-why')}</p>
      <ul class="untaken">
        {loose.map((note) => (
          <li key={note.key}>
            {linesOf(note, titles, say).map((line) => (
              <p key={line}>{spelledLines(line)}</p>
            ))}
            <p class="small">
              {say(`mark.loose-${note.why}`)}{' '}
              <HandOn note={note} say={say} pieceOf={pieceOf} onWrite={(change) => after(() => onWrite(change))} />
              <button
                type="button"
                class="button button--quiet"
                data-do="remove-loose"
                onClick={() => after(() => onWrite((all) => withPiece(all, note.key, (now) => without(now, note))))}
              >
                {say('mark.loose-remove')}
              </button>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Where another draft counts by now, what was written can be given to that one. */
function HandOn({
  note,
  say,
  pieceOf,
  onWrite,
}: { readonly note: LooseNote } & Pick<LooseProps, 'say' | 'pieceOf' | 'onWrite'>): VNode | null {
  const { handIn } = note;
  const counts = note.why === 'earlier' ? pieceOf(studentKey(handIn), handIn.exercise) : undefined;
  if (counts === undefined) return null;
  const to = { handIn: counts.handIn, checks: counts.row.checks };
  return (
    <button
      type="button"
      class="button button--quiet"
      data-do="hand-on"
      onClick={() => onWrite((all) => handedOn(all, note, to))}
    >
      {say('mark.loose-hand-on')}
    </button>
  );
}

function linesOf({ handIn, marks, comment }: LooseNote, titles: LooseProps['titles'], say: Say): readonly string[] {
  const whose = { student: nameAlone(handIn, say), title: titles.get(handIn.exercise) ?? handIn.exercise };
  return [
    ...marks.map(([target, own]) =>
      say('mark.loose-mark', {
        ...whose,
        ...{ target: { named: target }, marks: tidyMarks(own.marks), of: tidyMarks(own.of), reason: own.reason },
      }),
    ),
    ...(comment === '' ? [] : [say('mark.loose-comment', { ...whose, comment })]),
  ];
}

function without(now: PieceNotes, { marks, comment }: LooseNote): PieceNotes {
  const left = marks.reduce((notes, [target]) => withMark(notes, target, null), now);
  return comment === '' ? left : { ...left, comment: '' };
}
