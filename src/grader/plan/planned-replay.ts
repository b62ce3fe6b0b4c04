import { DRAFT_WORK, STEP_WORK } from '../../drafting/limits.ts';
import type { Thing } from '../../drafting/plan.ts';
import { workOf } from '../../drafting/remember.ts';
import { lay } from '../../drafting/replay.ts';
import type { Shape } from '../../drafting/shape.ts';
import type { Replayed } from '../../drafting/sheet.ts';
import type { Name, Step } from '../../drafting/step.ts';
import type { Laying } from '../../drafting/thing-on.ts';
import { metered } from '../../geometry/work.ts';
import type { Exercise } from '../exercise.ts';
import type { Laid } from '../lay-out.ts';
import { type DraftPlan, draftPlan } from './draft-plan.ts';
import { shapeOn } from './named-on.ts';
import { isBare, layDrawn } from './reference-ground.ts';

/**
 * A draft replayed on its own table from its plan, as `replay` does it: what it makes there and the reference makes too is made
 * once. Null where something was drawn on the table before, which is remembered step by step, or where a step cannot be
 * carried out, for `replay` says why.
 */
export function plannedReplay(exercise: Exercise, laid: Laid, steps: readonly Step[]): Replayed | null {
  const draft = isBare(exercise, laid.givens) ? draftPlan(exercise, steps, laid) : null;
  if (draft === null) return null;
  const laying: Laying = { table: laid.givens, known: [], memory: null };
  const sheet = drawn(draft, laid, steps, laying);
  if (sheet !== null) layDrawn(exercise, draft, laying);
  return sheet;
}

function drawn({ made }: DraftPlan, { learner }: Laid, steps: readonly Step[], laying: Laying): Replayed | null {
  const shapes = new Map(learner.shapes);
  const measures = new Map(learner.measures);
  const answers = new Map<Name, Name>();
  const took = new Map<Thing, number>();
  let work = 0;
  for (let at = 0; at < steps.length; at++) {
    const { name, answers: target } = steps[at] as Step;
    const thing = made[at] as Thing;
    const done = once(thing, laying, Math.max(DRAFT_WORK - work, STEP_WORK), took);
    if (done === null) return null;
    work += done.work;
    lay(name, done.shape, shapes, measures);
    if (target !== undefined) answers.set(target, name);
  }
  return { shapes, measures, answers, problems: [], work };
}

/** What a thing is and what it cost when it was made first; null where it cannot be made, or costs more than `limit`. */
function once(thing: Thing, laying: Laying, limit: number, took: Map<Thing, number>) {
  const tried = metered(limit, () => shapeOn(thing, laying));
  if (!tried.done || tried.value === null) return null;
  const shape: Shape = tried.value;
  const work = took.get(thing) ?? workOf(tried.spent, shape);
  took.set(thing, work);
  return work <= limit ? { shape, work } : null;
}
