import { replay } from '../drafting/replay.ts';
import type { Givens, Sheet } from '../drafting/sheet.ts';
import type { Step } from '../drafting/step.ts';
import { message } from '../words/message.ts';
import { draftOf } from './amended.ts';
import type { Bench, Slip } from './bench.ts';
import { expectedOf, shareOf } from './bounds.ts';
import { differ, slipsBefore } from './carried.ts';
import { oddClaims } from './claims.ts';
import type { Exercise } from './exercise.ts';
import { isRight, type JudgedCheck, type JudgedTarget } from './judge.ts';
import { judgeDraft } from './judge-draft.ts';
import { layOut } from './lay-out.ts';
import { shapeNamed } from './measures/lookup.ts';
import type { Order } from './order.ts';
import { tryOthers } from './others.ts';
import { plannedReplay } from './plan/planned-replay.ts';
import { referenceGround } from './plan/reference-ground.ts';
import { redMarkFor } from './red.ts';
import { type Finding, reportOn } from './report.ts';
import type { CheckResult, Grade } from './result.ts';
import { slipOf } from './slip.ts';
import type { Strictness } from './tolerance.ts';
import { unclaimedFor } from './unclaimed.ts';
import { unitOf } from './unit.ts';
import { usedTargets } from './used-targets.ts';

/** Marks a draft: replays it on its own order, judges every target from where the learner stood, and tries it on other figures. Never throws on what a learner did. */
export function gradeDraft(exercise: Exercise, order: Order, steps: readonly Step[], strictness: Strictness): Grade {
  const dealt = layOut(exercise, order);
  const of = exercise.checks.reduce((sum, check) => sum + check.marks, 0);
  if (!dealt.ok) {
    const otherFigures = { tried: 0, held: 0, letGo: [] };
    return {
      exercise: exercise.id,
      strictness,
      marks: 0,
      of,
      problems: [dealt.message],
      checks: [],
      reports: [],
      otherFigures,
    };
  }
  const { givens, learner } = dealt;
  const sheet = plannedReplay(exercise, dealt, steps) ?? replay(learner, steps);
  const judged = judgeDraft({ exercise, givens, strictness }, sheet, steps);
  const bench = { exercise, order, givens, strictness, judged };
  const draft = draftOf(exercise, learner, steps, sheet);
  const findings = judged.map((one, index) => findingAt(bench, index, slipOf(bench, one, draft)));
  const checks = findings.flatMap((finding) => finding.judged.checks.map((check) => resultOf(finding, check)));
  return {
    exercise: exercise.id,
    strictness,
    marks: checks.reduce((sum, check) => sum + check.marks, 0),
    of,
    problems: [...problemsOf(sheet), ...oddClaims(exercise, steps)],
    checks,
    reports: findings.map((finding) => reportOn(finding, givens, unclaimedFor(bench, finding.judged, steps, sheet))),
    otherFigures: tryOthers({ exercise, order, learner, steps, strictness, judged, work: sheet.work }),
  };
}

function problemsOf(sheet: Sheet): Grade['problems'] {
  return sheet.problems.map(({ step, message: said }) =>
    message('grader.problem', { step: step + 1, problem: { sentence: said } }),
  );
}

function findingAt({ exercise, givens, judged }: Bench, index: number, slip: Slip | null): Finding {
  const one = judged[index] as JudgedTarget;
  const used = usedTargets(exercise, one.target.name);
  const before = slipsBefore(judged, index);
  const shared = before.filter(({ target }) => one.again?.by === 'shared' && target.name === one.again.slip);
  const stoodOn = before.filter(({ target }) => used.has(target.name) && one.pins.has(target.name));
  const earlier = [...new Set([...stoodOn, ...shared])];
  const carried = shared.length > 0 || (earlier.length > 0 && movedByPins(exercise, givens, one));
  return {
    judged: one,
    slip,
    earlier: carried ? earlier : [],
    sound: carried ? [] : judged.slice(0, index).filter((before) => used.has(before.target.name) && isRight(before)),
  };
}

/** Whether the learner's earlier answers moved what is expected here. */
function movedByPins(exercise: Exercise, givens: Givens, { target, right }: JudgedTarget): boolean {
  const own = shapeNamed(referenceGround(exercise, givens), target.name);
  return own !== null && right !== null && differ(own, right);
}

function resultOf({ judged, slip, earlier }: Finding, one: JudgedCheck): CheckResult {
  const { check, reading, status, off, tolerance } = one;
  return {
    target: judged.target.name,
    check: check.measure,
    status,
    measured: reading?.measured ?? null,
    expected: reading === null ? null : expectedOf(reading, one.bounds),
    off,
    tolerance,
    unit: unitOf(check.measure),
    marks: check.marks * shareOf(status),
    of: check.marks,
    carried: earlier.length > 0,
    misreading: status === 'within' ? null : (slip?.id ?? null),
    red: redMarkFor(judged, one),
  };
}
