import type { Point } from '../geometry/point.ts';

const WAYS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** How many steps a page key's worth of an arrow with Shift takes. */
const FAR = 10;

interface Keys {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

/** The way an arrow key points on the sheet, ten steps with Shift; null for other keys and for the browser's own. */
export function arrowWay({ key, shiftKey, ctrlKey, metaKey, altKey }: Keys): Point | null {
  const way = WAYS[key];
  if (!way || ctrlKey || metaKey || altKey) return null;
  return shiftKey ? { x: way.x * FAR, y: way.y * FAR } : way;
}
