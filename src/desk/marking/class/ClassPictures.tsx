import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Exercise } from '../../../grader/exercise.ts';
import type { Say } from '../../../table/say.ts';
import type { Sound } from '../intake/taken.ts';
import type { Opened } from '../piece/use-opened.ts';
import type { TheClass } from '../the-class.ts';
import { ClassPicture } from './ClassPicture.tsx';
import { classSheet } from './class-sheet.ts';

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
  if (under === null || under.footings.size === 0) return null;
  const without = exercise.targets.map(({ name }) => name).filter((name) => !under.footings.has(name));
  return (
    <section>
      <h4>{say('class.where')}</h4>
      <p class="small">{say('class.where-why')}</p>
      <div class="class-pictures">
        {[...under.footings].map(([target, footing]) => (
          <ClassPicture
            key={target}
            exercise={exercise}
            target={target}
            under={under}
            footing={footing}
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
