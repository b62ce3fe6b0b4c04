import type { Making } from './construction.ts';
import type { Name } from './step.ts';

/**
 * A thing as it is on every table: given under a name, or made from other things. What is made alike from the same things is
 * one thing, whatever drafts call it.
 */
export type Thing = GivenThing | MadeThing;

interface Placed {
  /** Its place in its plan, from 0; what it is made from comes before it. */
  readonly at: number;
}

interface GivenThing extends Placed {
  readonly given: Name;
}

export interface MadeThing extends Placed {
  readonly given: null;
  readonly making: Making;
  readonly from: readonly Thing[];
}

/** Things that drafts make, on no table in particular. Things are added, and never changed. */
export interface Plan {
  /** What this plan goes on from, and does not add to. */
  readonly base: Plan | null;
  readonly givens: Map<Name, Thing>;
  /** By the pattern of the construction. */
  readonly makings: Map<string, MadeThing[]>;
  /** How many things there are, those of the base counted. */
  size: number;
}

/** A plan without things of its own. */
export function planOn(base: Plan | null): Plan {
  return { base, givens: new Map(), makings: new Map(), size: base?.size ?? 0 };
}

/** The thing that is given under a name. */
export function givenIn(plan: Plan, name: Name): Thing {
  for (let here: Plan | null = plan; here !== null; here = here.base) {
    const known = here.givens.get(name);
    if (known !== undefined) return known;
  }
  const thing: Thing = { at: plan.size++, given: name };
  plan.givens.set(name, thing);
  return thing;
}

/** The thing that is made so from these. */
export function madeIn(plan: Plan, making: Making, from: readonly Thing[]): Thing {
  const { pattern } = making;
  const known = knownIn(plan, making, from);
  if (known !== undefined) return known;
  const thing: MadeThing = { at: plan.size++, given: null, making, from };
  const alike = plan.makings.get(pattern);
  if (alike === undefined) plan.makings.set(pattern, [thing]);
  else alike.push(thing);
  return thing;
}

/** The same where it is in a plan already. */
export function knownIn(plan: Plan, { pattern }: Making, from: readonly Thing[]): Thing | undefined {
  for (let here: Plan | null = plan; here !== null; here = here.base) {
    const known = madeFrom(here.makings.get(pattern), from);
    if (known !== undefined) return known;
  }
  return undefined;
}

function madeFrom(among: readonly MadeThing[] | undefined, from: readonly Thing[]): Thing | undefined {
  if (among === undefined) return undefined;
  for (const thing of among) if (areSame(thing.from, from)) return thing;
  return undefined;
}

function areSame(some: readonly Thing[], others: readonly Thing[]): boolean {
  for (let i = 0; i < some.length; i++) if (some[i] !== others[i]) return false;
  return true;
}
