import type { Name, Step } from '../drafting/step.ts';
import { hashOf } from '../garment/seed.ts';
import { beginningOf, begunSteps } from './beginning.ts';
import type { HandIn } from './hand-in.ts';
import { type Student, studentKey } from './student.ts';

/** A hand-in by whose and of what exercise it is, and by its steps up to each of them: so much is kept of a stream. */
export interface Whole {
  readonly of: string;
  readonly upTo: readonly number[];
}

/** A beginning by whose and of what exercise it is, how many of its steps are there to their end, and those by a mark. */
export interface Part {
  readonly of: string;
  readonly steps: number;
  readonly mark: number;
}

export function wholeOf(handIn: HandIn): Whole {
  return { of: workOf(handIn, handIn.exercise), upTo: marksUpTo(handIn.steps) };
}

/** What a text that `begunText` gave is a part of; null where it does not say of which student's work on which exercise. */
export function partOf(begun: string): Part | null {
  const beginning = beginningOf(begun);
  const steps = beginning === null ? null : begunSteps(begun);
  if (beginning === null || beginning.exercise === null || steps === null) return null;
  return { of: workOf(beginning, beginning.exercise), steps: steps.length, mark: marksUpTo(steps).at(-1) ?? NO_STEP };
}

/** Whether a draft begins with the steps that are there of a part: of the same student and exercise. */
export function isPartOf({ of, steps, mark }: Part, whole: Whole): boolean {
  return of === whole.of && (steps === 0 || whole.upTo[steps - 1] === mark);
}

/** Whether a hand-in that was read is the whole of what was begun so. A beginning that does not say of which exercise it is has no whole. */
export function isWholeOf(handIn: HandIn, begun: string): boolean {
  const part = partOf(begun);
  return part !== null && isPartOf(part, wholeOf(handIn));
}

function workOf(student: Student, exercise: Name): string {
  return JSON.stringify([studentKey(student), exercise]);
}

const NO_STEP = 0;

/** A mark for the steps up to each: another one for any others, but by a chance of one in four thousand million. */
function marksUpTo(steps: readonly Step[]): readonly number[] {
  let mark = NO_STEP;
  return steps.map((step) => {
    mark = hashOf(`${mark}${JSON.stringify(step)}`);
    return mark;
  });
}
