import type { VNode } from 'preact';
import { type Common, teachFirst } from '../../../exchange/class/teach-first.ts';
import { wayWords } from '../../../exchange/class/ways.ts';
import type { Say } from '../../../table/say.ts';
import type { TheClass } from '../the-class.ts';
import { sectionOf } from './ClassExercise.tsx';

interface TeachFirstProps {
  readonly counted: TheClass['counted'];
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
}

/** What most of the class got wrong, before everything else that can be said of it: with this the next lesson begins. */
export function TeachFirst({ counted, titles, say }: TeachFirstProps): VNode | null {
  const common = teachFirst(counted.map(({ kept }) => kept));
  if (common.length === 0) return null;
  return (
    <section aria-labelledby="class-first">
      <h3 id="class-first">{say('class.first')}</h3>
      <ol class="class-first">
        {common.map((one) => (
          <li key={JSON.stringify([one.exercise, one.target, one.fault])}>
            <a href={`#${sectionOf(one.exercise)}`}>{faultWords(one, titles, say)}</a>
          </li>
        ))}
      </ol>
    </section>
  );
}

function faultWords(
  { exercise, target, fault, count, worked }: Common,
  titles: TeachFirstProps['titles'],
  say: Say,
): string {
  const of = { title: titles.get(exercise) ?? exercise, target: { named: target }, count, worked };
  if (fault === 'none') return say('class.first-none', of);
  if (fault === 'off') return say('class.first-off', of);
  return say('class.first-way', { ...of, way: { said: wayWords(fault.way) } });
}
