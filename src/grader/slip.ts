import type { Givens } from '../drafting/sheet.ts';
import { written } from '../words/message.ts';
import { amendedOf, type Draft, WRONG_UNIT } from './amended.ts';
import { ofAmounts, ofWays } from './amendments.ts';
import type { Bench, Slip } from './bench.ts';
import type { Exercise } from './exercise.ts';
import { fillers } from './fillers.ts';
import { isRight, type JudgedTarget } from './judge.ts';
import { misreadingOf } from './misreading.ts';
import { otherRuleOf } from './other-rule.ts';
import { isReferenceWay } from './reference-way.ts';
import { exchanged, takenFor } from './taken-for.ts';

/**
 * What was done wrong at a target: one of the exercise's own misreadings, or what no exercise need list: two answers
 * exchanged, a length typed in the wrong unit or with something added, the opposite way gone, another house's rule followed,
 * another target's answer pointed out. Null where none of these is known, or nothing is wrong. An exchange comes first:
 * judged from an answer exchanged before it, the other may pass for anything. What was typed comes before the misreadings,
 * which see only where the answer lies: a stand with 1 cm added may lie where the fall would.
 */
export function slipOf(bench: Bench, judged: JudgedTarget, draft: Draft): Slip | null {
  if (isRight(judged) || judged.answer.found !== 'right-kind') return null;
  return (
    exchanged(bench, judged) ??
    typedOrMisread(bench, judged, draft) ??
    wrongWay(bench, judged, draft) ??
    otherRuleOf(bench, judged) ??
    takenFor(bench, judged)
  );
}

/**
 * What was typed says more surely what was done wrong than where the answer lies; but an exercise that has words of its own
 * for inches read as centimetres has better ones.
 */
function typedOrMisread(bench: Bench, judged: JudgedTarget, draft: Draft): Slip | null {
  const typed = amendedOf(bench, judged, draft, ofAmounts);
  const misreading = misread(bench.exercise, bench.givens, judged);
  if (typed === null) return misreading;
  return typed.id === WRONG_UNIT && misreading?.id.endsWith(UNIT_MISREAD) ? misreading : typed;
}

function wrongWay(bench: Bench, judged: JudgedTarget, draft: Draft): Slip | null {
  return amendedOf(bench, judged, draft, (step) =>
    ofWays(step).filter((one) => isReferenceWay(one.step, bench.exercise, draft.learner)),
  );
}

/** How exercises call, or end to call, inches that were read as centimetres. */
const UNIT_MISREAD = 'inches-as-centimetres';

function misread(exercise: Exercise, givens: Givens, judged: JudgedTarget): Slip | null {
  const misreading = misreadingOf(exercise, givens, judged);
  if (misreading === null) return null;
  const off = judged.checks.filter(({ status }) => status !== 'within');
  const read = off.find(({ reading }) => reading !== null);
  // An answer that runs across what it should run beside has no size to be off by: what says one cannot be said of it.
  if (read === undefined && SIZED.test(misreading.says)) return null;
  return { id: misreading.id, says: [written(misreading.says, fillers(read ?? null, givens))] };
}

/** Words that say by how much a check is off. */
const SIZED = /\{(?:off|measured|expected)[,}]/;
