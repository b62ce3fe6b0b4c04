import type { ProblemSet } from '../../../exchange/set.ts';
import { strangeExercise } from '../../../exchange/strange-exercise.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import type { Message } from '../../../words/message.ts';
import { takeIn } from './intake.ts';
import type { Intake, Laid } from './taken.ts';

/** What the page asks of the worker: to take in a pile. */
export interface Task {
  readonly files: readonly { readonly name: string; readonly file: File }[];
  readonly pieces: readonly Laid[];
  readonly set: ProblemSet | null;
  /** Where the exercises lie, whole. */
  readonly exercises: string;
}

/** What comes back, some at a time; an empty list when all is done, a sentence when it could not begin. */
export type Answer = readonly Intake[] | { readonly failed: true };

/** So many are told at once: a message for each would cost more than marking it. */
const AT_ONCE = 25;

/** So many bytes of a file tell of what kind it says it is. */
const HEAD = 200;

self.addEventListener('message', ({ data }: MessageEvent<Task>) => {
  run(data).catch(() => self.postMessage({ failed: true } satisfies Answer));
});

async function run({ files, pieces, set, exercises: from }: Task): Promise<void> {
  const answer = await fetch(from);
  const exercises = (await answer.json()) as Readonly<Record<string, Exercise>>;
  const names = Object.keys(exercises);
  const load = (name: string): Exercise | Message =>
    (Object.hasOwn(exercises, name) ? exercises[name] : undefined) ?? strangeExercise(name, names);
  const dropped = files.map(({ name, file }) => ({
    ...{ name, size: file.size },
    text: () => file.text(),
    head: () => file.slice(0, HEAD).text(),
  }));
  let told: Intake[] = [];
  for await (const one of takeIn({ files: dropped, pieces }, set, load, names)) {
    told.push(one);
    if (told.length < AT_ONCE) continue;
    self.postMessage(told satisfies Answer);
    told = [];
  }
  if (told.length > 0) self.postMessage(told satisfies Answer);
  self.postMessage([] satisfies Answer);
}
