import { replay } from '../drafting/replay.ts';
import type { Givens } from '../drafting/sheet.ts';
import type { Name, Step } from '../drafting/step.ts';
import { dealOrder } from './deal.ts';
import type { Exercise } from './exercise.ts';
import { type JudgedTarget, judge } from './judge.ts';
import { letGoAt } from './let-go.ts';
import type { Order } from './order.ts';
import { otherOrders } from './other-orders.ts';
import type { OtherFigures } from './result.ts';
import type { Strictness } from './tolerance.ts';

/** A draft as it stands on its own order. */
export interface Trial {
  readonly exercise: Exercise;
  readonly order: Order;
  readonly givens: Givens;
  readonly steps: readonly Step[];
  readonly strictness: Strictness;
  readonly judged: readonly JudgedTarget[];
}

/** Replays a draft on other people's orders: it holds on one when every target right on its own order is right there too. */
export function tryOthers(trial: Trial): OtherFigures {
  const right = rightTargets(trial.judged);
  if (right.size === 0) return { tried: 0, held: 0, letGo: [] };
  const tables = otherOrders(trial.exercise, trial.order).flatMap((order) => {
    const dealt = dealOrder(order);
    return dealt.ok ? [dealt.givens] : [];
  });
  const lost = tables.map((givens) => lostOn(givens, trial, trial.steps, right));
  const letGo = [...new Set(lost.flat())].flatMap((target) => letGoAt(target, trial, tables));
  return { tried: tables.length, held: lost.filter((targets) => targets.length === 0).length, letGo };
}

/** Targets with every check within its tolerance. */
function rightTargets(judged: readonly JudgedTarget[]): ReadonlySet<Name> {
  return new Set(
    judged.filter(({ checks }) => checks.every(({ status }) => status === 'within')).map(({ target }) => target.name),
  );
}

/** The targets, right on the draft's own order, that are not right on this one. */
export function lostOn(givens: Givens, trial: Trial, steps: readonly Step[], right: ReadonlySet<Name>): readonly Name[] {
  const there = rightTargets(judge(trial.exercise, givens, replay(givens, steps), trial.strictness));
  return [...right].filter((target) => !there.has(target));
}
