import type { VNode } from 'preact';
import type { LooseNote } from '../../exchange/notes/loose-notes.ts';
import type { PieceNotes } from '../../exchange/notes/notes.ts';
import { withMark } from '../../exchange/notes/notes.ts';
import type { Say } from '../../table/say.ts';
import { spelled } from '../../words/unseen.ts';
import { tidyMarks } from './tidy-marks.ts';

interface LooseProps {
  readonly loose: readonly LooseNote[];
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
  readonly onWrite: (key: string, change: (now: PieceNotes) => PieceNotes) => void;
}

/** Marks and comments that count nowhere by now: told with the reason, and gone only when the teacher says so. */
export function Loose({ loose, titles, say, onWrite }: LooseProps): VNode | null {
  if (loose.length === 0) return null;
  return (
    <section aria-labelledby="mark-loose">
      <h2 id="mark-loose">{say('mark.loose')}</h2>
      <p class="small">{say('mark.loose-why')}</p>
      <ul class="untaken">
        {loose.map((note) => (
          <li key={note.key}>
            {linesOf(note, titles, say).map((line) => (
              <p key={line}>{spelled(line)}</p>
            ))}
            <p class="small">
              {say(`mark.loose-${note.why}`)}{' '}
              <button
                type="button"
                class="button button--quiet"
                data-do="remove-loose"
                onClick={() => onWrite(note.key, (now) => without(now, note))}
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

function linesOf({ handIn, marks, comment }: LooseNote, titles: LooseProps['titles'], say: Say): readonly string[] {
  const student = handIn.student.trim() === '' ? say('mark.nobody') : handIn.student;
  const whose = { student, title: titles.get(handIn.exercise) ?? handIn.exercise };
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
