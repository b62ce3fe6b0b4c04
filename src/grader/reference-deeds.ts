import type { HalfStep } from '../drafting/form.ts';
import { deedOf } from '../drafting/gist.ts';
import type { Name, Step } from '../drafting/step.ts';
import type { Exercise } from './exercise.ts';

/** The places of those steps of a draft that its reference has too, whatever the draft calls its things. */
export function sharedWithReference(steps: readonly Step[], exercise: Exercise): ReadonlySet<number> {
  const { made, answering } = deedsOf(exercise);
  const called = new Map<Name, Name>();
  const shared = new Set<number>();
  for (const [index, step] of steps.entries()) {
    const deed = deedOf(read(step), called);
    const same = deed === null ? undefined : made.get(deed);
    if (same !== undefined) shared.add(index);
    // What goes on from another answer to a target goes on as the reference does from its own.
    const standsFor = same ?? (typeof step.answers === 'string' ? answering.get(step.answers) : undefined);
    if (standsFor !== undefined) called.set(step.name, standsFor);
  }
  return shared;
}

interface Deeds {
  /** What the reference calls that which a step makes, by the deed of the step. */
  readonly made: ReadonlyMap<string, Name>;
  /** What it calls its answers, by their targets. */
  readonly answering: ReadonlyMap<Name, Name>;
}

const known = new WeakMap<Exercise, Deeds>();

function deedsOf(exercise: Exercise): Deeds {
  const before = known.get(exercise);
  if (before !== undefined) return before;
  const { reference } = exercise;
  const made = reference.flatMap((step): [string, Name][] => {
    const deed = deedOf(read(step), new Map());
    return deed === null ? [] : [[deed, step.name]];
  });
  const answers = reference.flatMap(({ name, answers }): [Name, Name][] =>
    typeof answers === 'string' ? [[answers, name]] : [],
  );
  const deeds = { made: new Map(made), answering: new Map(answers) };
  known.set(exercise, deeds);
  return deeds;
}

function read(step: Step): HalfStep {
  return step as unknown as HalfStep;
}
