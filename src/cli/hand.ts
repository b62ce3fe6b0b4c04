import { Worker } from 'node:worker_threads';
import { exercisesRead, type ReadExercises } from './exercises.ts';
import { type Manner, refused, type Told } from './tell.ts';
import type { Work } from './work.ts';

/** One hand of a crew: a thread that marks batches one after another. */
export interface Hand {
  readonly do: (batch: readonly Work[]) => Promise<readonly Told[]>;
  /** How many batches it has before it. */
  readonly waiting: () => number;
  readonly leave: () => Promise<unknown>;
}

/**
 * How far the heap of a hand may grow, MB. What a hand holds is some 40 MB; left alone, V8 lets what is no longer used lie
 * for as long as the machine has memory, and a long stream seems to need more and more of it.
 */
const ROOM = { maxOldGenerationSizeMb: 192, maxYoungGenerationSizeMb: 12 };

/** What a hand is told when it is hired. */
export interface Orders {
  readonly manner: Manner;
  /** To read all exercises and to prove them takes a second and a half, which a hand can spend on marking. */
  readonly exercises: ReadExercises;
}

interface Job {
  readonly batch: readonly Work[];
  readonly done: (told: readonly Told[]) => void;
}

/**
 * Hires a hand. Where it breaks down over a batch, another takes its place, goes through that batch piece by piece, and
 * goes on; the piece over which it breaks down again is refused, and nobody else's work is lost. `place` is what a hand runs.
 */
export function hired(manner: Manner, place = new URL('grade-worker.ts', import.meta.url)): Hand {
  let jobs: readonly Job[] = [];
  let worker = sentFor();

  function sentFor(): Worker {
    const orders: Orders = { manner, exercises: exercisesRead() };
    const sent = new Worker(place, { workerData: orders, resourceLimits: ROOM });
    sent.on('message', (told: readonly Told[]) => next()?.done(told));
    sent.on('error', (why) => brokenDown(why));
    return sent;
  }

  function next(): Job | undefined {
    const [first, ...rest] = jobs;
    jobs = rest;
    return first;
  }

  function brokenDown(why: Error): void {
    const broken = next();
    const others = jobs;
    jobs = [];
    worker = sentFor();
    if (broken) mend(broken, why);
    for (const job of others) give(job);
  }

  /** Gives a batch again, piece by piece. A hand works through its jobs in their order, so what is said comes in order too. */
  function mend({ batch, done }: Job, why: Error): void {
    if (batch.length === 1) {
      done(batch.map((piece) => refused(piece, why)));
      return;
    }
    const sofar: Told[] = [];
    for (const piece of batch)
      give({
        batch: [piece],
        done: (told) => {
          sofar.push(...told);
          if (sofar.length === batch.length) done(sofar);
        },
      });
  }

  function give(job: Job): void {
    jobs = [...jobs, job];
    worker.postMessage(job.batch);
  }

  function take(batch: readonly Work[]): Promise<readonly Told[]> {
    return new Promise((done) => give({ batch, done }));
  }

  return { do: take, waiting: () => jobs.length, leave: () => worker.terminate() };
}
