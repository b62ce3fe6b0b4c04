import { ancestorsOf } from '../../src/drafting/dependencies.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Name, Step } from '../../src/drafting/step.ts';
import type { Figure } from '../../src/garment/figure.ts';
import { ofWays } from '../../src/grader/amendments.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { type JudgedTarget, marksOf } from '../../src/grader/judge.ts';
import { judgeDraft } from '../../src/grader/judge-draft.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import { stepFields } from '../../src/grader/step-fields.ts';
import { appliedSteps } from './applied-steps.ts';
import { orderOn } from './tables.ts';

/** One thing done wrongly in a draft that is otherwise the reference: which step, and what of it. */
export interface Slip {
  readonly step: Name;
  readonly what: string;
  readonly steps: readonly Step[];
}

/** What a slip costs at a target. */
export interface Cost {
  readonly target: Name;
  readonly lost: number;
  readonly of: number;
}

const LENGTHS = ['- 20 mm', '- 10 mm', '- 5 mm', '+ 5 mm', '+ 10 mm', '+ 20 mm', '/ 2.54', '* 2.54'];
const ANGLES = ['- 10 deg', '- 3 deg', '+ 3 deg', '+ 10 deg'];

/** Every slip in a length, an angle, a unit or a way, one at a time, with everything after it rightly drawn from there. */
export function slipsIn(steps: readonly Step[]): readonly Slip[] {
  const needed = new Set(steps.flatMap(({ name, answers }) => (answers === undefined ? [] : ancestorsOf(steps, name))));
  return steps.flatMap((step, index) =>
    needed.has(index) ? changesOf(step).map(({ what, changed }) => slipAt(steps, index, what, changed)) : [],
  );
}

function slipAt(steps: readonly Step[], index: number, what: string, changed: Step): Slip {
  return { step: changed.name, what, steps: steps.with(index, changed) };
}

function changesOf(step: Step): readonly { readonly what: string; readonly changed: Step }[] {
  const amounts = stepFields(step)
    .filter(({ field }) => field !== 'fraction')
    .flatMap(({ field, text }) =>
      (field === 'angle' ? ANGLES : LENGTHS).map((by) => ({
        what: `${field} ${by}`,
        changed: { ...step, [field]: `(${text}) ${by}` } as Step,
      })),
    );
  const ways = ofWays(step).map(({ step: changed, meant }) => ({ what: `goes ${meant}`, changed }));
  return [...amounts, ...ways];
}

/** The right draft of an exercise on a figure, as a learner writes it. */
export function rightDraft(exercise: Exercise, figure: Figure): readonly Step[] {
  return appliedSteps(exercise.reference, exercise, orderOn(exercise, figure));
}

/** How the targets of a draft stand in the workroom; null where a step of it cannot be carried out. */
export function judgedOn(exercise: Exercise, figure: Figure, steps: readonly Step[]): readonly JudgedTarget[] | null {
  const laid = layOut(exercise, orderOn(exercise, figure));
  if (!laid.ok) throw new Error(`the table of ${exercise.id} cannot be laid`);
  const sheet = replay(laid.learner, steps);
  if (sheet.problems.length > 0) return null;
  return judgeDraft({ exercise, givens: laid.givens, strictness: 'workroom' }, sheet, steps);
}

/** What is lost, target by target; nothing of those that earn all. */
export function costsOf(judged: readonly JudgedTarget[]): readonly Cost[] {
  return judged.flatMap((one): Cost[] => {
    const of = one.checks.reduce((sum, { check }) => sum + check.marks, 0);
    const lost = of - marksOf(one);
    return lost > 0 ? [{ target: one.target.name, lost, of }] : [];
  });
}
