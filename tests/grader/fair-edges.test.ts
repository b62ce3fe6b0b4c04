import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Path } from '../../src/geometry/cubic.ts';
import { lengthOf } from '../../src/geometry/length.ts';
import { add, type Point, quarterTurn, scale, subtract } from '../../src/geometry/point.ts';
import { directionAtStation, pointAtStation } from '../../src/geometry/station.ts';
import { shareOf } from '../../src/grader/bounds.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { type JudgedTarget, judge } from '../../src/grader/judge.ts';
import type { Order } from '../../src/grader/order.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { withAnswer } from './standing.ts';
import { invented, orderOn, tableFor } from './tables.ts';
import { UNFAIR_SEED, unfair } from './unfair.ts';

describe('an edge that no teacher would take', () => {
  test.each(unfair.map((one) => [one.exercise, one.target, one.strays, one] as const))(
    '%s: a %s that strays by %d mm and keeps to its marks is not right',
    (id, target, _strays, { path }) => {
      const exercise = loadExercise(id);
      const { checks } = judgedEdge(exercise, target, orderFor(exercise, UNFAIR_SEED), path);
      expect(checks.filter(({ status }) => status === 'beyond').map(({ check }) => check.measure)).not.toEqual([]);
    },
  );
});

/** By how much an edge is moved to the left of its way, mm, at a share of its length. */
type Offset = (share: number) => number;

/** A path moved square to itself, as smooth as it was: a cubic through every 5 mm, with the directions of the moved one. */
function moved(path: Path, offset: Offset): Path {
  const length = lengthOf(path);
  const count = Math.ceil(length / 5);
  const places = Array.from({ length: count + 1 }, (_, i) => placeOf(path, length, i / count, offset));
  const pace = 1e-4;
  const slopes = places.map((_, i) => {
    const share = Math.min(1 - pace, Math.max(pace, i / count));
    const [before, after] = [share - pace, share + pace].map((at) => placeOf(path, length, at, offset));
    return scale(subtract(after ?? never(), before ?? never()), 1 / (2 * pace * count));
  });
  return places.slice(1).map((p3, i) => {
    const [p0, m0, m3] = [places[i] ?? never(), slopes[i] ?? never(), slopes[i + 1] ?? never()];
    return { p0, p1: add(p0, scale(m0, 1 / 3)), p2: subtract(p3, scale(m3, 1 / 3)), p3 };
  });
}

function placeOf(path: Path, length: number, share: number, offset: Offset): Point {
  const station = share * length;
  const at = pointAtStation(path, station) ?? never();
  const ahead = directionAtStation(path, station) ?? never();
  return add(at, scale(quarterTurn(ahead), offset(share)));
}

/** The right edge of a figure. */
function rightEdge(exercise: Exercise, target: string, order: Order): Path {
  const sheet = replay(tableFor(exercise, order), exercise.reference);
  const shape = sheet.shapes.get(sheet.answers.get(target) ?? '');
  return shape?.kind === 'curve' ? shape.path : never();
}

function judgedEdge(exercise: Exercise, target: string, order: Order, path: Path): JudgedTarget {
  const givens = tableFor(exercise, order);
  const sheet = withAnswer(exercise, givens, target, { kind: 'curve', path });
  return judge(exercise, givens, sheet, 'workroom').find((one) => one.target.name === target) ?? never();
}

const { PI } = Math;

/** Bumps that leave both ends where they are and as they run. */
const outer: readonly (readonly [string, Offset])[] = [
  ['a little fuller', (u) => 5 * Math.sin(PI * u) ** 2],
  ['a little hollower', (u) => -5 * Math.sin(PI * u) ** 2],
  ['fuller toward the collar point', (u) => 6 * Math.sin(PI * u ** 2) ** 2],
  ['hollower toward the collar point', (u) => -6 * Math.sin(PI * u ** 2) ** 2],
  ['drawn with a hand that is not quite steady', (u) => 0.5 * Math.sin(PI * u) ** 2 * Math.sin(6 * PI * u)],
];

/** A shawl has to pass its broadest place, and has less room. */
const shawl: readonly (readonly [string, Offset])[] = [
  ['a little fuller', (u) => 2.5 * Math.sin(PI * u) ** 2],
  ['a little hollower', (u) => -2.5 * Math.sin(PI * u) ** 2],
  ['fuller over the chest', (u) => 2.5 * Math.sin(PI * u ** 2) ** 2],
  ['drawn with a hand that is not quite steady', (u) => 0.5 * Math.sin(PI * u) ** 2 * Math.sin(8 * PI * u)],
];

/** Outward is to the left here; the test turns it to the side where it lies. */
const lapel: readonly (readonly [string, Offset])[] = [
  ['straight', () => 0],
  ['bowed all along', (u) => 9 * Math.sin(PI * u)],
  ['bowed at its foot', (u) => 9 * Math.sin(PI * u ** 2)],
  ['bowed beside its point', (u) => 8 * Math.sin(PI * (1 - u) ** 2)],
  ['a slight S, hollow above and full below', (u) => -2 * Math.sin(2 * PI * u) + 4 * Math.sin(PI * u) ** 2],
  ['drawn with a hand that is not quite steady', (u) => 0.5 * Math.sin(PI * u) * Math.sin(6 * PI * u)],
];

const edges = [
  ['collar-single', 'outer-edge', outer, 1],
  ['collar-double', 'outer-edge', outer, 1],
  ['shawl', 'outer-edge', shawl, 1],
  ['collar-single', 'lapel-edge', lapel, -1],
  ['collar-double', 'lapel-edge', lapel, -1],
  ['lapel-worn', 'lapel-edge-worn', lapel, 1],
] as const;

describe('an edge as one hand or another would draw it', () => {
  test.each(
    edges.flatMap(([id, target, ways, side]) => ways.map(([way, offset]) => [id, target, way, side, offset] as const)),
  )('%s: a right %s, %s, is right on every figure', (id, target, _way, side, offset) => {
    const exercise = loadExercise(id);
    for (const figure of invented) {
      const order = orderOn(exercise, figure);
      const path = moved(rightEdge(exercise, target, order), (u) => side * offset(u));
      const { checks } = judgedEdge(exercise, target, order, path);
      expect(checks.flatMap(({ check, status, off }) => (status === 'within' ? [] : [check.measure, off]))).toEqual([]);
    }
  });
});

/** To and fro by 11 mm from crest to trough, but for the ends, which stay and run as they are. */
function wave(halves: number): Offset {
  return (u) => 5.5 * Math.sin(halves * PI * u) * Math.sin(PI * u) ** 0.25;
}

/**
 * The edges, and the share of their marks that is more than a wavering one earns. The rest is for where it passes and how it ends,
 * which it may have right; a shawl passes many places, and some double-breasted edges are full enough to hide a long wave.
 */
const wavering = [
  ['collar-single', 'outer-edge', 0.6],
  ['collar-outline', 'outer-edge', 0.6],
  ['true-draped', 'outer-edge', 0.5],
  ['collar-double', 'outer-edge', 0.67],
  ['shawl', 'outer-edge', 0.67],
  ['collar-single', 'lapel-edge', 0.63],
  ['collar-double', 'lapel-edge', 0.63],
  ['lapel-worn', 'lapel-edge-worn', 0.63],
] as const;

describe('an edge that wavers by 11 mm between its marks', () => {
  test.each(wavering)('%s: of the marks of its %s it earns less than %d, however often it does', (id, target, most) => {
    const exercise = loadExercise(id);
    for (const figure of invented) {
      const order = orderOn(exercise, figure);
      const right = rightEdge(exercise, target, order);
      // A wave as long as a hand is broad, and shorter ones: on a long edge one that is much longer is a run of its own.
      const least = Math.max(3, Math.ceil(lengthOf(right) / 90));
      for (const halves of [least, least + 1, least + 3]) {
        const { checks } = judgedEdge(exercise, target, order, moved(right, wave(halves)));
        const of = checks.reduce((sum, { check }) => sum + check.marks, 0);
        const earned = checks.reduce((sum, { check, status }) => sum + check.marks * shareOf(status), 0);
        expect(earned / of, `${halves} half waves: ${told(checks)}`).toBeLessThan(most);
      }
    }
  });
});

test('the chalk along a right edge is as wide as taste and tolerance let it stray', () => {
  const exercise = loadExercise('collar-single');
  const { checks } = gradeDraft(exercise, orderOn(exercise, invented[0] ?? never()), exercise.reference, 'workroom');
  const halves = checks.flatMap(({ target, red }) => (target === 'outer-edge' && red.band ? [red.band.half] : []));
  expect(halves).toEqual([expect.closeTo(12.7 + 3, 6)]);
});

function told(checks: JudgedTarget['checks']): string {
  return checks.map(({ check, status, off }) => `${check.measure} ${status} ${off?.toFixed(1)}`).join(', ');
}

function never(): never {
  throw new Error('not there');
}
