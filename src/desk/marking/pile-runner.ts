import type { Notes } from '../../exchange/notes/notes.ts';
import type { Answer, Pile } from './marking-worker.ts';
import { added, type Held, isOther, NOTHING, stopped, takenUp } from './piles.ts';

export type Files = Pile['files'];

/** How far the piles have come: of how many characters how many are done. */
export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** What the desk shows. */
export interface DeskState {
  readonly held: Held;
  /** Null while nothing is being taken in. */
  readonly progress: Progress | null;
  readonly failed: boolean;
}

export const EMPTY_DESK: DeskState = { held: NOTHING, progress: null, failed: false };

/**
 * Marks piles in a worker of its own, one after another, and tells of every change. A pile that is laid down meanwhile waits
 * its turn. When a set turns up after work was marked, that work is marked again by it.
 */
export class PileRunner {
  private state = EMPTY_DESK;
  private readonly waiting: Files[] = [];
  /** Files of the pile under way that are not done. */
  private undone: readonly string[] = [];
  private worker: Worker | null = null;
  private readonly exercises: string;
  private readonly tell: (state: DeskState) => void;

  /** `exercises` is where they lie, whole. */
  constructor(exercises: string, tell: (state: DeskState) => void) {
    this.exercises = exercises;
    this.tell = tell;
  }

  takeIn(files: Files): void {
    if (files.length === 0) return;
    this.put({ failed: false });
    this.wait(files);
    if (this.worker === null) this.next();
  }

  /** Stops, and tells of every file that was not marked to its end. */
  stop(): void {
    this.dismiss();
    const names = [...this.undone, ...this.waiting.flat().map(({ name }) => name)];
    this.waiting.length = 0;
    this.undone = [];
    const told = stopped(names).map((taken) => ({ kind: 'taken', taken }) as const);
    this.put({ held: added(this.state.held, told), progress: null });
  }

  clear(): void {
    this.stop();
    this.put(EMPTY_DESK);
  }

  /** Changes what the teacher wrote. */
  write(change: (now: Notes) => Notes): void {
    const { held } = this.state;
    this.put({ held: { ...held, notes: change(held.notes) } });
  }

  private put(change: Partial<DeskState>): void {
    this.state = { ...this.state, ...change };
    this.tell(this.state);
  }

  private wait(files: Files): void {
    this.waiting.push(files);
    const { done, of } = this.state.progress ?? { done: 0, of: 0 };
    this.put({ progress: { done, of: of + files.reduce((sum, { file }) => sum + file.size, 0) } });
  }

  private next(): void {
    this.dismiss();
    const files = this.waiting.shift();
    if (files) this.begin(files);
    else this.put({ progress: null });
  }

  private begin(files: Files): void {
    this.undone = files.map(({ name }) => name);
    const worker = new Worker(new URL('./marking-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => this.hear(data));
    worker.addEventListener('error', () => this.hear({ failed: true }));
    this.worker = worker;
    worker.postMessage({ files, set: this.state.held.set, exercises: this.exercises } satisfies Pile);
  }

  private dismiss(): void {
    this.worker?.terminate();
    this.worker = null;
  }

  private hear(answer: Answer): void {
    if ('failed' in answer) {
      this.put({ failed: true });
      this.stop();
    } else if (answer.length === 0) this.next();
    else this.take(answer);
  }

  private take(answer: Exclude<Answer, { readonly failed: true }>): void {
    const before = this.state.held;
    this.put({
      held: added(
        before,
        answer.filter(({ kind }) => kind === 'set'),
      ),
    });
    if (isOther(before.set, this.state.held.set)) this.markAgain();
    this.put({
      held: added(
        this.state.held,
        answer.filter(({ kind }) => kind !== 'set'),
      ),
    });
    const done = answer.flatMap((one) => (one.kind === 'done' ? [one] : []));
    this.undone = this.undone.filter((name) => !done.some((one) => one.name === name));
    const { progress } = this.state;
    const size = done.reduce((sum, one) => sum + one.size, 0);
    this.put({ progress: progress && { ...progress, done: progress.done + size } });
  }

  /** Another set turned up: what was marked before it waits to be marked again. */
  private markAgain(): void {
    const { left, pieces } = takenUp(this.state.held);
    if (pieces.length === 0) return;
    this.put({ held: left });
    this.wait(pieces.map(({ name, text }) => ({ name, file: new File([text], name) })));
  }
}
