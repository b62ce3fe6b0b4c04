import { scenes } from '../../src/course/figures/index.ts';
import { asLive, type Scene } from '../../src/course/figures/scene.ts';
import type { LiveState } from '../../src/table/live/live-scene.ts';
import { liveSheet } from '../../src/table/live/live-sheet.ts';

export const INCH = 25.4;

/** The figure of a lesson with this id. */
export const scene = (id: string): Scene => scenes.get(id) as Scene;

/** What a figure has measured with some style measures dragged to a length in mm, and some marks to a place. */
export function measured(
  id: string,
  measures: Readonly<Record<string, number>> = {},
  marks: LiveState['marks'] = {},
): (name: string) => number {
  const sheet = liveSheet(asLive(scene(id)), { measures, marks });
  return (name) => sheet.measures.get(name)?.value ?? Number.NaN;
}
