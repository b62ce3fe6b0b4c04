import { exerciseNames, loadExercise } from '../../src/cli/exercises.ts';
import { ancestorsOf } from '../../src/drafting/dependencies.ts';
import { evaluate, hasNumberOnly } from '../../src/drafting/expression.ts';
import type { Step } from '../../src/drafting/step.ts';
import { sampleFigure } from '../../src/garment/sample.ts';
import type { Chance } from '../../src/garment/seed.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import { misread } from '../../src/grader/misreading.ts';
import type { Order } from '../../src/grader/order.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { appliedSteps } from '../grader/applied-steps.ts';
import type { Kind } from './kinds.ts';

/** A draft made for a kind of work. */
export interface Draft {
  readonly exercise: Exercise;
  /** The seed of the figure it is drawn on, sampled from anyone. */
  readonly seed: string;
  readonly steps: readonly Step[];
  readonly misreading: string | null;
}

const exercises = exerciseNames().map((name) => loadExercise(name));

/** The exercises from which work of a kind can be made. */
export function exercisesFor(kind: Kind): readonly Exercise[] {
  if (kind === 'misread') return withMisreadings;
  if (kind === 'carried') return withEarlyWidth;
  if (kind === 'typed') return withTypedWidth;
  return exercises;
}

const withMisreadings = exercises.filter(({ misreadings }) => misreadings.length > 0);

/** Exercises whose first target is a parallel, and that build others on it: too wide there, and all that follows is carried. */
const withEarlyWidth = exercises.filter(
  ({ reference, targets }) =>
    widthOf(reference) !== null && targets.length > 1 && buildsOn(reference, targets[0]?.name),
);

/** Exercises whose first target is a parallel at a distance that goes by the order, and is laid off by its name. */
const withTypedWidth = exercises.filter(({ reference, applies }) => {
  const width = widthOf(reference);
  return width !== null && !hasNumberOnly(width.distance) && applies === undefined;
});

type Width = Step & { readonly distance: string };

function widthOf(reference: readonly Step[]): Width | null {
  const answering = reference.find(({ answers }) => answers !== undefined);
  return answering?.verb === 'parallel' && 'distance' in answering ? answering : null;
}

function buildsOn(reference: readonly Step[], first: string | undefined): boolean {
  const at = reference.findIndex(({ answers }) => answers === first);
  return reference.some(
    ({ name, answers }) => answers !== undefined && answers !== first && ancestorsOf(reference, name).includes(at),
  );
}

/** A draft of this kind of the exercise, on the figure of the seed. */
export function draftOf(kind: Kind, exercise: Exercise, seed: string, chance: Chance): Draft {
  const order: Order = { ...orderFor(exercise, seed), figure: sampleFigure(seed, 'anyone') };
  const drawn = (steps: readonly Step[], misreading: string | null = null): Draft => ({
    exercise,
    seed,
    steps: appliedSteps(steps, exercise, order),
    misreading,
  });
  const { reference, misreadings, targets } = exercise;
  if (kind === 'misread') {
    const misreading = misreadings[chance.whole(0, misreadings.length - 1)] ?? never();
    return drawn(misread(reference, misreading), misreading.id);
  }
  if (kind === 'carried') return drawn(widened(reference, ({ distance }) => `${distance} + 1 1/8 in`));
  if (kind === 'typed') return drawn(widened(reference, ({ distance }) => typedFor(distance, exercise, order)));
  if (kind === 'unanswered') {
    const left = targets[chance.whole(0, targets.length - 1)]?.name;
    return drawn(reference.map((step) => (step.answers === left ? unanswering(step) : step)));
  }
  return drawn(reference);
}

function unanswering({ answers: _, ...step }: Step): Step {
  return step as Step;
}

function widened(reference: readonly Step[], distance: (width: Width) => string): readonly Step[] {
  const width = widthOf(reference) ?? never();
  return reference.map((step) => (step === width ? { ...width, distance: distance(width) } : step));
}

/** The number that an expression comes to on this order, as somebody types it who has looked it up. */
function typedFor(text: string, exercise: Exercise, order: Order): string {
  const laid = layOut(exercise, order);
  const value = laid.ok ? evaluate(text, laid.givens.measures) : null;
  return value?.ok ? `${value.quantity.value} mm` : never();
}

function never(): never {
  throw new Error('The exercise has nothing to make this from.');
}
