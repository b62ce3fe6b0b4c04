import type { VNode } from 'preact';
import { LIST_LENGTH, readClassList } from '../../../exchange/class/class-list.ts';
import type { Gradebook } from '../../../exchange/class/gradebook.ts';
import { type Notes, withOtherList } from '../../../exchange/notes/notes.ts';
import type { Say } from '../../../table/say.ts';
import { useSure } from '../../use-sure.ts';
import { useTakenUp } from '../piece/use-taken-up.ts';
import { studentName } from '../student-name.ts';
import './folds.css';

interface ClassListProps {
  readonly notes: Notes;
  /** Whether it can be written: the page is built before it can. */
  readonly awake: boolean;
  readonly onWrite: (change: (now: Notes) => Notes) => void;
  readonly say: Say;
}

/** Who is in the class, as the teacher writes it: it stays when the desk is cleared, and has a clearing of its own. */
export function ClassList({ notes, awake, onWrite, say }: ClassListProps): VNode {
  const { text, setText, takeUp } = useTakenUp(notes.list, (list) => onWrite((now) => ({ ...now, list })));
  const { button, armed, press } = useSure(() => {
    setText('');
    onWrite((now) => ({ ...now, list: '' }));
  });
  return (
    <details class="class-list">
      <summary>{say('mark.list', { count: readClassList(notes.list).length })}</summary>
      <label class="field">
        <span>{say('mark.list-how')}</span>
        <textarea
          name="class-list"
          rows={8}
          maxLength={LIST_LENGTH}
          spellcheck={false}
          disabled={!awake}
          value={text}
          onInput={({ currentTarget }) => setText(currentTarget.value)}
          onBlur={takeUp}
        />
      </label>
      <div class="ends">
        <button
          ref={button}
          type="button"
          class="button button--quiet"
          data-do="clear-list"
          disabled={notes.list === ''}
          onClick={press}
        >
          {say('mark.list-clear')}
        </button>
      </div>
      <p role="status">{armed ? say('mark.list-clear-sure') : null}</p>
      <OtherList otherList={notes.otherList} onWrite={onWrite} say={say} />
    </details>
  );
}

type OtherListProps = Pick<Notes, 'otherList'> & Pick<ClassListProps, 'onWrite' | 'say'>;

/** Another class list than the one that counts: neither is lost when the two change places. */
function OtherList({ otherList, onWrite, say }: OtherListProps): VNode | null {
  if (otherList === '') return null;
  return (
    <p class="small">
      {say('mark.list-other', { count: readClassList(otherList).length })}{' '}
      <button type="button" class="button" data-do="other-list" onClick={() => onWrite(withOtherList)}>
        {say('mark.list-other-take')}
      </button>
    </p>
  );
}

interface AbsentProps {
  readonly book: Gradebook;
  readonly list: string;
  readonly say: Say;
}

/** Of whom on the class list nothing lies there: to be reminded. */
export function Absent({ book: { lines }, list, say }: AbsentProps): VNode {
  const absent = lines.filter(({ listed }) => listed === 'absent').map((line) => studentName(line, say));
  const words = (): string =>
    absent.length === 0
      ? say('mark.absent-none')
      : say('mark.absent-names', { count: absent.length, names: { listed: absent } });
  return (
    <p role="status" class="class-absent">
      {readClassList(list).length === 0 ? null : words()}
    </p>
  );
}
