import type { Name } from '../../drafting/step.ts';
import { crossLines, footOn, type Line, squareTo } from '../../geometry/line.ts';
import { dot, type Point, scale, subtract } from '../../geometry/point.ts';
import type { ParallelCheck } from '../exercise.ts';
import { runsAcross } from './across.ts';
import { lineNamed, outwardNormal, pointNamed } from './lookup.ts';
import type { Reading, Subject, Take } from './reading.ts';

/** An answer that leans is read at the end where it is further off, and that end is said. */
export const takeParallel: Take<ParallelCheck> = (check, subject) => {
  const from = lineNamed(subject.reference, check.from);
  const ends = [check.at].flat().map((name) => readingAt(name, from, subject));
  const [first, second] = ends;
  if (!first) return null;
  if (ends.length === 1) return first;
  if (!second) return null;
  const leans = Math.abs(offOf(first) - offOf(second)) > EVEN;
  const worst = Math.abs(offOf(second)) > Math.abs(offOf(first)) ? second : first;
  return leans ? worst : { ...worst, spot: null };
};

/** Two ends that are off by so nearly the same, mm, are off alike. */
const EVEN = 0.5;

function offOf({ measured, expected }: Reading): number {
  return measured - expected;
}

function readingAt(name: Name, from: Line | null, { answer, right, reference }: Subject): Reading | null {
  const at = pointNamed(reference, name);
  if (answer.kind !== 'line' || right.kind !== 'line' || from === null || at === null) return null;
  if (runsAcross(answer.line, right.line)) return null;
  const foot = footOn(from, at);
  const drawn = metSquare(from, foot, answer.line);
  const wanted = metSquare(from, foot, right.line);
  if (drawn === null || wanted === null) return null;
  const normal = outwardNormal(from);
  const measured = dot(normal, subtract(drawn, foot));
  const expected = dot(normal, subtract(wanted, foot));
  return {
    measured,
    expected,
    unit: 'mm',
    displacement: scale(normal, measured - expected),
    spot: name,
    arrow: { from: drawn, to: wanted },
  };
}

/** Where the square from the foot meets the other line; null when they run parallel. */
function metSquare(from: Line, foot: Point, other: Line): Point | null {
  return crossLines(squareTo(from, foot), other);
}
