import type { Making } from '../../drafting/construction.ts';
import type { Input } from '../../drafting/input.ts';
import { madeIn, type Thing } from '../../drafting/plan.ts';
import { sameShape } from '../../drafting/same-shape.ts';
import type { Shape } from '../../drafting/shape.ts';
import { type Laying, thingOn } from '../../drafting/thing-on.ts';
import { straightened } from '../answer.ts';
import type { Exercise, Target } from '../exercise.ts';
import type { Laid } from '../lay-out.ts';
import type { Tried } from '../lost.ts';
import { type Named, shapeNamed } from '../measures/lookup.ts';
import type { DraftPlan } from './draft-plan.ts';
import { namedOn, shapeOn } from './named-on.ts';
import { type ReferenceTable, referenceTable } from './reference-ground.ts';

/** A planned draft tried on a table: of it, and of the reference, only what is asked for is drawn. Null where the reference cannot be planned. */
export function plannedTrial(exercise: Exercise, draft: DraftPlan, { givens }: Laid): Tried | null {
  const table = referenceTable(exercise, givens);
  if (table === null) return null;
  const { reference, own } = table;
  const laying: Laying = { table: givens, known: [...wholeReference(table)], memory: null };
  let { held } = draft;
  let here: Named = own;
  return {
    own,
    answerTo: (target) => {
      const thing = answering(target, draft, laying);
      const shape = thing === null ? null : shapeOn(thing, laying);
      return shape === null ? { found: 'nothing' } : { found: 'right-kind', shape, object: target.name };
    },
    footingFor: ({ name }) => {
      const right = shapeNamed(here, name);
      return right === null ? { right: shapeNamed(own, name), reference: own } : { right, reference: here };
    },
    keep: (target, answer) => {
      const thing = answering(target, draft, laying);
      if (thing === null) return;
      held = held.holding(target.name, thing);
      const made = here.shapes.get(reference.answers.get(target.name) ?? '');
      if (made !== undefined && sameShape(made, answer)) return;
      here = namedOn(reference, held.ground, laying);
    },
  };
}

const whole = new WeakMap<ReferenceTable, readonly (Input | null)[]>();

/** What all the things of the reference are on a table, by their places, drawn once for all drafts that are tried there. */
function wholeReference(table: ReferenceTable): readonly (Input | null)[] {
  const known = whole.get(table);
  if (known !== undefined) return known;
  const { reference, laying } = table;
  for (const thing of [...reference.plan.givens.values(), ...reference.own]) thingOn(thing, laying);
  const drawn = Array.from({ length: reference.plan.size }, (_, at) => laying.known[at] ?? null);
  whole.set(table, drawn);
  return drawn;
}

/** What answers a target, of the kind that is wanted there; null where nothing does. */
function answering(target: Target, { answers, plan }: DraftPlan, laying: Laying): Thing | null {
  const thing = answers.get(target.name);
  const shape = thing === undefined ? null : shapeOn(thing, laying);
  if (thing === undefined || shape === null) return null;
  if (shape.kind === target.makes) return thing;
  return target.makes === 'line' && straightened(shape) !== null ? madeIn(plan, straightening, [thing]) : null;
}

/** A straight seam serves as a line. */
const straightening: Making = {
  number: 0,
  pattern: 'straightened',
  make: ([seam]) => straightened(seam as Shape),
};
