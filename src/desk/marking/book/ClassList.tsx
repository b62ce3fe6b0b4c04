import type { VNode } from 'preact';
import { LIST_LENGTH, readClassList } from '../../../exchange/class/class-list.ts';
import type { Gradebook } from '../../../exchange/class/gradebook.ts';
import type { Notes } from '../../../exchange/notes/notes.ts';
import type { Say } from '../../../table/say.ts';
import { useTakenUp } from '../piece/use-taken-up.ts';
import { studentName } from '../student-name.ts';

interface ClassListProps {
  readonly book: Gradebook;
  readonly notes: Notes;
  readonly onWrite: (change: (now: Notes) => Notes) => void;
  readonly say: Say;
}

/** Who is in the class, as the teacher writes it: by that it is known who has handed in nothing yet. */
export function ClassList({ book, notes, onWrite, say }: ClassListProps): VNode {
  const { text, setText, takeUp } = useTakenUp(notes.list, (list) => onWrite((now) => ({ ...now, list })));
  return (
    <>
      <details class="class-list">
        <summary>{say('mark.list')}</summary>
        <label class="field">
          <span>{say('mark.list-how')}</span>
          <textarea
            name="class-list"
            rows={8}
            maxLength={LIST_LENGTH}
            spellcheck={false}
            value={text}
            onInput={({ currentTarget }) => setText(currentTarget.value)}
            onBlur={takeUp}
          />
        </label>
      </details>
      <p role="status" class="class-absent">
        {readClassList(notes.list).length === 0 ? null : absentWords(book, say)}
      </p>
    </>
  );
}

/** Of whom nothing lies there: to be reminded. */
function absentWords({ lines }: Gradebook, say: Say): string {
  const absent = lines.filter(({ listed }) => listed === 'absent').map((line) => studentName(line, say));
  return absent.length === 0
    ? say('mark.absent-none')
    : say('mark.absent-names', { count: absent.length, names: { listed: absent } });
}
