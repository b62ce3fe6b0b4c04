import { metered } from '../geometry/work.ts';
import { message } from '../words/message.ts';
import { carryOut } from './carry-out.ts';
import type { Making } from './construction.ts';
import type { Head } from './head.ts';
import { type Input, inputNamed } from './input.ts';
import { PIECE_WORK } from './limits.ts';
import { failed, made, type Outcome } from './outcome.ts';
import type { Scope } from './scope.ts';
import type { Shape } from './shape.ts';
import type { Givens } from './sheet.ts';

/** What came of a step, and what it cost, whether it was worked out now or before. */
export interface Done {
  readonly outcome: Outcome<Shape>;
  readonly work: number;
}

/** What a step made, and from what. */
interface Made extends Done {
  readonly inputs: Found;
}

/** What was found under the names that a step uses. */
type Found = readonly (Input | undefined)[];

/** What was made on a table, by the pattern of its construction; what was used last is last. */
export type Memory = Map<string, Made[]>;

/** Of one pattern so many things are kept, those used last. */
const KEPT = 24;

/** So many patterns are remembered on one table, and then all are forgotten: where somebody draws, each move of the hand may be a new one. */
const MOST = 500;

/**
 * So much is remembered on all tables together, in pieces of curves, and then all is forgotten: tables that stay, those of
 * the other figures, could otherwise be filled by drafts made to fill them until there is no room to mark the next one.
 */
const ROOM = 100_000;

let memories = new WeakMap<Givens['shapes'], Memory>();
let held = 0;

/**
 * What is remembered of a table, for as long as it lies there. The same objects are the same table, whoever looks at it: the
 * learner, or the marker with a measure more.
 */
export function memoryOf({ shapes }: Givens): Memory {
  if (held > ROOM) {
    memories = new WeakMap();
    held = 0;
  }
  const known = memories.get(shapes);
  if (known !== undefined) {
    if (known.size > MOST) known.clear();
    return known;
  }
  const memory: Memory = new Map();
  memories.set(shapes, memory);
  return memory;
}

/**
 * Carries out a step, or gives again what the same construction made on the same table from the same things, whatever they
 * are called. A draft is replayed over and over with one step or one pin changed, and only what hangs on the change is made
 * anew; drafts of one class are alike but for their names. Steps and shapes are never changed in place, so that being the
 * same object is being the same. What costs more than `limit` is given up, and what was made before costs what it cost
 * then: a draft comes out the same whatever is remembered.
 */
export function carryOutOnce(head: Head, scope: Scope, memory: Memory, limit: number): Done {
  const { construction } = head;
  if (construction === null) return carriedOut(limit, head, scope);
  const { making, uses } = construction;
  const { pattern } = making;
  const inputs = uses.map((name) => inputNamed(name, scope));
  const before = memory.get(pattern);
  const again = before && madeFrom(inputs, before);
  if (again) return again.work <= limit ? again : givenUp(limit);
  const done = readyMade(limit, making, inputs) ?? carriedOut(limit, head, scope);
  // Why a step fails may hang on the other steps; what it makes hangs on its inputs alone.
  if (!done.outcome.ok) return done;
  const now: Made = { outcome: done.outcome, work: done.work, inputs };
  if (before === undefined) memory.set(pattern, [now]);
  else if (before.push(now) > KEPT) before.shift();
  held += sizeOf(now, pattern);
  return now;
}

/** What this construction made from these things before; null where that is not known. */
export function madeBefore(memory: Memory, pattern: string, inputs: readonly Input[]): Shape | null {
  const before = memory.get(pattern);
  const made = before && madeFrom(inputs, before);
  return made?.outcome.ok ? made.outcome.value : null;
}

/** What was made from these things, which is then the last that was used. */
function madeFrom(inputs: Found, before: Made[]): Made | undefined {
  for (let at = before.length - 1; at >= 0; at--) {
    const made = before[at] as Made;
    if (!areSame(made.inputs, inputs)) continue;
    if (at < before.length - 1) before.push(...before.splice(at, 1));
    return made;
  }
  return undefined;
}

function areSame(some: Found, others: Found): boolean {
  for (let i = 0; i < some.length; i++) if (some[i] !== others[i]) return false;
  return true;
}

/** What its construction makes at once; null where it makes nothing, and why has to be found out. */
function readyMade(limit: number, { make }: Making, inputs: Found): Done | null {
  if (inputs.includes(undefined)) return null;
  const tried = metered(limit, () => make(inputs as readonly Input[]));
  if (!tried.done) return givenUp(limit);
  return tried.value === null ? null : within(limit, made(tried.value), tried.spent);
}

/** What carrying the step out blank by blank comes to. */
function carriedOut(limit: number, { step, form }: Head, scope: Scope): Done {
  const tried = metered(limit, () => carryOut(step, form, scope));
  return tried.done ? within(limit, tried.value, tried.spent) : givenUp(limit);
}

function within(limit: number, outcome: Outcome<Shape>, spent: number): Done {
  const work = outcome.ok ? workOf(spent, outcome.value) : spent + 1;
  return work <= limit ? { outcome, work } : givenUp(limit);
}

/** What a step costs that made a shape: what was spent on it, and laying it on the sheet. */
export function workOf(spent: number, shape: Shape): number {
  return spent + 1 + PIECE_WORK * piecesOf(shape);
}

/** About how much room it takes, in pieces of curves: a piece is some 250 bytes. */
function sizeOf({ outcome, inputs }: Made, pattern: string): number {
  return 1 + (outcome.ok ? piecesOf(outcome.value) : 0) + (pattern.length + 8 * inputs.length) / 250;
}

function piecesOf(shape: Shape): number {
  return shape.kind === 'curve' ? shape.path.length : 0;
}

function givenUp(work: number): Done {
  return { outcome: failed(null, message('problem.too-much-work')), work };
}
