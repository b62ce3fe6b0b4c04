import type { Cubic } from './cubic.ts';
import { COINCIDENT, CONVERGED, SAME_CROSSING } from './epsilon.ts';
import { type Line, lineThrough, signedDistance, stationOf } from './line.ts';
import { distance } from './point.ts';
import { bracketedRoot, zerosOf } from './polynomial.ts';
import { powerOf } from './power.ts';

/** The line of a piece that runs straight from its start to its end without turning back; null for any other. */
export function straightRun(c: Cubic): Line | null {
  const line = lineThrough(c.p0, c.p3);
  if (!line) return null;
  if (Math.abs(signedDistance(line, c.p1)) > CONVERGED || Math.abs(signedDistance(line, c.p2)) > CONVERGED) return null;
  const s1 = stationOf(line, c.p1);
  const s2 = stationOf(line, c.p2);
  return s1 >= 0 && s2 >= s1 && distance(c.p0, c.p3) >= s2 ? line : null;
}

/** Where the straight piece `a` meets `b`: the parameter on each. None where `b` runs along it, unless they only meet end to end. */
export function meetStraight(a: Cubic, b: Cubic): { t: number; u: number }[] {
  const line = straightRun(a);
  if (!line) return [];
  const length = distance(a.p0, a.p3);
  const { direction: d, through: q } = line;
  const p = powerOf(b);
  const off = [
    d.x * (p.y0 - q.y) - d.y * (p.x0 - q.x),
    d.x * p.y1 - d.y * p.x1,
    d.x * p.y2 - d.y * p.x2,
    d.x * p.y3 - d.y * p.x3,
  ];
  const along = [
    d.x * (p.x0 - q.x) + d.y * (p.y0 - q.y),
    d.x * p.x1 + d.y * p.y1,
    d.x * p.x2 + d.y * p.y2,
    d.x * p.x3 + d.y * p.y3,
  ];
  const meetings: { t: number; u: number }[] = [];
  for (const u of zerosOf(off, 3, COINCIDENT) ?? endToEnd(along, length)) {
    const s =
      ((along[3] as number) * u + (along[2] as number)) * u ** 2 + (along[1] as number) * u + (along[0] as number);
    if (s >= -COINCIDENT && s <= length + COINCIDENT) meetings.push({ t: parameterAt(a, line, s, length), u });
  }
  return meetings;
}

/** Of a piece that runs along the line: its end where it only meets the end of the straight piece. */
function endToEnd(along: readonly number[], length: number): number[] {
  const start = along[0] as number;
  const end = along.reduce((sum, k) => sum + k, 0);
  const overlap = Math.min(length, Math.max(start, end)) - Math.max(0, Math.min(start, end));
  if (Math.abs(overlap) > SAME_CROSSING) return [];
  return [start < 0.5 * length === start > end ? 0 : 1];
}

/** The parameter of the straight piece at `s` mm along it. */
function parameterAt(a: Cubic, line: Line, s: number, length: number): number {
  if (s <= 0) return 0;
  if (s >= length) return 1;
  const s1 = stationOf(line, a.p1);
  const s2 = stationOf(line, a.p2);
  return bracketedRoot([-s, 3 * s1, 3 * (s2 - 2 * s1), length + 3 * (s1 - s2)], 3, 0, 1, -s);
}
