import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { polyline } from '../../geometry/path.ts';
import { add, distance, type Point, quarterTurn, scale } from '../../geometry/point.ts';
import { directionAtStation, pointAtStation } from '../../geometry/station.ts';

/** Points drawn a wave, and the length of a wave, mm. */
const POINTS = 14;
const WAVE = 34;

/**
 * A wavy line about a path that is longer than it by `over`, mm: as long as it is drawn, so that the picture shows how
 * much too long an edge is and not only that it is. The height of the waves is found by halving.
 */
export function waveAbout(path: Path, over: number): Path {
  const length = lengthOf(path);
  const waves = Math.max(3, Math.round(length / WAVE));
  const at = (height: number): readonly Point[] => wavy(path, length, waves, height);
  let [low, high] = [0, WAVE];
  for (let i = 0; i < 24; i++) {
    const middle = (low + high) / 2;
    if (runLength(at(middle)) - length > over) high = middle;
    else low = middle;
  }
  return polyline(at(low)) ?? path;
}

function wavy(path: Path, length: number, waves: number, height: number): readonly Point[] {
  const count = waves * POINTS;
  return Array.from({ length: count + 1 }, (_, i): Point => {
    const station = (length * i) / count;
    const on = pointAtStation(path, station) ?? { x: 0, y: 0 };
    const along = directionAtStation(path, station) ?? { x: 1, y: 0 };
    return add(on, scale(quarterTurn(along), height * Math.sin((2 * Math.PI * i) / POINTS)));
  });
}

function runLength(points: readonly Point[]): number {
  return points.reduce((sum, p, i) => sum + distance(points[i - 1] ?? p, p), 0);
}
