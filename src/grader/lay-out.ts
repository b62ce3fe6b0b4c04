import { replay } from '../drafting/replay.ts';
import type { Shape } from '../drafting/shape.ts';
import type { Givens } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import { houseRules } from '../garment/house-rules.ts';
import type { Message } from '../words/message.ts';
import { dealOrder } from './deal.ts';
import type { Exercise } from './exercise.ts';
import type { Order } from './order.ts';
import { ownMeasures } from './own-measures.ts';
import { shakenPoint } from './shaken.ts';

/** An order on the table. */
export interface Laid {
  /** What the marker goes by: the block, what is given, every measure. */
  readonly givens: Givens;
  /** The same as the learner has it: without what the learner is to work out by a house rule, or has no rule for. */
  readonly learner: Givens;
}

export type LaidOut = ({ readonly ok: true } & Laid) | { readonly ok: false; readonly message: Message };

const laidOut = new WeakMap<Order, Map<Exercise, LaidOut>>();

/**
 * Lays an order on the table for an exercise: what the order gives, and what the exercise has drawn on it before the
 * learner begins, its marks shaken where it says so. Fails with a sentence where any of it cannot be laid. An order is
 * laid once, for as long as it is there, so that what is remembered of its table serves whoever asks for it next.
 */
export function layOut(exercise: Exercise, order: Order): LaidOut {
  const here = laidOut.get(order) ?? new Map<Exercise, LaidOut>();
  laidOut.set(order, here);
  const laid = here.get(exercise) ?? layAfresh(exercise, order);
  here.set(exercise, laid);
  return laid;
}

function layAfresh(exercise: Exercise, order: Order): LaidOut {
  const dealt = dealOrder(order, ownMeasures(exercise));
  if (!dealt.ok) return dealt;
  if (exercise.given === undefined) return laid(exercise, dealt.givens);
  const { shapes, measures, problems } = replay(dealt.givens, exercise.given);
  const [problem] = problems;
  if (problem !== undefined) return { ok: false, message: problem.message };
  return laid(exercise, { shapes: shaken(exercise, order, shapes), measures });
}

function laid(exercise: Exercise, givens: Givens): LaidOut {
  const hidden = hiddenFrom(exercise);
  const measures = new Map([...givens.measures].filter(([name]) => !hidden.includes(name)));
  return { ok: true, givens, learner: { shapes: givens.shapes, measures } };
}

/** The measures that house rules give and the learner does not get. */
export function hiddenFrom({ house, applies = [] }: Exercise): readonly Name[] {
  return houseRules.filter(({ name }) => !(name in house) || applies.includes(name)).map(({ makes }) => makes);
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
