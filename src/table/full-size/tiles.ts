import { type Box, centreOf, heightOf, widthOf } from '../drawing/box.ts';
import { gapTo } from '../drawing/rectangle.ts';
import type { Run } from '../drawing/runs.ts';
import { frameOf, type Paper } from './papers.ts';

/** One sheet of paper: what of the draft it shows, mm, and where it lies among the others, from 0. */
export interface Tile {
  readonly box: Box;
  readonly row: number;
  readonly column: number;
}

/** Ink this near a frame, mm, is printed on both sides of it: a stroke has a width. */
const STROKE = 0.5;
/** So many places in each direction are tried for the grid, to save paper. */
const TRIES = 5;

/**
 * The sheets of paper that show all of `box`, frame beside frame, in rows from the top. A sheet on which there would be no
 * ink is left out, and the grid is laid where the fewest are needed. `ink` is all that is drawn, as straight runs.
 */
export function tilesOf(box: Box, ink: readonly Run[], paper: Paper): readonly Tile[] {
  const size = frameOf(paper);
  const columns = Math.max(1, Math.ceil(widthOf(box) / size.width));
  const rows = Math.max(1, Math.ceil(heightOf(box) / size.height));
  const slack = { x: columns * size.width - widthOf(box), y: rows * size.height - heightOf(box) };
  const grids = SHARES.flatMap((across) =>
    SHARES.map((down) => {
      const corner = { x: box.min.x - slack.x * across, y: box.max.y + slack.y * down };
      return gridFrom(corner, rows, columns, size).filter((tile) => isInked(tile, ink));
    }),
  );
  const least = Math.min(...grids.map((grid) => grid.length));
  return grids.find((grid) => grid.length === least) ?? [];
}

/** How much of the room to spare lies before the draft: half of it first, so that a draft lies in the middle where nothing is saved. */
const SHARES = Array.from({ length: TRIES }, (_, i) => i / (TRIES - 1)).toSorted(
  (a, b) => Math.abs(a - 0.5) - Math.abs(b - 0.5),
);

function gridFrom(
  corner: { readonly x: number; readonly y: number },
  rows: number,
  columns: number,
  { width, height }: { readonly width: number; readonly height: number },
): readonly Tile[] {
  return Array.from({ length: rows * columns }, (_, index) => {
    const row = Math.floor(index / columns);
    const column = index % columns;
    const left = corner.x + column * width;
    const top = corner.y - row * height;
    return { row, column, box: { min: { x: left, y: top - height }, max: { x: left + width, y: top } } };
  });
}

function isInked({ box }: Tile, ink: readonly Run[]): boolean {
  const rectangle = { at: centreOf(box), halfWide: widthOf(box) / 2, halfHigh: heightOf(box) / 2 };
  return ink.some(({ from, to }) => gapTo(rectangle, from, to) <= STROKE);
}

/** What a sheet is called: rows by letter, from the top, columns by number, as on a map. */
export function codeOf({ row, column }: Pick<Tile, 'row' | 'column'>): string {
  return `${String.fromCharCode(65 + row)}${column + 1}`;
}
