import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Exercise } from '../../../grader/exercise.ts';
import type { Say } from '../../../table/say.ts';
import type { Sound } from '../intake/taken.ts';
import type { Opened } from '../piece/use-opened.ts';
import type { TheClass } from '../the-class.ts';
import { ClassPicture } from './ClassPicture.tsx';
import { classSentences, hasStrays, isAllRight } from './class-sentences.ts';
import { classSheet } from './class-sheet.ts';
import { classTarget } from './class-target.ts';

interface ClassPicturesProps {
  readonly exercise: Exercise;
  /** The work on it that counts. */
  readonly pieces: readonly Sound[];
  readonly work: TheClass;
  readonly opened: Opened;
  readonly say: Say;
}

/** Where the answers of a class lie, a picture a target; those without a place on a sheet have none. */
export function ClassPictures({ exercise, pieces, work, opened, say }: ClassPicturesProps): VNode | null {
  const under = useMemo(() => classSheet(exercise, pieces), [exercise, pieces]);
  const answers = useMemo(
    () => new Map(exercise.targets.map(({ name }) => [name, classTarget(pieces, name)])),
    [exercise, pieces],
  );
  if (under === null || under.footings.size === 0) return null;
  const drawn = [...under.footings].flatMap(([target, footing]) => {
    const own = answers.get(target);
    return own === undefined ? [] : [{ target, footing, answers: own }];
  });
  // Where nobody strayed there is nothing to be seen.
  const wrong = drawn.filter((one) => hasStrays(one.answers));
  const right = drawn.filter((one) => isAllRight(one.answers, pieces.length)).map(({ target }) => target);
  const partly = drawn.filter((one) => !wrong.includes(one) && !right.includes(one.target));
  const without = exercise.targets.map(({ name }) => name).filter((name) => !under.footings.has(name));
  return (
    <section>
      <h4>{say('class.where')}</h4>
      {wrong.length === 0 ? null : <p class="small">{say('class.where-why')}</p>}
      {right.length === 0 ? null : <p>{say('class.all-right-of', { targets: { namedAll: right } })}</p>}
      {partly.map((one) => (
        <p key={one.target}>
          {say('class.no-stray', {
            target: say('table.label', { name: { named: one.target } }),
            says: classSentences(one.answers, one.footing, pieces.length).map(say.message).join(' '),
          })}
        </p>
      ))}
      <div class="class-pictures">
        {wrong.map((one) => (
          <ClassPicture
            key={one.target}
            {...one}
            exercise={exercise}
            under={under}
            pieces={pieces}
            work={work}
            opened={opened}
            say={say}
          />
        ))}
      </div>
      {without.length === 0 ? null : <p class="small">{say('class.no-place', { targets: { namedAll: without } })}</p>}
    </section>
  );
}
