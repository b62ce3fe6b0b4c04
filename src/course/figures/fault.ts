import type { Scene } from './scene.ts';

/** The same figure drawn right and drawn wrong. */
export interface Fault {
  readonly id: string;
  readonly right: Scene;
  readonly wrong: Scene;
}
