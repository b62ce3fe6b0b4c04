import { replay } from '../../../drafting/replay.ts';
import type { Shape } from '../../../drafting/shape.ts';
import type { Pencil, Step } from '../../../drafting/step.ts';
import { figureMeasures } from '../../../garment/figure.ts';
import { signedDistance } from '../../../geometry/line.ts';
import { distance, type Point } from '../../../geometry/point.ts';
import { layOut } from '../../../grader/lay-out.ts';
import { referenceOn } from '../../../grader/standing.ts';
import type { MarkedWork } from '../../mark-work.ts';
import { isReadOff, isRound, knownOn } from './read-off.ts';
import { typedIn } from './typed.ts';

/** What of a draft came from the student's own hand, and would be the student's own. */
export interface FreeHand {
  /** All free marks, pulled curves and typed numbers; the same in two drafts where all of them are the same. */
  readonly text: string;
  /** How many of its numbers have no reason on the draft's own order. */
  readonly free: number;
  /** The figure it was drafted on; the same for the same measures. */
  readonly figure: string;
}

/** Below so many numbers in all, a draft is never asked about. */
export const LEAST_NUMBERS = 4;

/**
 * The free hand of a draft: where its pencil marks lie, how its curves were pulled, and which lengths and angles were
 * typed as numbers. Null where there is too little of it ever to be asked about.
 */
export function freeHandOf({
  exercise,
  order,
  handIn,
}: Pick<MarkedWork, 'exercise' | 'order' | 'handIn'>): FreeHand | null {
  const { steps } = handIn;
  const written = steps.flatMap(writtenIn);
  if (written.length + steps.filter(isMark).length < LEAST_NUMBERS) return null;
  const laid = layOut(exercise, order);
  if (!laid.ok) return null;
  const sheet = replay(laid.learner, steps);
  const known = knownOn(exercise, [referenceOn(exercise, laid.givens), sheet]);
  const typed = new Map(steps.flatMap(typedIn).map((quantity) => [textOf(quantity), quantity] as const));
  const unread = [...typed.values()].filter((quantity) => !isReadOff(quantity, known));
  const pulled = steps.flatMap(pulledIn);
  const marked = steps.map((step, index) =>
    isMark(step) ? freeCoordinates(step, before(steps, index, sheet.shapes)) : 0,
  );
  return {
    text: written.toSorted().join(' '),
    free: unread.length + pulled.length + marked.reduce((sum, one) => sum + one, 0),
    figure: figureMeasures.map((measure) => order.figure[measure]).join(' '),
  };
}

function isMark(step: Step): step is Pencil {
  return step.verb === 'pencil';
}

/** The numbers of a step by the student's own hand, to a tenth of a millimetre, and angles to a hundredth of a degree or less. */
function writtenIn(step: Step): readonly string[] {
  if (isMark(step)) return [`x${step.at[0].toFixed(1)},y${step.at[1].toFixed(1)}`];
  return [...pulledIn(step), ...typedIn(step).map(textOf)];
}

function textOf({ dimension, value }: ReturnType<typeof typedIn>[number]): string {
  return dimension === 'length' ? value.toFixed(1) : `${((value * 180) / Math.PI).toFixed(2)}°`;
}

/** Two numbers a place where a curve was pulled out of its own way: its turn, and how far it keeps to that. */
function pulledIn(step: Step): readonly string[] {
  if (step.verb !== 'curve') return [];
  return (step.shape ?? []).flatMap((passing) =>
    passing === null
      ? []
      : [`turn${passing.turn.toFixed(4)}`, `keep${passing.before.toFixed(4)},${passing.after.toFixed(4)}`],
  );
}

/** What lay on the sheet before a step. */
function before(steps: readonly Step[], index: number, shapes: ReadonlyMap<string, Shape>): readonly Shape[] {
  const later = new Set(steps.slice(index).map(({ name }) => name));
  return [...shapes].flatMap(([name, shape]) => (later.has(name) ? [] : [shape]));
}

/** A mark this near to something, mm, was made on it: one that is caught lies on it to a millionth. */
const ON_IT = 1e-3;

/** How many of a mark's two coordinates are free: none on a point or where lines cross, one on a line; no round one is. */
function freeCoordinates({ at: [x, y] }: Pencil, lying: readonly Shape[]): number {
  const caught = lying.reduce((sum, shape) => sum + held(shape, { x, y }), 0);
  const odd = [x, y].filter((one) => !isRound(one, 10, 1e-6)).length;
  return Math.max(0, Math.min(odd, 2 - caught));
}

/** How many coordinates of a place a shape that it lies on decides. */
function held(shape: Shape, at: Point): number {
  if (shape.kind === 'point') return distance(shape.point, at) < ON_IT ? 2 : 0;
  // Marks on curves are taken for free: no curve of the block is the same on two figures.
  return shape.kind === 'line' && Math.abs(signedDistance(shape.line, at)) < ON_IT ? 1 : 0;
}
