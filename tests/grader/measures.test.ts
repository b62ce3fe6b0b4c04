import { expect, test } from 'vitest';
import type { Shape } from '../../src/drafting/shape.ts';
import type { Sheet } from '../../src/drafting/sheet.ts';
import { arcPath } from '../../src/geometry/arc.ts';
import { straight } from '../../src/geometry/cubic.ts';
import { reversePath } from '../../src/geometry/path.ts';
import { point } from '../../src/geometry/point.ts';
import type { Check } from '../../src/grader/exercise.ts';
import { takeReading } from '../../src/grader/measures/take.ts';

const common = { target: 'thing', tolerance: 'mark', marks: 1, why: '', mend: '' } as const;

function sheetOf(shapes: Readonly<Record<string, Shape>>): Sheet {
  return { shapes: new Map(Object.entries(shapes)), measures: new Map(), answers: new Map(), problems: [] };
}

const mark = (x: number, y: number): Shape => ({ kind: 'point', point: point(x, y) });
const upright = (x: number): Shape => ({ kind: 'line', line: { through: point(x, 0), direction: point(0, 1) } });
const arc = (radius: number, sweep: number): Shape => ({
  kind: 'curve',
  path: arcPath(point(0, 0), radius, 0, sweep),
});

function read(check: Partial<Check> & { measure: Check['measure'] }, answer: Shape, right: Shape, named = {}) {
  return takeReading({ ...common, ...check } as Check, { answer, right, reference: sheetOf(named) });
}

test('a position is read as the distance from the right place, with the way there', () => {
  expect(read({ measure: 'position' }, mark(3, 4), mark(0, 0))).toMatchObject({
    measured: 5,
    expected: 0,
    displacement: { x: 3, y: 4 },
    arrow: { from: { x: 3, y: 4 }, to: { x: 0, y: 0 } },
  });
});

test('a distance from a line is signed to the right, however the line was drawn', () => {
  const down: Shape = { kind: 'line', line: { through: point(0, 9), direction: point(0, -1) } };
  for (const line of [upright(0), down]) {
    const reading = read({ measure: 'distance', from: 'line' }, mark(-20, 5), mark(-25, 7), { line });
    expect(reading).toMatchObject({ measured: -20, expected: -25 });
    expect(reading?.displacement?.x).toBe(5);
    expect(reading?.displacement?.y).toBeCloseTo(0, 12);
  }
});

test('a distance from a point knows the side on which the right mark lies from the one behind the point', () => {
  const named = { peg: mark(0, 0) };
  const check = { measure: 'distance', from: 'peg' } as const;
  expect(read(check, mark(3, 27), mark(0, 28), named)?.measured).toBeCloseTo(Math.hypot(3, 27), 12);
  expect(read(check, mark(0, -28), mark(0, 28), named)).toMatchObject({
    measured: -28,
    expected: 28,
    displacement: { y: -56 },
    arrow: { from: { y: -28 }, to: { y: 28 } },
  });
  // A mark that belongs on the point itself has no side to be on.
  expect(read(check, mark(0, -2), mark(0, 0), named)).toMatchObject({
    measured: 2,
    expected: 0,
    displacement: { y: -2 },
  });
});

test('a distance from a point has no direction when the mark lies on the point itself', () => {
  const named = { peg: mark(0, 0) };
  expect(read({ measure: 'distance', from: 'peg' }, mark(0, 30), mark(28, 0), named)).toMatchObject({
    measured: 30,
    expected: 28,
    displacement: { x: 0, y: 2 },
  });
  expect(read({ measure: 'distance', from: 'peg' }, mark(0, 0), mark(28, 0), named)?.displacement).toBeNull();
});

test('a line is read at the end of its span where it strays most', () => {
  const leaning: Shape = { kind: 'line', line: { through: point(0, 0), direction: point(0.6, 0.8) } };
  const reading = read({ measure: 'line', between: ['foot', 'head'] }, leaning, upright(0), {
    foot: mark(0, 0),
    head: mark(0, 400),
  });
  expect(reading).toMatchObject({ spot: 'head', measured: 300 });
});

test('a level line square across the span cannot be read against an upright one', () => {
  const level: Shape = { kind: 'line', line: { through: point(0, 5), direction: point(1, 0) } };
  const named = { foot: mark(0, 0), head: mark(0, 400) };
  expect(read({ measure: 'line', between: ['foot', 'head'] }, level, upright(0), named)).toBeNull();
});

test('a line is read beside another at the worse of two points, which is named where it leans', () => {
  const named = { base: upright(0), foot: mark(0, 0), head: mark(0, 400) };
  const at = ['foot', 'head'] as const;
  const leaning: Shape = { kind: 'line', line: { through: point(-30, 0), direction: point(-0.02, Math.sqrt(0.9996)) } };
  const check = { measure: 'parallel', from: 'base', at } as const;
  const reading = read(check, leaning, upright(-30), named);
  expect(reading).toMatchObject({ spot: 'head', expected: -30 });
  expect(reading?.measured).toBeCloseTo(-30 - 400 * (0.02 / Math.sqrt(0.9996)), 9);
  expect(read(check, upright(-38), upright(-30), named)).toMatchObject({ spot: null, measured: -38, expected: -30 });
  // The other way about: right at its head, and off at its foot.
  const upsideDown = { ...named, foot: named.head, head: named.foot };
  expect(read(check, leaning, upright(-30), upsideDown)).toMatchObject({ spot: 'foot', measured: reading?.measured });
});

test('a line that runs across the right one has no distance from anything', () => {
  const turned = (degrees: number): Shape => {
    const angle = (degrees * Math.PI) / 180;
    return { kind: 'line', line: { through: point(-30, 200), direction: point(-Math.sin(angle), Math.cos(angle)) } };
  };
  const named = { base: upright(0), foot: mark(0, 0), head: mark(0, 400) };
  const checks = [
    { measure: 'parallel', from: 'base', at: 'foot' },
    { measure: 'parallel', from: 'base', at: ['foot', 'head'] },
    { measure: 'line', between: ['foot', 'head'] },
  ] as const;
  for (const check of checks) {
    for (const degrees of [61, 89, 90, 91, 90 + 1e-9, 119]) {
      expect([degrees, read(check, turned(degrees), upright(-30), named)]).toEqual([degrees, null]);
      expect([degrees, read(check, turned(-degrees), upright(-30), named)]).toEqual([degrees, null]);
    }
    for (const degrees of [0, 59, 121, 180]) expect(read(check, turned(degrees), upright(-30), named)).not.toBeNull();
  }
});

test('squareness is read in degrees about the right angle, and does not care which way lines were drawn', () => {
  const base: Shape = { kind: 'line', line: { through: point(0, 0), direction: point(1, 0) } };
  const degree = Math.PI / 180;
  for (const turn of [0, Math.PI]) {
    const drawn: Shape = {
      kind: 'line',
      line: { through: point(0, 0), direction: point(Math.cos(92 * degree + turn), Math.sin(92 * degree + turn)) },
    };
    const reading = read({ measure: 'squareness', to: 'base' }, drawn, upright(0), { base });
    expect(reading?.measured).toBeCloseTo(92, 9);
    expect(reading?.expected).toBeCloseTo(90, 9);
  }
});

test('a curve is read for squareness at the end named', () => {
  const base: Shape = { kind: 'line', line: { through: point(0, 0), direction: point(1, 0) } };
  const quarter = arc(50, Math.PI / 2);
  expect(read({ measure: 'squareness', to: 'base', end: 'start' }, quarter, quarter, { base })?.measured).toBeCloseTo(
    90,
    6,
  );
  expect(read({ measure: 'squareness', to: 'base', end: 'end' }, quarter, quarter, { base })?.measured).toBeCloseTo(
    0,
    6,
  );
});

test('lengths of arcs are radius times sweep, of curves and of the tape alike', () => {
  expect(read({ measure: 'length' }, arc(50, 1.2), arc(50, 1))?.measured).toBeCloseTo(60, 6);
  expect(read({ measure: 'length' }, { kind: 'length', length: 61 }, arc(50, 1))).toMatchObject({ measured: 61 });
});

test('a walk reads what is left over against the seams one after another', () => {
  const named = { back: arc(50, 1), front: { kind: 'curve', path: [straight(point(0, 0), point(30, 0))] } as Shape };
  const reading = read({ measure: 'walk', against: ['back', 'front'] }, arc(50, 1.7), arc(50, 1.6), named);
  expect(reading?.measured).toBeCloseTo(85, 6);
  expect(reading?.expected).toBeCloseTo(80, 6);
});

test('a level is a height above the waist, of marks and of level lines, and upright lines have none', () => {
  const level: Shape = { kind: 'line', line: { through: point(70, 38), direction: point(1, 0) } };
  expect(read({ measure: 'level' }, level, mark(0, 40))).toMatchObject({ measured: 38, expected: 40 });
  expect(read({ measure: 'level' }, upright(4), mark(0, 40))).toBeNull();
});

test('the bow of an arc is its sagitta', () => {
  const reading = read({ measure: 'bow' }, arc(50, 1), arc(50, 1));
  expect(Math.abs(reading?.measured ?? 0)).toBeCloseTo(50 * (1 - Math.cos(0.5)), 6);
});

test('shape reads the greatest distance between two curves: the difference of the radii of two arcs about one centre', () => {
  expect(read({ measure: 'shape' }, arc(52, 1), arc(50, 1))?.measured).toBeCloseTo(2, 6);
});

test('smoothness reads the sharpest corner, and a smooth curve has none', () => {
  const corner: Shape = {
    kind: 'curve',
    path: [straight(point(0, 0), point(10, 0)), straight(point(10, 0), point(20, 10))],
  };
  expect(read({ measure: 'smoothness' }, corner, corner)?.measured).toBeCloseTo(45, 6);
  expect(read({ measure: 'smoothness' }, arc(50, 1), arc(50, 1))?.measured).toBeCloseTo(0, 6);
  // A corner that is meant lies within a millimetre of its mark; one beside it is one more.
  const meant = (x: number) =>
    read({ measure: 'smoothness', corners: ['mark'] }, corner, corner, { mark: mark(x, 0) })?.measured;
  expect([meant(10), meant(10.9), meant(12)]).toEqual([0, 0, expect.closeTo(45, 6)]);
});

test('the reverse bend is as deep as the lesser of the two ways a curve bends', () => {
  const wave: Shape = {
    kind: 'curve',
    path: [{ p0: point(0, 0), p1: point(20, 30), p2: point(40, -30), p3: point(60, 0) }],
  };
  const deep = read({ measure: 'inflection' }, wave, wave)?.measured ?? 0;
  expect(deep).toBeGreaterThan(1);
  expect(read({ measure: 'inflection' }, arc(50, 1), wave)).toMatchObject({ measured: 0 });
});

test('bends back are added up, and the arrow stands at the deepest', () => {
  const arch = (x: number, high: number) => ({
    p0: point(x, 0),
    p1: point(x + 10, high),
    p2: point(x + 20, high),
    p3: point(x + 30, 0),
  });
  const wave: Shape = { kind: 'curve', path: [arch(0, 12), arch(30, -4), arch(60, 12), arch(90, -8), arch(120, 12)] };
  const reading = read({ measure: 'inflection' }, wave, arc(50, 1));
  expect(reading?.measured).toBeCloseTo((3 / 4) * (4 + 8), 6);
  expect(reading?.arrow?.from.x).toBeCloseTo(105, 6);
});

test('a bend is read by what it turns more than the right one, all along or where each turns most', () => {
  const turned = (over: 'whole' | 'stretch', answer: Shape, right: Shape) =>
    read({ measure: 'bend', over }, answer, right)?.measured ?? Number.NaN;
  // Of a circle of 50 mm, 2 in turn by 58 degrees; one of 100 mm turns by half as much, and as far in all.
  expect(turned('stretch', arc(50, 2), arc(100, 2)) / 29.1).toBeCloseTo(1, 1);
  expect(turned('whole', arc(50, 2), arc(100, 2))).toBeLessThan(3);
  expect(turned('whole', arc(50, 2), arc(50, 1)) / 57.3).toBeCloseTo(1, 1);
  // What turns less than the right one is as right.
  expect(turned('whole', arc(50, 1), arc(50, 2))).toBe(0);
  const { arrow } = read({ measure: 'bend', over: 'stretch' }, arc(50, 2), arc(100, 2)) ?? {};
  expect(Math.hypot(arrow?.from.x ?? 0, arrow?.from.y ?? 0)).toBeCloseTo(50, 1);
  expect(Math.hypot(arrow?.to.x ?? 0, arrow?.to.y ?? 0)).toBeLessThan(46);
});

test('the arrow of a bow, and of a reverse bend, runs from where it is deepest to where it would be right', () => {
  const straightRun: Shape = { kind: 'curve', path: [straight(point(0, 0), point(60, 0))] };
  const bowed: Shape = {
    kind: 'curve',
    path: [{ p0: point(0, 0), p1: point(20, 12), p2: point(40, 12), p3: point(60, 0) }],
  };
  expect(read({ measure: 'bow' }, bowed, straightRun)?.arrow).toEqual({
    from: { x: expect.closeTo(30, 6), y: expect.closeTo(9, 6) },
    to: { x: expect.closeTo(30, 6), y: expect.closeTo(0, 6) },
  });
  // A high arch and after it a low one the other way: the low one is the reverse bend.
  const wave: Shape = {
    kind: 'curve',
    path: [
      { p0: point(0, 0), p1: point(20, 24), p2: point(40, 24), p3: point(60, 0) },
      { p0: point(60, 0), p1: point(70, -12), p2: point(80, -12), p3: point(90, 0) },
    ],
  };
  const { arrow, measured } = read({ measure: 'inflection' }, wave, bowed) ?? {};
  expect(measured).toBeCloseTo(9, 6);
  expect(arrow).toEqual({
    from: { x: expect.closeTo(75, 6), y: expect.closeTo(-9, 6) },
    to: { x: expect.closeTo(75, 6), y: expect.closeTo(0, 6) },
  });
});

test('a shape of the wrong kind gives no reading', () => {
  expect(read({ measure: 'position' }, upright(0), mark(0, 0))).toBeNull();
  expect(read({ measure: 'length' }, mark(0, 0), mark(0, 0))).toBeNull();
});

test('an angle read off the protractor is given in degrees', () => {
  const angle = (degrees: number): Shape => ({ kind: 'angle', angle: (degrees * Math.PI) / 180 });
  const reading = read({ measure: 'angle' }, angle(57), angle(55));
  expect(reading).toMatchObject({ unit: 'deg', measured: expect.closeTo(57, 9), expected: expect.closeTo(55, 9) });
  expect(read({ measure: 'angle' }, mark(0, 0), angle(55))).toBeNull();
});

test('a walk between match marks takes the part between them, and its own ends where it says so', () => {
  const named = { back: arc(50, 1), mark: mark(50 * Math.cos(1), 50 * Math.sin(1)) };
  const walked = (between: readonly [string, string]) =>
    read({ measure: 'walk', against: ['back'], between }, arc(50, 1.7), arc(50, 1.6), named)?.measured;
  expect(walked(['start', 'mark'])).toBeCloseTo(50, 6);
  expect(walked(['mark', 'end'])).toBeCloseTo(35, 6);
  expect(walked(['start', 'end'])).toBeCloseTo(85, 6);
  expect(walked(['end', 'mark'])).toBeCloseTo(35, 6);
});

test('a curve drawn from its other end reads the same', () => {
  const base: Shape = { kind: 'line', line: { through: point(0, 0), direction: point(1, 0) } };
  const named = { base, seam: arc(50, 1), foot: mark(50, 0), mark: mark(50 * Math.cos(1), 50 * Math.sin(1)) };
  const [right, answer] = [arc(50, 1.6), arc(51, 1.6)];
  const other: Shape = answer.kind === 'curve' ? { ...answer, path: reversePath(answer.path) } : answer;
  const checks: readonly (Partial<Check> & { measure: Check['measure'] })[] = [
    { measure: 'bow' },
    { measure: 'shape' },
    { measure: 'squareness', to: 'base', end: 'start' },
    { measure: 'squareness', to: 'base', end: 'end' },
    { measure: 'through', point: 'foot', where: 'start' },
    { measure: 'walk', against: ['seam'], between: ['start', 'mark'] },
  ];
  for (const check of checks) {
    const [one, two] = [answer, other].map((drawn) => read(check, drawn, right, named)?.measured);
    expect([check.measure, two]).toEqual([check.measure, one === undefined ? undefined : expect.closeTo(one, 9)]);
  }
});
