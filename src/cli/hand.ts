import { Worker } from 'node:worker_threads';
import { exercisesRead, type ReadExercises } from './exercises.ts';
import { type Manner, refused, type Told } from './tell.ts';
import type { Work } from './work.ts';

/** One hand of a crew: a thread that marks batches one after another. */
export interface Hand {
  do(batch: readonly Work[]): Promise<readonly Told[]>;
  /** How many batches it has before it. */
  waiting(): number;
  leave(): Promise<unknown>;
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
  return new Post(manner, place);
}

/** Where a hand works: whoever holds it, and the jobs before it, which outlast who broke down over one. */
class Post implements Hand {
  private jobs: readonly Job[] = [];
  private worker: Worker;
  private readonly manner: Manner;
  private readonly place: URL;

  constructor(manner: Manner, place: URL) {
    this.manner = manner;
    this.place = place;
    this.worker = this.sentFor();
  }

  do(batch: readonly Work[]): Promise<readonly Told[]> {
    return new Promise((done) => this.give({ batch, done }));
  }

  waiting(): number {
    return this.jobs.length;
  }

  leave(): Promise<unknown> {
    return this.worker.terminate();
  }

  private give(job: Job): void {
    this.jobs = [...this.jobs, job];
    this.worker.postMessage(job.batch);
  }

  private sentFor(): Worker {
    const orders: Orders = { manner: this.manner, exercises: exercisesRead() };
    const sent = new Worker(this.place, { workerData: orders, resourceLimits: ROOM });
    sent.on('message', (told: readonly Told[]) => this.next()?.done(told));
    sent.on('error', (why) => this.brokenDown(why));
    return sent;
  }

  private next(): Job | undefined {
    const [first, ...rest] = this.jobs;
    this.jobs = rest;
    return first;
  }

  private brokenDown(why: Error): void {
    const broken = this.next();
    const others = this.jobs;
    this.jobs = [];
    this.worker = this.sentFor();
    if (broken) this.mend(broken, why);
    for (const job of others) this.give(job);
  }

  /** Gives a batch again, piece by piece. A hand works through its jobs in their order, so what is said comes in order too. */
  private mend({ batch, done }: Job, why: Error): void {
    if (batch.length === 1) {
      done(batch.map((piece) => refused(piece, why)));
      return;
    }
    const sofar: Told[] = [];
    const come = (told: readonly Told[]): void => {
      sofar.push(...told);
      if (sofar.length === batch.length) done(sofar);
    };
    for (const piece of batch) this.give({ batch: [piece], done: come });
  }
}
