import { type Plan, planOn, type Thing } from '../../drafting/plan.ts';
import { type PlannedStep, planDraft, plannedSteps } from '../../drafting/planned.ts';
import { memoryOf } from '../../drafting/remember.ts';
import { replay } from '../../drafting/replay.ts';
import type { Shape } from '../../drafting/shape.ts';
import type { Givens, Pins } from '../../drafting/sheet.ts';
import type { Name, Step } from '../../drafting/step.ts';
import { type Laying, thingOn } from '../../drafting/thing-on.ts';
import type { Exercise } from '../exercise.ts';
import type { Named } from '../measures/lookup.ts';
import { referenceOn } from '../reference-on.ts';
import type { DraftPlan } from './draft-plan.ts';
import { namedOn, shapeOn } from './named-on.ts';
import { groundHolding, mayAllBeHeld, type ReferencePlan, referencePlan } from './reference-plan.ts';

/** A table on which the reference is drawn, as far as is asked for, with whatever is held in place of its own answers. */
export interface ReferenceTable {
  readonly reference: ReferencePlan;
  readonly plan: Plan;
  readonly laying: Laying;
  readonly own: Named;
  /** What was held, each shape a thing. */
  readonly held: Map<Shape, Thing>;
}

const tables = new WeakMap<Givens, Map<Exercise, ReferenceTable>>();

/** So many things are kept on one table, and then it is drawn anew: where somebody draws, every check may hold other answers. */
const MOST = 5000;

/** The table, the same for as long as it lies there; null where the reference cannot be planned. */
export function referenceTable(exercise: Exercise, givens: Givens): ReferenceTable | null {
  const here = tables.get(givens) ?? new Map<Exercise, ReferenceTable>();
  tables.set(givens, here);
  const known = here.get(exercise);
  if (known !== undefined && known.plan.size <= MOST) return known;
  const reference = referencePlan(exercise);
  if (reference === null) return null;
  const laying: Laying = { table: givens, known: [], memory: memoryOf(givens) };
  const table = tableOf(reference, planOn(reference.plan), laying);
  here.set(exercise, table);
  return table;
}

function tableOf(reference: ReferencePlan, plan: Plan, laying: Laying): ReferenceTable {
  const own = namedOn(reference, (place) => reference.own[place] as Thing, laying);
  return { reference, plan, laying, own, held: new Map() };
}

/** Whether nothing of an exercise is drawn on a table. */
export function isBare(exercise: Exercise, givens: Givens): boolean {
  return !tables.get(givens)?.has(exercise);
}

/** Takes a table on which a draft was drawn from its plan, and nothing before it, for the one on which the reference is drawn. */
export function layDrawn(exercise: Exercise, { reference, plan, answers }: DraftPlan, laying: Laying): void {
  const table = tableOf(reference, planOn(plan), laying);
  for (const thing of answers.values()) {
    const shape = shapeOn(thing, laying);
    if (shape !== null) table.held.set(shape, thing);
  }
  const here = tables.get(laying.table) ?? new Map<Exercise, ReferenceTable>();
  tables.set(laying.table, here.set(exercise, table));
}

/** The reference on a table as checks look things up on it. */
export function referenceGround(exercise: Exercise, givens: Givens): Named {
  return referenceTable(exercise, givens)?.own ?? referenceOn(exercise, givens);
}

/** The same with a learner's answers held in place of its own. */
export function referenceHolding(exercise: Exercise, givens: Givens, pins: Pins): Named {
  const table = mayBePlanned(pins) ? referenceTable(exercise, givens) : null;
  if (table === null) return replay(givens, exercise.reference, pins);
  const { reference, plan, laying } = table;
  return namedOn(reference, groundHolding(reference, plan, thingsOf(pins, table)), laying);
}

/**
 * The same with what the learner made on the way held too, by the names of the steps of the reference in whose place it stands:
 * those answer no target, and each makes what is of the same kind.
 */
export function referenceStandingOn(
  exercise: Exercise,
  givens: Givens,
  pins: Pins,
  stoodOn: ReadonlyMap<Name, Shape>,
): Named {
  const table = mayBePlanned(pins) && mayBePlanned(stoodOn) ? referenceTable(exercise, givens) : null;
  if (table === null)
    return replay(givens, answering(exercise.reference, stoodOn), new Map([...pins, ...asAnswers(stoodOn)]));
  const { reference, plan, laying } = table;
  return namedOn(reference, groundHolding(reference, plan, thingsOf(pins, table), thingsOf(stoodOn, table)), laying);
}

/** Steps that answer no target, as if each answered one of its own; the mark before its name keeps it from being a target's. */
function answering(steps: readonly Step[], stoodOn: ReadonlyMap<Name, Shape>): readonly Step[] {
  return steps.map((step) => (stoodOn.has(step.name) ? { ...step, answers: `=${step.name}` } : step));
}

function asAnswers(stoodOn: ReadonlyMap<Name, Shape>): readonly [Name, Shape][] {
  return [...stoodOn].map(([name, shape]) => [`=${name}`, shape]);
}

/** The same of a way to a target that is not the reference's. */
export function wayHolding(exercise: Exercise, givens: Givens, way: readonly Step[], pins: Pins): Named {
  const table = mayBePlanned(pins) ? referenceTable(exercise, givens) : null;
  const steps = table === null ? null : plannedWay(way, exercise);
  if (table === null || steps === null) return replay(givens, way, pins);
  return drawnBeside(table, steps, thingsOf(pins, table));
}

const ways = new WeakMap<readonly Step[], readonly PlannedStep[] | null>();

/** A way planned, once for an exercise; null where it cannot be, or what is held may not be of the kind that its steps make. */
function plannedWay(way: readonly Step[], exercise: Exercise): readonly PlannedStep[] | null {
  const known = ways.get(way);
  if (known !== undefined) return known;
  const steps = plannedSteps(way);
  const planned = steps !== null && mayAllBeHeld(steps, exercise) ? steps : null;
  ways.set(way, planned);
  return planned;
}

/** What a learner's steps make on a table with one of them changed; null where they cannot be planned. Of them only that is drawn again which hangs on the change. */
export function redrawn(exercise: Exercise, givens: Givens, steps: readonly Step[]): Named | null {
  const table = referenceTable(exercise, givens);
  const planned = table === null ? null : plannedSteps(steps);
  return table === null || planned === null ? null : drawnBeside(table, planned, new Map());
}

function drawnBeside(
  { plan, laying }: ReferenceTable,
  steps: readonly PlannedStep[],
  pins: ReadonlyMap<Name, Thing>,
): Named {
  const { things, answers } = planDraft(plan, steps, pins);
  const shapeAt = (name: Name): Shape | undefined => {
    const thing = things.get(name);
    const found = thing === undefined ? laying.table.shapes.get(name) : thingOn(thing, laying);
    return found && 'kind' in found ? found : undefined;
  };
  return { shapes: { get: shapeAt }, answers };
}

/** A curve of more pieces than this is left to `replay`, which counts what drawing on it takes. */
const PIECES = 100;

function mayBePlanned(pins: Pins): boolean {
  for (const shape of pins.values()) if (shape.kind === 'curve' && shape.path.length > PIECES) return false;
  return true;
}

function thingsOf(pins: Pins, table: ReferenceTable): ReadonlyMap<Name, Thing> {
  return new Map([...pins].map(([target, shape]): [Name, Thing] => [target, heldThing(shape, table)]));
}

/** A shape as a thing that lies there from the first, so that it is never looked up by a name. */
function heldThing(shape: Shape, { plan, laying, held }: ReferenceTable): Thing {
  const known = held.get(shape);
  if (known !== undefined) return known;
  const thing: Thing = { at: plan.size++, given: '' };
  laying.known[thing.at] = shape;
  held.set(shape, thing);
  return thing;
}
