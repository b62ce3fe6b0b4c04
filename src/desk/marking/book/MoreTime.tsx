import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import type { BookLine } from '../../../exchange/class/gradebook.ts';
import { type Notes, withStudent } from '../../../exchange/notes/notes.ts';
import type { Student } from '../../../exchange/student.ts';
import type { Say } from '../../../table/say.ts';
import { momentText } from '../../../words/moment.ts';
import { dateTimeOf, utcOf } from '../../setting/date-time.ts';
import { studentName } from '../student-name.ts';

interface MoreTimeProps {
  readonly lines: readonly BookLine[];
  /** When the set is due; ISO 8601. */
  readonly due: string;
  readonly onWrite: (change: (now: Notes) => Notes) => void;
  readonly say: Say;
}

/** Students who may hand in later than the set says, each with a day of their own. */
export function MoreTime({ lines, due, onWrite, say }: MoreTimeProps): VNode {
  const given = lines.flatMap((line) => (line.until === null ? [] : [{ ...line, until: line.until }]));
  const write = (who: Student, until: string | null): void => onWrite((now) => withStudent(now, who, { until }));
  return (
    <details class="more-time">
      <summary>{say('mark.time', { count: given.length })}</summary>
      <p class="small">{say('mark.time-how', { due: momentText(due, say.reader.language) })}</p>
      <GiveTime lines={lines} due={due} say={say} onGive={write} />
      {given.length === 0 ? null : (
        <ul>
          {given.map(({ until, ...who }) => (
            <li key={who.key}>
              {say('mark.time-given', {
                student: studentName(who, say),
                until: momentText(until, say.reader.language),
              })}{' '}
              <button
                type="button"
                class="button button--quiet"
                data-do="take-time"
                aria-label={say('mark.time-back-what', { student: studentName(who, say) })}
                onClick={() => write(who, null)}
              >
                {say('mark.time-back')}
              </button>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}

interface GiveTimeProps extends Pick<MoreTimeProps, 'lines' | 'due' | 'say'> {
  readonly onGive: (who: Student, until: string) => void;
}

/** A student chosen, and a day: no time is given that ends before the set does. */
function GiveTime({ lines, due, say, onGive }: GiveTimeProps): VNode {
  const [whose, setWhose] = useState<string | null>(null);
  const [until, setUntil] = useState(dateTimeOf(due));
  const [note, setNote] = useState<string | null>(null);
  const line = lines.find(({ key }) => key === whose) ?? lines[0];
  const give = (): void => {
    const moment = utcOf(until);
    if (line === undefined) return;
    if (moment === null || Date.parse(moment) <= Date.parse(due)) {
      setNote(say('mark.time-late', { due: momentText(due, say.reader.language) }));
      return;
    }
    onGive(line, moment);
    setNote(null);
  };
  return (
    <form
      class="more-time-give"
      onSubmit={(event) => {
        event.preventDefault();
        give();
      }}
    >
      <Whose lines={lines} whose={line?.key} say={say} onChoice={setWhose} />
      <label class="field">
        <span>{say('mark.time-until')}</span>
        <input
          type="datetime-local"
          name="time-until"
          max="9999-12-30T23:59"
          value={until}
          onInput={({ currentTarget }) => setUntil(currentTarget.value)}
        />
      </label>
      <button type="submit" class="button" data-do="give-time">
        {say('mark.time-give')}
      </button>
      <p role="status">{note}</p>
    </form>
  );
}

interface WhoseProps extends Pick<MoreTimeProps, 'lines' | 'say'> {
  readonly whose: string | undefined;
  readonly onChoice: (whose: string) => void;
}

/** Which student is given time. */
function Whose({ lines, whose, say, onChoice }: WhoseProps): VNode {
  return (
    <label class="field">
      <span>{say('mark.student')}</span>
      <select name="time-whose" value={whose} onChange={({ currentTarget }) => onChoice(currentTarget.value)}>
        {lines.map((line) => (
          <option key={line.key} value={line.key}>
            {studentName(line, say)}
          </option>
        ))}
      </select>
    </label>
  );
}
