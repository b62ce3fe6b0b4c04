import type { VNode } from 'preact';
import type { Say } from '../../table/say.ts';
import { spelled } from '../../words/unseen.ts';
import type { Taken } from './intake.ts';

/** What could not be read, each with where it was found and why. Nothing is dropped. */
export function Untaken({ taken, say }: { readonly taken: readonly Taken[]; readonly say: Say }): VNode | null {
  const refused = taken.flatMap((one) => (one.ok ? [] : [one]));
  if (refused.length === 0) return null;
  return (
    <section aria-labelledby="mark-untaken">
      <h2 id="mark-untaken">{say('mark.untaken', { count: refused.length })}</h2>
      <ul class="untaken">
        {refused.map(({ where, message: why }) => (
          <li key={where}>
            <strong>{spelled(where)}</strong> {spelled(say.message(why))}
          </li>
        ))}
      </ul>
    </section>
  );
}
