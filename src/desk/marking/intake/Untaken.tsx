import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Say } from '../../../table/say.ts';
import { spelled } from '../../../words/unseen.ts';
import { useListHead } from '../use-list-head.ts';
import { wholeBeside } from './refused.ts';
import type { Taken } from './taken.ts';

interface UntakenProps {
  readonly taken: readonly Taken[];
  readonly say: Say;
  /** Marks what was stopped; null while something is being marked. */
  readonly onGoOn: (() => void) | null;
  readonly onLeaveOut: (where: string) => void;
}

/** What could not be read, each with where it was found and why. Nothing goes but what has come whole, or the teacher takes off. */
export function Untaken({ taken, say, onGoOn, onLeaveOut }: UntakenProps): VNode | null {
  const refused = taken.flatMap((one) => (one.ok ? [] : [one]));
  const whole = useMemo(() => wholeBeside(taken), [taken]);
  const { head, after } = useListHead(refused.length);
  if (refused.length === 0) return null;
  const waiting = refused.filter(({ message: why }) => 'key' in why && why.key === 'mark.stopped-piece').length;
  return (
    <section aria-labelledby="mark-untaken">
      <h2 id="mark-untaken" tabIndex={-1} ref={head}>
        {say('mark.untaken', { count: refused.length })}
      </h2>
      <p class="small">{say('mark.untaken-why')}</p>
      <ul class="untaken">
        {refused.map((one, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two pieces may have lain at the same place.
          <li key={index}>
            <strong>{spelled(one.where)}</strong> {spelled(say.message(one.message))}{' '}
            {whole.has(one) ? say('mark.whole-beside') : null}{' '}
            {one.handIn === null ? (
              <button
                type="button"
                class="button button--quiet"
                data-do="leave-out"
                aria-label={say('mark.leave-out-what', { where: spelled(one.where) })}
                onClick={() => after(() => onLeaveOut(one.where))}
              >
                {say('mark.leave-out')}
              </button>
            ) : null}
          </li>
        ))}
      </ul>
      {onGoOn !== null && waiting > 0 ? (
        <button type="button" class="button" data-do="go-on-marking" onClick={onGoOn}>
          {say('mark.stopped-on', { count: waiting })}
        </button>
      ) : null}
    </section>
  );
}
