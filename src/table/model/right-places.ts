import { replay } from '../../drafting/replay.ts';
import { type Drawn, isDrawn, type Shape } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Exercise } from '../../grader/exercise.ts';
import type { Room } from './bench.ts';

/** Where the targets should be, each judged from where the learner's earlier ones stand, as the marker judges them. */
export function rightPlaces(exercise: Exercise, room: Room, sheet: Sheet, wanted: readonly Name[]): Drawn[] {
  return wanted.flatMap((target) => {
    const right = replay(room.marker, exercise.reference, pinsBefore(exercise, sheet, target));
    const shape = right.shapes.get(right.answers.get(target) ?? '');
    return shape && isDrawn(shape) ? [shape] : [];
  });
}

/** What the learner answered for the targets before this one. */
function pinsBefore({ targets }: Exercise, sheet: Sheet, target: Name): ReadonlyMap<Name, Shape> {
  const before = targets.slice(
    0,
    targets.findIndex(({ name }) => name === target),
  );
  return new Map(
    before.flatMap(({ name }): [Name, Shape][] => {
      const shape = sheet.shapes.get(sheet.answers.get(name) ?? '');
      return shape ? [[name, shape]] : [];
    }),
  );
}
