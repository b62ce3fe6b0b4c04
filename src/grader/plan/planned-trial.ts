import type { Input } from '../../drafting/input.ts';
import type { Thing } from '../../drafting/plan.ts';
import type { Shape } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import { type Laying, thingOn } from '../../drafting/thing-on.ts';
import type { Answer } from '../answer.ts';
import { isRightAnswer, type Ruler } from '../judge.ts';
import { type Named, shapeNamed } from '../measures/lookup.ts';
import { ownAnswerHolds } from '../own-answers.ts';
import type { DraftPlan } from './draft-plan.ts';
import { namedOn, shapeOn } from './named-on.ts';
import { type ReferenceTable, referenceTable } from './reference-ground.ts';
import type { Ground } from './reference-plan.ts';
import type { Stand } from './stands.ts';

/**
 * Those of some targets that are not right on the ruler's table, from a draft's plan: of it, and of the reference, only what is asked
 * for is drawn. Null where the draft or the reference cannot be tried so.
 */
export function lostByPlan(ruler: Ruler, { first }: DraftPlan, among: ReadonlySet<Name>): readonly Name[] | null {
  const table = referenceTable(ruler.exercise, ruler.givens);
  if (table === null || first === null) return null;
  const laying: Laying = { table: ruler.givens, known: [...wholeReference(table)], memory: null };
  const look = looking(table, laying);
  const lost = new Set<Name>();
  let left = among.size;
  let stand: Stand | null = first;
  // What comes after the last of them is not looked at.
  while (stand !== null && left > 0) {
    const shape = answerOn(stand, laying);
    if (among.has(stand.target.name)) {
      left -= 1;
      if (!holdsAt(ruler, stand, shape, laying, look)) lost.add(stand.target.name);
    }
    stand = shape === null ? stand.unanswered() : stand.answered();
  }
  return [...among].filter((target) => lost.has(target));
}

/** What a draft answers where it stands, of the kind that is wanted there; null where it answers nothing. */
function answerOn({ target, answer }: Stand, laying: Laying): Shape | null {
  const shape = answer && shapeOn(answer, laying);
  return shape?.kind === target.makes ? shape : null;
}

/** Whether an answer is right where it stands. Where the answers before leave the reference nothing to stand on, it is held against the reference's own. */
function holdsAt(
  ruler: Ruler,
  { target, answer, right, ground }: Stand,
  shape: Shape | null,
  laying: Laying,
  look: (ground: Ground | null) => Named,
): boolean {
  const found: Answer = shape === null ? { found: 'nothing' } : { found: 'right-kind', shape, object: target.name };
  const wanted = shape !== null && answer === right ? shape : shapeOn(right, laying);
  const reference = look(wanted === null ? null : ground);
  const footing = { right: wanted ?? shapeNamed(reference, target.name), reference };
  const holds = (): boolean => isRightAnswer(ruler, target, found, footing);
  const isOwn = ground === null && answer === right && shape !== null;
  return isOwn ? ownAnswerHolds(reference, target.name, ruler.strictness, holds) : holds();
}

/** Looks things up on the reference as it stands; targets that come one after another often have the same ground. */
function looking({ own, reference }: ReferenceTable, laying: Laying): (ground: Ground | null) => Named {
  let last: Ground | null = null;
  let here = own;
  return (ground) => {
    if (ground !== last) here = ground === null ? own : namedOn(reference, ground, laying);
    last = ground;
    return here;
  };
}

const whole = new WeakMap<ReferenceTable, readonly (Input | null)[]>();

/** What all the things of the reference are on a table, by their places, drawn once for all drafts that are tried there. */
function wholeReference(table: ReferenceTable): readonly (Input | null)[] {
  const known = whole.get(table);
  if (known !== undefined) return known;
  const { reference, laying } = table;
  const things: readonly Thing[] = [...reference.plan.givens.values(), ...reference.own];
  for (const thing of things) thingOn(thing, laying);
  const drawn = Array.from({ length: reference.plan.size }, (_, at) => laying.known[at] ?? null);
  whole.set(table, drawn);
  return drawn;
}
