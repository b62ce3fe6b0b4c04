import { replay } from '../drafting/replay.ts';
import type { Shape } from '../drafting/shape.ts';
import type { Name } from '../drafting/step.ts';
import { type Dealt, dealOrder } from './deal.ts';
import type { Exercise } from './exercise.ts';
import type { Order } from './order.ts';
import { shakenPoint } from './shaken.ts';

/**
 * Lays an order on the table for an exercise: what the order gives, and what the exercise has drawn on it before the
 * learner begins, its marks shaken where it says so. Fails with a sentence where any of it cannot be laid.
 */
export function layOut(exercise: Exercise, order: Order): Dealt {
  const dealt = dealOrder(order);
  if (!dealt.ok || exercise.given === undefined) return dealt;
  const { shapes, measures, problems } = replay(dealt.givens, exercise.given);
  const [problem] = problems;
  if (problem !== undefined) return { ok: false, message: problem.message };
  return { ok: true, givens: { shapes: shaken(exercise, order, shapes), measures } };
}

function shaken(exercise: Exercise, order: Order, shapes: ReadonlyMap<Name, Shape>): ReadonlyMap<Name, Shape> {
  if (exercise.shaken === undefined) return shapes;
  const { marks, by } = exercise.shaken;
  const moved = marks.flatMap((name): [Name, Shape][] => {
    const shape = shapes.get(name);
    return shape?.kind === 'point'
      ? [[name, { kind: 'point', point: shakenPoint(shape.point, by, `${exercise.id}/${name}`, order.figure) }]]
      : [];
  });
  return new Map([...shapes, ...moved]);
}
