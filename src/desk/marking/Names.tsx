import type { VNode } from 'preact';
import type { Say } from '../../table/say.ts';
import type { Opened } from './piece/use-opened.ts';
import { studentName } from './student-name.ts';
import type { TheClass } from './the-class.ts';

interface NamesProps {
  readonly students: readonly string[];
  readonly exercise: string;
  readonly title: string;
  readonly work: TheClass;
  readonly opened: Opened;
  readonly say: Say;
}

/** So many names stand there at once; the others are folded away. */
const AT_ONCE = 12;

/** Students by name; a name opens the student's work on the exercise. */
export function Names({ students, ...rest }: NamesProps): VNode {
  const more = students.slice(AT_ONCE);
  return (
    <div class="names">
      <NameList students={students.slice(0, AT_ONCE)} {...rest} />
      {more.length === 0 ? null : (
        <details>
          <summary>{rest.say('class.more', { count: more.length })}</summary>
          <NameList students={more} {...rest} />
        </details>
      )}
    </div>
  );
}

function NameList({ students, exercise, title, work, opened, say }: NamesProps): VNode {
  return (
    <ul>
      {students.map((student) => {
        const name = studentName(work.whoIs(student), say);
        const piece = work.pieceOf(student, exercise);
        return (
          <li key={student}>
            {piece === undefined ? (
              name
            ) : (
              <button
                type="button"
                class="link"
                aria-label={say('class.open', { student: name, title })}
                onClick={() => opened.open(piece)}
              >
                {name}
              </button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
