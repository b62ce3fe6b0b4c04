import { DRAFT_WORK } from '../drafting/limits.ts';
import { layOut } from './lay-out.ts';
import { letGoAt } from './let-go.ts';
import { otherOrders } from './other-orders.ts';
import type { OtherFigures } from './result.ts';
import { asked, lostOn, rightTargets, type Trial } from './trial.ts';

/**
 * Replays a draft on other people's orders: it holds on one when every target right on its own order is right there too.
 * A draft that asked for more work than it may is not tried at all: it says so on the step that did.
 */
export function tryOthers(trial: Trial): OtherFigures {
  const right = rightTargets(trial.judged);
  if (right.size === 0 || trial.work >= DRAFT_WORK) return { tried: 0, held: 0, letGo: [] };
  const tables = otherOrders(trial.exercise, trial.order).flatMap((order) => {
    const dealt = layOut(trial.exercise, order);
    return dealt.ok ? [dealt] : [];
  });
  const question = asked(trial, right);
  const lost = tables.map((table) => lostOn(table, question, trial.steps));
  const letGo = [...new Set(lost.flat())].flatMap((target) => letGoAt(target, trial, tables));
  return { tried: tables.length, held: lost.filter((targets) => targets.length === 0).length, letGo };
}
