import type { Point } from '../../geometry/point.ts';
import type { BandPart, ClothPart, CurvePart, MarkPart, Part } from '../drawing/drawing.ts';
import { figure, pathData, runBetween, runData } from '../drawing/path-data.ts';
import { onPaper } from './view.ts';

/** How far the strokes of a mark go from its place, px. */
const ARM = 4.5;

/** The element of SVG that shows a part. */
export function tagOf({ kind }: Part): 'line' | 'path' {
  return kind === 'line' || kind === 'arrow' ? 'line' : 'path';
}

/** Where that element goes: pixels from the sheet's origin, y down, at `scale` pixels a mm. */
export function penned(part: Part, scale: number): Readonly<Record<string, string>> {
  if (part.kind === 'line' || part.kind === 'arrow')
    return runBetween(onPaper(part.from, scale), onPaper(part.to, scale));
  if (part.kind !== 'band') return { d: pathOf(part, scale) };
  return { d: bandData(part, scale), 'stroke-width': figure(part.half * 2 * scale) };
}

function pathOf(part: CurvePart | MarkPart | ClothPart, scale: number): string {
  switch (part.kind) {
    case 'curve':
      return pathData(part.path, scale);
    case 'mark':
      return crossAt(part.at, scale);
    default:
      return `${pathData(part.outline, scale)}Z`;
  }
}

function bandData({ path }: BandPart, scale: number): string {
  const [first, second] = path;
  return first && 'x' in first && second && 'x' in second
    ? runData(first, second, scale)
    : pathData(path as Parameters<typeof pathData>[0], scale);
}

function crossAt({ x, y }: Point, scale: number): string {
  const [left, right] = [figure(x * scale - ARM), figure(x * scale + ARM)];
  const [over, under] = [figure(-y * scale - ARM), figure(-y * scale + ARM)];
  return `M${left} ${over}L${right} ${under}M${right} ${over}L${left} ${under}`;
}
