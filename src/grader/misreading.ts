import { ancestorsOf } from '../drafting/dependencies.ts';
import type { Shape } from '../drafting/shape.ts';
import type { Givens } from '../drafting/sheet.ts';
import type { Step } from '../drafting/step.ts';
import type { Exercise, Misreading } from './exercise.ts';
import { isRight, type JudgedTarget } from './judge.ts';
import { shapeNamed } from './measures/lookup.ts';
import { takeReading } from './measures/take.ts';
import { referenceGround, wayHolding } from './plan/reference-ground.ts';

/** The reference with a misreading's steps in place of its own. */
export function misread(reference: readonly Step[], misreading: Misreading): readonly Step[] {
  const instead = new Map(misreading.instead.map((step) => [step.name, step]));
  let first = misreading.first ?? [];
  return reference.flatMap((step) => {
    const swapped = instead.get(step.name);
    if (swapped === undefined) return [step];
    const before = first;
    first = [];
    return [...before, swapped];
  });
}

const ways = new WeakMap<readonly Step[], Map<Misreading, readonly Step[]>>();

/** The steps of the wrong way that its target hangs on; the rest of the draft is not needed to see where it comes out. */
function wayTo(exercise: Exercise, misreading: Misreading): readonly Step[] {
  const { reference } = exercise;
  const known = ways.get(reference) ?? new Map<Misreading, readonly Step[]>();
  ways.set(reference, known);
  const way = known.get(misreading) ?? needed(misread(reference, misreading), misreading.target);
  known.set(misreading, way);
  return way;
}

function needed(steps: readonly Step[], target: string): readonly Step[] {
  const answering = steps.find(({ answers }) => answers === target);
  return answering === undefined ? [] : ancestorsOf(steps, answering.name).map((index) => steps[index] as Step);
}

/**
 * The misreading a wrong answer lands on: the reference replayed with the classic wrong step, from where the learner
 * stood. Where the answer lies within tolerance of several, the nearest one (in tolerances) is named.
 */
export function misreadingOf(exercise: Exercise, givens: Givens, judged: JudgedTarget): Misreading | null {
  if (isRight(judged)) return null;
  let nearest: Misreading | null = null;
  let least = 1;
  for (const misreading of exercise.misreadings) {
    if (misreading.target !== judged.target.name) continue;
    const away = distanceTo(misreading, exercise, givens, judged, least);
    if (away !== null && away <= least) {
      nearest = misreading;
      least = away;
    }
  }
  return nearest;
}

const outcomes = new WeakMap<Givens, Map<Misreading, Shape | null>>();

/** What the wrong way makes of its target, from where the learner stood; null when it cannot be made. */
function outcomeOf(misreading: Misreading, exercise: Exercise, givens: Givens, judged: JudgedTarget): Shape | null {
  const { target, reference, pins } = judged;
  const replayed = (): Shape | null =>
    shapeNamed(wayHolding(exercise, givens, wayTo(exercise, misreading), pins), target.name);
  // Where all before it was right, the wrong way comes out the same for whoever takes it.
  const allRight = pins.size === exercise.targets.indexOf(target) && reference === referenceGround(exercise, givens);
  if (!allRight) return replayed();
  const here = outcomes.get(givens) ?? new Map<Misreading, Shape | null>();
  outcomes.set(givens, here);
  const known = here.get(misreading);
  const outcome = known === undefined ? replayed() : known;
  here.set(misreading, outcome);
  return outcome;
}

/**
 * How far an answer lies from a misreading: the worst of its target's checks, in tolerances, or the first that is more than
 * `most`; null when it cannot be told.
 */
function distanceTo(
  misreading: Misreading,
  exercise: Exercise,
  givens: Givens,
  judged: JudgedTarget,
  most: number,
): number | null {
  if (judged.answer.found !== 'right-kind') return null;
  const wrong = outcomeOf(misreading, exercise, givens, judged);
  if (wrong === null) return null;
  const answer = judged.answer.shape;
  let worst = 0;
  for (const { check, tolerance, bounds } of judged.checks) {
    // Both readings are taken against the wrong shape, so that ranges, which have no right shape, work alike. What the
    // wrong shape itself is off by is taken away: a walk or a passing is held against the sheet, and not against a shape.
    const reading = takeReading(check, { answer, right: wrong, reference: judged.reference });
    const own = takeReading(check, { answer: wrong, right: wrong, reference: judged.reference });
    if (reading === null || own === null) return null;
    const away = reading.measured - reading.expected - (own.measured - own.expected);
    // What is left to taste in the right curve is left to it in a wrong one too.
    const taste = check.measure === 'shape' ? (bounds.most ?? 0) : 0;
    worst = Math.max(worst, Math.max(0, Math.abs(away) - taste) / tolerance);
    if (worst > most) return worst;
  }
  return worst;
}
