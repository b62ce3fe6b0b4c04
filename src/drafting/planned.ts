import type { Construction } from './construction.ts';
import type { HalfStep } from './form.ts';
import { type KnownStep, knownStep } from './known-step.ts';
import { givenIn, madeIn, type Plan, type Thing } from './plan.ts';
import type { Name, Step } from './step.ts';

/** A step that can be planned: it gives a name, and what it does is understood. */
export interface PlannedStep extends KnownStep {
  readonly construction: Construction;
}

/** The steps of a draft as they can be planned; null where one gives no name or is not understood, or a name is given twice. */
export function plannedSteps(steps: readonly Step[]): readonly PlannedStep[] | null {
  const planned: PlannedStep[] = [];
  const names = new Set<Name>();
  for (const step of steps as readonly unknown[] as readonly HalfStep[]) {
    const known = knownStep(step);
    if (!isPlanned(known) || names.has(known.name)) return null;
    names.add(known.name);
    planned.push(known);
  }
  return planned;
}

function isPlanned(known: KnownStep): known is PlannedStep {
  return known.nameable && known.construction !== null;
}

/** A draft on a plan: the things it makes, by name in the order of its steps, and the names of those that answer targets. */
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
  for (const { name, answers: target, construction } of steps) {
    const pin = target === null ? undefined : pins.get(target);
    things.set(name, pin ?? madeBy(construction, things, plan));
    if (target !== null) answers.set(target, name);
  }
  return { things, answers };
}

function madeBy({ making, uses }: Construction, things: ReadonlyMap<Name, Thing>, plan: Plan): Thing {
  return madeIn(
    plan,
    making,
    uses.map((name) => things.get(name) ?? givenIn(plan, name)),
  );
}
