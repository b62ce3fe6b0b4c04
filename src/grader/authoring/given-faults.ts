import { evaluate } from '../../drafting/expression.ts';
import { replay } from '../../drafting/replay.ts';
import type { Problem, Sheet } from '../../drafting/sheet.ts';
import type { Name, Step } from '../../drafting/step.ts';
import { message } from '../../words/message.ts';
import { dealOrder } from '../deal.ts';
import type { Exercise } from '../exercise.ts';
import type { Order } from '../order.ts';
import { ownMeasures } from '../own-measures.ts';
import type { Fault } from '../reading/fault.ts';
import { unknownName } from '../reading/unknown.ts';

const none: readonly Step[] = [];

/** Given steps that answer a target, and marks to be shaken that no given step makes. */
export function givenFaults({ given = none, shaken }: Exercise): readonly Fault[] {
  const names = given.map(({ name }) => name);
  const answers = given.flatMap((step, index) =>
    step.answers === undefined ? [] : [{ at: ['given', index, 'answers'], message: message('author.given-answers') }],
  );
  if (shaken === undefined) return answers;
  const strange = shaken.marks.flatMap((name, index) =>
    names.includes(name)
      ? []
      : [{ at: ['shaken', 'marks', index], message: unknownName('what.given-mark', name, names) }],
  );
  return [...answers, ...strange, ...byFaults(shaken.by)];
}

function byFaults(by: string): readonly Fault[] {
  const worked = evaluate(by, new Map());
  const at = ['shaken', 'by'];
  if (!worked.ok) return [{ at, message: message('author.length', { text: by, why: { said: worked.message } }) }];
  return worked.quantity.dimension === 'length' ? [] : [{ at, message: message('author.not-a-length', { text: by }) }];
}

/** The first given step that cannot be carried out on one of these orders, and marks to be shaken that are no points. */
export function givenGroundFaults(exercise: Exercise, orders: readonly Order[]): readonly Fault[] {
  for (const order of orders) {
    const dealt = dealOrder(order, ownMeasures(exercise));
    if (!dealt.ok) continue;
    const sheet = replay(dealt.givens, exercise.given ?? none);
    const [problem] = sheet.problems;
    if (problem !== undefined) return [undrawn(problem)];
    const faults = (exercise.shaken?.marks ?? []).flatMap((name, index) => notAPoint(sheet, name, index));
    if (faults.length > 0) return faults;
  }
  return [];
}

function undrawn({ step, field, message: why }: Problem): Fault {
  const at = field === null ? ['given', step] : ['given', step, field];
  return { at, message: message('author.given-problem', { why: { sentence: why } }) };
}

function notAPoint(sheet: Sheet, name: Name, index: number): readonly Fault[] {
  const shape = sheet.shapes.get(name);
  if (shape === undefined || shape.kind === 'point') return [];
  const values = { name, found: { said: message(`a.${shape.kind}`) }, wanted: { said: message('a.point') } };
  return [{ at: ['shaken', 'marks', index], message: message('author.object-kind', values) }];
}
