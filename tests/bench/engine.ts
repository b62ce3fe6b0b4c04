import { Bench } from 'tinybench';
import { loadExercise } from '../../src/cli/exercises.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Path } from '../../src/geometry/cubic.ts';
import { lengthOf } from '../../src/geometry/length.ts';
import { nearestOn } from '../../src/geometry/nearest.ts';
import { offsetPath } from '../../src/geometry/offset.ts';
import { dealOrder } from '../../src/grader/deal.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { misread } from '../../src/grader/misreading.ts';
import { orderFor } from '../../src/grader/order-for.ts';

/** How long the engine takes over the roll line, on one figure and on the figures that a draft is tried on. */
const exercise = loadExercise('roll-line');
const order = orderFor(exercise, 'bench');
const dealt = dealOrder(order);
if (!dealt.ok) throw new Error(`The order of the bench cannot be dealt: ${JSON.stringify(dealt.message)}`);
const { givens } = dealt;

const [misreading] = exercise.misreadings;
if (!misreading) throw new Error('The exercise of the bench has no misreading.');
const wrong = misread(exercise.reference, misreading);
const neckline = curveNamed('back-neckline');

const bench = new Bench({ time: 1000 })
  .add('draw the block from an order', () => dealOrder(order))
  .add('replay a draft', () => replay(givens, exercise.reference))
  .add('mark a draft that is right', () => gradeDraft(exercise, order, exercise.reference, 'workroom'))
  .add('mark a draft that is misread', () => gradeDraft(exercise, order, wrong, 'workroom'))
  .add('length of a neckline', () => lengthOf(neckline))
  .add('nearest point on a neckline', () => nearestOn(neckline, { x: 0, y: 0 }))
  .add('parallel to a neckline, 12 mm', () => offsetPath(neckline, 12));

await bench.run();
console.table(bench.table());

function curveNamed(name: string): Path {
  const shape = replay(givens, exercise.reference).shapes.get(name);
  if (shape?.kind !== 'curve') throw new Error(`The block of the bench has no curve "${name}".`);
  return shape.path;
}
