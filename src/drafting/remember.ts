import { metered } from '../geometry/work.ts';
import { message } from '../words/message.ts';
import { carryOut } from './carry-out.ts';
import { namesUsedBy } from './dependencies.ts';
import type { HalfStep } from './form.ts';
import { PIECE_WORK } from './limits.ts';
import { failed, made, type Outcome } from './outcome.ts';
import type { Quantity } from './quantity.ts';
import type { Scope } from './scope.ts';
import type { Shape } from './shape.ts';
import type { Givens } from './sheet.ts';
import type { Name, Step } from './step.ts';
import type { Form } from './verbs.ts';

type Input = Shape | Quantity | undefined;

/** What came of a step, and what it cost, whether it was worked out now or before. */
export interface Done {
  readonly outcome: Outcome<Shape>;
  readonly work: number;
}

/** What a step made, and from what. */
interface Made extends Done {
  readonly inputs: readonly Input[];
}

/** How often a step has made something is kept: once as the reference stands, once as a learner's pins stand, and one to spare. */
const KEPT = 3;

const tables = new WeakMap<Givens, WeakMap<HalfStep, readonly Made[]>>();
const used = new WeakMap<HalfStep, readonly Name[]>();

/**
 * Carries out a step, or gives again what the same step made on the same table from the same things. A draft is replayed
 * over and over with one step or one pin changed, and only what hangs on the change is made anew. Steps and shapes are
 * never changed in place, so that being the same object is being the same. What costs more than `limit` is given up, and
 * what was made before costs what it cost then: a draft comes out the same whatever is remembered.
 */
export function carryOutOnce(step: HalfStep, form: Form, scope: Scope, givens: Givens, limit: number): Done {
  const table = tables.get(givens) ?? new WeakMap<HalfStep, readonly Made[]>();
  tables.set(givens, table);
  const inputs = namesOf(step).map((name): Input => scope.shapes.get(name) ?? scope.measures.get(name));
  const before = table.get(step) ?? [];
  const again = before.find((one) => inputs.every((input, i) => input === one.inputs[i]));
  if (again) return again.work <= limit ? again : givenUp(limit);
  const done = carryOutWithin(limit, step, form, scope);
  // Why a step fails may hang on the other steps; what it makes hangs on its inputs alone.
  const { outcome, work } = done;
  if (outcome.ok) table.set(step, [{ inputs, outcome: made(outcome.value), work }, ...before.slice(0, KEPT - 1)]);
  return done;
}

function carryOutWithin(limit: number, step: HalfStep, form: Form, scope: Scope): Done {
  const tried = metered(limit, () => carryOut(step, form, scope));
  if (!tried.done) return givenUp(limit);
  const work = tried.spent + 1 + (tried.value.ok ? PIECE_WORK * piecesOf(tried.value.value) : 0);
  return work <= limit ? { outcome: tried.value, work } : givenUp(limit);
}

function piecesOf(shape: Shape): number {
  return shape.kind === 'curve' ? shape.path.length : 0;
}

function givenUp(work: number): Done {
  return { outcome: failed(null, message('problem.too-much-work')), work };
}

function namesOf(step: HalfStep): readonly Name[] {
  const known = used.get(step) ?? namesUsedBy(step as unknown as Step);
  used.set(step, known);
  return known;
}
