import type { Name } from '../../drafting/step.ts';
import type { ClassWork } from './class-work.ts';

/** What became of a student's answers from one attempt to the next. */
export interface Since {
  /** Wrong before, and right now. */
  readonly mended: readonly Name[];
  /** Right before, and wrong now. */
  readonly spoilt: readonly Name[];
  /** Wrong both times. */
  readonly still: readonly Name[];
}

type Attempt = Pick<ClassWork, 'checks'>;

/** Two attempts at an exercise held against each other, answer by answer, in the order of the later one. */
export function since(before: Attempt, now: Attempt): Since {
  const [was, is] = [rightIn(before), rightIn(now)];
  const targets = [...is.keys()].filter((target) => was.has(target));
  const those = (wasRight: boolean, isRight: boolean): readonly Name[] =>
    targets.filter((target) => was.get(target) === wasRight && is.get(target) === isRight);
  return { mended: those(false, true), spoilt: those(true, false), still: those(false, false) };
}

/** Target to whether it is right. */
function rightIn({ checks }: Attempt): ReadonlyMap<Name, boolean> {
  const own = Map.groupBy(checks, ({ target }) => target);
  return new Map([...own].map(([target, all]) => [target, all.every(({ status }) => status === 'within')]));
}
