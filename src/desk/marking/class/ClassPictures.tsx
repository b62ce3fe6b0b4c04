import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Name } from '../../../drafting/step.ts';
import type { Footing } from '../../../exchange/class/laid/footing.ts';
import type { UnderSheet } from '../../../exchange/class/laid/under-sheet.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import type { Say } from '../../../table/say.ts';
import type { Sound } from '../intake/taken.ts';
import type { Opened } from '../piece/use-opened.ts';
import type { TheClass } from '../the-class.ts';
import { ClassPicture } from './ClassPicture.tsx';
import { classSentences, hasStrays, isAllRight } from './class-sentences.ts';
import { classSheet } from './class-sheet.ts';
import { type ClassTarget, classTarget } from './class-target.ts';

interface ClassPicturesProps {
  readonly exercise: Exercise;
  /** The work on it that counts. */
  readonly pieces: readonly Sound[];
  readonly work: TheClass;
  readonly opened: Opened;
  readonly say: Say;
}

/** Where the answers of a class lie, a picture a target; those without a place on a sheet have none. */
export function ClassPictures(props: ClassPicturesProps): VNode | null {
  const { exercise, pieces, say } = props;
  const under = useMemo(() => classSheet(exercise, pieces), [exercise, pieces]);
  const answers = useMemo(
    () => new Map(exercise.targets.map(({ name }) => [name, classTarget(pieces, name)])),
    [exercise, pieces],
  );
  if (under === null || under.footings.size === 0) return null;
  const { wrong, partly, right } = sorted(under, answers, pieces.length);
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
          <ClassPicture key={one.target} {...props} {...one} under={under} />
        ))}
      </div>
      {without.length === 0 ? null : <p class="small">{say('class.no-place', { targets: { namedAll: without } })}</p>}
    </section>
  );
}

/** A target with what the class made of it, and on what it stands. */
interface Answered {
  readonly target: Name;
  readonly footing: Footing;
  readonly answers: ClassTarget;
}

interface Sorted {
  /** Those in which somebody strayed. */
  readonly wrong: readonly Answered[];
  /** Nobody strayed, and not everyone has them. */
  readonly partly: readonly Answered[];
  readonly right: readonly Name[];
}

/** Which targets have a picture: where nobody strayed there is nothing to be seen. */
function sorted(under: UnderSheet, answers: ReadonlyMap<Name, ClassTarget>, worked: number): Sorted {
  const drawn = [...under.footings].flatMap(([target, footing]) => {
    const own = answers.get(target);
    return own === undefined ? [] : [{ target, footing, answers: own }];
  });
  const wrong = drawn.filter((one) => hasStrays(one.answers));
  const right = drawn.filter((one) => isAllRight(one.answers, worked)).map(({ target }) => target);
  return { wrong, right, partly: drawn.filter((one) => !wrong.includes(one) && !right.includes(one.target)) };
}
