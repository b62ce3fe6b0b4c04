import type { Sheet } from '../../drafting/sheet.ts';
import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { type Line, stationOf } from '../../geometry/line.ts';
import { endOf, reversePath, startOf } from '../../geometry/path.ts';
import { lengthCalled, lineCalled, pathCalled } from './called.ts';
import type { NeckSeam } from './neck-seam.ts';
import { type CollarEdges, swungStrip } from './strip.ts';

/** A collar's edges and where they come from: drawn, or only the strip as it was swung so far. */
export interface FoundEdges extends CollarEdges {
  readonly drawn: boolean;
}

/** How far a strip that is only swung goes on in front, mm: past the square through the shoulder is enough. */
const FRONT = 40;

/**
 * The collar's neck edge and outer edge on a draft, from the centre back, which is the end further up the roll line. While
 * one of them is not drawn yet, those of the strip that a swung back line makes. Null before the collar is swung.
 */
export function collarEdgesOf(sheet: Sheet, seam: NeckSeam, roll: Line): FoundEdges | null {
  const neck = pathCalled(sheet, 'collar-neck-edge');
  const outer = pathCalled(sheet, 'outer-edge');
  if (neck && outer) return { neck: fromBack(neck, roll), outer: fromBack(outer, roll), drawn: true };
  const swung = lineCalled(sheet, 'back-line');
  const [stand, fall] = [lengthCalled(sheet, 'stand'), lengthCalled(sheet, 'fall')];
  if (!swung || stand === null || fall === null) return null;
  const back = lengthOf(seam.back);
  const strip = swungStrip({ shoulder: seam.shoulder, roll, swung, back, width: stand + fall, front: FRONT });
  return strip && { ...strip, drawn: false };
}

/** The path turned to begin at its end further up. */
export function fromBack(path: Path, roll: Line): Path {
  return stationOf(roll, startOf(path)) < stationOf(roll, endOf(path)) ? reversePath(path) : path;
}
