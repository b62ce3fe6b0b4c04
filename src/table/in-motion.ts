import { useLayoutEffect, useState } from 'preact/hooks';
import type { Draft } from './model/bench.ts';
import type { Move } from './model/moved.ts';
import type { Scene } from './model/scene.ts';
import { Wait } from './wait.ts';

/** A hand that has not moved what it holds for this long is still, ms. */
const STILL = 120;

/** What a drag has come to. */
export interface Motion {
  readonly draft: Draft;
  /** The last move, which stands for all of them. */
  readonly move: Move;
  readonly scene: Scene;
}

/**
 * What a pointer drags on the sheet, kept apart from the table's own state while it moves: only what shows it is drawn again
 * then, not the whole table. The state is told once the hand is still, or lets go, or does anything else.
 */
export class InMotion {
  readonly #tell: (move: Move) => void;
  readonly #wait = new Wait(STILL);
  readonly #watchers = new Set<(now: Motion | null) => void>();
  #now: Motion | null = null;
  #rests = false;

  /** @param tell Tells the table's state of a move. */
  constructor(tell: (move: Move) => void) {
    this.#tell = tell;
  }

  readonly now = (): Motion | null => this.#now;

  /** Whether what lies on the table lies as a hand at rest left it: nothing more of it is to come for the moment. */
  readonly rests = (): boolean => this.#rests;

  readonly go = (to: Motion): void => {
    this.#turn(to);
    this.#wait.ask(() => {
      this.settle();
      this.#rests = true;
    });
  };

  /** Tells what is not told yet. */
  readonly settle = (): void => {
    this.#rests = false;
    this.#wait.drop();
    if (this.#now === null) return;
    const { move } = this.#now;
    this.#turn(null);
    this.#tell(move);
  };

  /** Calls at each change; what it gives ends that. */
  readonly watch = (tell: (now: Motion | null) => void): (() => void) => {
    this.#watchers.add(tell);
    return () => {
      this.#watchers.delete(tell);
    };
  };

  #turn(to: Motion | null): void {
    this.#now = to;
    for (const tell of this.#watchers) tell(to);
  }
}

const always = (): boolean => true;

/** What is in motion, for a component that is to be drawn again at each move, as long as `follows` says so; null while nothing is. */
export function useMotion(motion: InMotion, follows: () => boolean = always): Scene | null {
  const [scene, setScene] = useState<Scene | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: who asks says the same each time.
  useLayoutEffect(
    () =>
      motion.watch((now) => {
        if (now === null || follows()) setScene(now?.scene ?? null);
      }),
    [motion],
  );
  return scene;
}
