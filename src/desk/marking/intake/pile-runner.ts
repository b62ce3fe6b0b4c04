import type { MarkingFile } from '../../../exchange/marking-file/marking-file.ts';
import { handInLine } from '../../../exchange/notes/draft-key.ts';
import { NO_NOTES, type Notes } from '../../../exchange/notes/notes.ts';
import type { Answer, Task } from './marking-worker.ts';
import { added, begunOn, byOtherSet, type Held, leftOut, NOTHING, opened, stopped, takenUp } from './piles.ts';
import type { Intake, Laid, Taken } from './taken.ts';

export type Files = Task['files'];

/** What waits its turn: files, or pieces that were read already. */
type Waiting = Pick<Task, 'files' | 'pieces'>;

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
  private readonly waiting: Waiting[] = [];
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
    this.wait({ files, pieces: [] });
    if (this.worker === null) this.next();
  }

  /** Takes up the work that was kept of this desk: its set, its pieces and what was written. */
  open(file: MarkingFile): void {
    if (file.set !== null) this.put({ held: { ...this.state.held, set: file.set } });
    this.markAgain(byOtherSet(this.state.held));
    const { held, pieces } = opened(this.state.held, file);
    // The desk's own work is put together with itself: nobody laid it down twice.
    this.mark({ held: { ...held, again: this.state.held.again }, pieces });
    if (this.worker === null) this.next();
  }

  /** Marks what lay there and was not marked when it was stopped. */
  goOn(): void {
    this.markAgain(({ ok }) => !ok);
    if (this.worker === null) this.next();
  }

  /** Stops, and tells of every file that was not marked to its end and of every piece that was not marked. */
  stop(): void {
    this.dismiss();
    const names = [...this.undone, ...this.waiting.flatMap(({ files }) => files.map(({ name }) => name))];
    this.waiting.length = 0;
    this.undone = [];
    this.put({ held: stopped(this.state.held, names), progress: null });
  }

  /** Takes everything off the desk but the class list: the same class has other work next. */
  clear(): void {
    this.stop();
    const { list } = this.state.held.notes;
    this.put({ ...EMPTY_DESK, held: { ...NOTHING, notes: { ...NO_NOTES, list } } });
  }

  /** What lies there at this moment, of which the page may be told a little later. */
  held(): Held {
    return this.state.held;
  }

  /** Tells no more of what could not be read at a place. */
  leaveOut(where: string): void {
    this.put({ held: leftOut(this.state.held, where) });
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

  private wait(pile: Waiting): void {
    this.waiting.push(pile);
    const sizes = [
      ...pile.files.map(({ file }) => file.size),
      ...pile.pieces.map(({ handIn }) => handInLine(handIn).length),
    ];
    const { done, of } = this.state.progress ?? { done: 0, of: 0 };
    this.put({ progress: { done, of: sizes.reduce((sum, size) => sum + size, of) } });
  }

  private next(): void {
    this.dismiss();
    const pile = this.waiting.shift();
    if (pile) this.begin(pile);
    else this.put({ progress: null });
  }

  private begin(pile: Waiting): void {
    this.undone = pile.files.map(({ name }) => name);
    if (pile.files.length > 0) this.put({ held: begunOn(this.state.held) });
    const worker = new Worker(new URL('./marking-worker.ts', import.meta.url), { type: 'module' });
    // What was on its way when the desk was cleared or stopped is nobody's any more.
    const hear = (answer: Answer): void => {
      if (this.worker === worker) this.hear(answer);
    };
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => hear(data));
    worker.addEventListener('error', () => hear({ failed: true }));
    this.worker = worker;
    worker.postMessage({ ...pile, set: this.state.held.set, exercises: this.exercises } satisfies Task);
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
    const only = (kind: Intake['kind']): readonly Intake[] => answer.filter((one) => one.kind === kind);
    this.put({ held: added(this.state.held, only('set')) });
    for (const one of answer) if (one.kind === 'marking') this.mark(opened(this.state.held, one.file));
    this.put({ held: added(this.state.held, only('taken')) });
    // A set that turns up late marks again what was marked before it; so does one that was laid down meanwhile.
    this.markAgain(byOtherSet(this.state.held));
    const done = answer.flatMap((one) => (one.kind === 'done' ? [one] : []));
    // Of two files of one name, as two folders that were dropped may have, one is done at a time.
    for (const { name } of done) this.undone = withoutFirst(this.undone, name);
    const { progress } = this.state;
    const size = done.reduce((sum, one) => sum + one.size, 0);
    this.put({ progress: progress && { ...progress, done: progress.done + size } });
  }

  /** What was marked by another set, or not at all, waits to be marked again. */
  private markAgain(which: (taken: Taken) => boolean): void {
    if (this.state.held.taken.some(which)) this.mark(takenUp(this.state.held, which));
  }

  private mark({ held, pieces }: { readonly held: Held; readonly pieces: readonly Laid[] }): void {
    this.put({ held });
    if (pieces.length > 0) this.wait({ files: [], pieces });
  }
}

function withoutFirst(names: readonly string[], name: string): readonly string[] {
  const at = names.indexOf(name);
  return at < 0 ? names : names.toSpliced(at, 1);
}
