import type { HalfStep } from './form.ts';
import { knownStep } from './known-step.ts';
import { givenIn, type Making, madeIn, type Plan, type Thing } from './plan.ts';
import type { Name, Step } from './step.ts';

/** What a step does in a draft: its making, and what it is done to. */
export interface PlannedStep extends Making {
  readonly name: Name;
  readonly answers: Name | null;
  readonly uses: readonly Name[];
}

/** The steps of a draft as makings; null where one gives no name or is not understood, or a name is given twice. */
export function plannedSteps(steps: readonly Step[]): readonly PlannedStep[] | null {
  const planned: PlannedStep[] = [];
  const names = new Set<Name>();
  for (const step of steps as readonly unknown[] as readonly HalfStep[]) {
    const { name, nameable, construction } = knownStep(step);
    if (!nameable || construction === null || names.has(name)) return null;
    names.add(name);
    const answers = typeof step.answers === 'string' ? step.answers : null;
    planned.push({ ...construction, step, name, answers });
  }
  return planned;
}

/** A draft on a plan: the things it makes, by name, and the names of those that answer targets. */
export interface PlannedDraft {
  readonly things: ReadonlyMap<Name, Thing>;
  readonly answers: ReadonlyMap<Name, Name>;
}

const noPins: ReadonlyMap<Name, Thing> = new Map();

/** Lays a draft on a plan, with things held in place of what answers targets. A name that nothing made before is taken for a given one. */
export function planDraft(
  plan: Plan,
  steps: readonly PlannedStep[],
  pins: ReadonlyMap<Name, Thing> = noPins,
): PlannedDraft {
  const things = new Map<Name, Thing>();
  const answers = new Map<Name, Name>();
  const used = (name: Name): Thing => things.get(name) ?? givenIn(plan, name);
  for (const step of steps) {
    const pin = step.answers === null ? undefined : pins.get(step.answers);
    things.set(step.name, pin ?? madeIn(plan, step, step.uses.map(used)));
    if (step.answers !== null) answers.set(step.answers, step.name);
  }
  return { things, answers };
}
