import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { exerciseNames } from '../../src/cli/exercises.ts';
import { referenceCommand } from '../../src/cli/reference-command.ts';
import { geometryOf } from '../../src/cli/reference-sheet.ts';
import { runAsPerson, runHere } from './run-command.ts';

const base = mkdtempSync(path.join(tmpdir(), 'reference-'));
afterAll(() => rmSync(base, { recursive: true }));

function figureFile(name: string, text: string): string {
  const file = path.join(base, name);
  writeFileSync(file, text);
  return file;
}

const regular = { 'neck-base': 380, shoulder: 130, 'shoulder-slope': 20, 'front-waist': 350, 'back-waist': 410 };
const regularFile = figureFile('regular.json', JSON.stringify(regular));

async function reference(...words: readonly string[]) {
  const { status, out, err } = await runHere(referenceCommand, words);
  expect([status, err]).toEqual([0, '']);
  return JSON.parse(out);
}

type Corner = readonly [number, number] | undefined;

/** The length of a cubic by 20,000 chords. */
function polygon(p0: Corner, p1: Corner, p2: Corner, p3: Corner): number {
  const at = (t: number) =>
    [0, 1].map(
      (axis) =>
        (1 - t) ** 3 * (p0?.[axis] ?? 0) +
        3 * (1 - t) ** 2 * t * (p1?.[axis] ?? 0) +
        3 * (1 - t) * t * t * (p2?.[axis] ?? 0) +
        t ** 3 * (p3?.[axis] ?? 0),
    ) as [number, number];
  let sum = 0;
  for (let i = 0; i < 20_000; i++) {
    const [[x, y], [nextX, nextY]] = [at(i / 20_000), at((i + 1) / 20_000)];
    sum += Math.hypot(nextX - x, nextY - y);
  }
  return sum;
}

describe('the reference of an exercise', () => {
  test.each(exerciseNames())('%s is one JSON object of these fields', async (name) => {
    const sheet = await reference(name);
    expect(Object.keys(sheet)).toEqual(['exercise', 'figure', 'style', 'block', 'targets', 'lengths']);
    expect(sheet.exercise).toBe(name);
    expect(Object.keys(sheet.block).sort()).toEqual([
      ...['back-neck-point', 'back-neckline', 'centre-back', 'centre-front', 'collarbone-level'],
      ...['front-neck-point', 'front-neckline', 'neck-point', 'shoulder-line', 'shoulder-tip', 'waist'],
    ]);
    for (const geometry of [...Object.values(sheet.block), ...Object.values(sheet.targets)]) {
      expect(['point', 'line', 'curve']).toContain(Object.keys(geometry as object).join());
    }
  });

  test.each(['collar-single', 'collar-double', 'shawl'])(
    '%s prints the lengths a collar is made from',
    async (name) => {
      const { lengths, targets, style, block } = await reference(name, '--figure', regularFile);
      expect(Object.keys(lengths)).toEqual(
        expect.arrayContaining([
          ...['back-neck', 'front-neck-seam', 'lean', 'phi'],
          ...['edge-ease', 'swing-angle', 'outer-edge', 'collar-neck-edge'],
        ]),
      );
      const [across, up] = targets['roll-line'].line.direction;
      expect(lengths.lean).toBeCloseTo(Math.atan2(across, up), 9);
      // Both slopes 20 degrees: docs/method.md, The turn of the neck seam.
      expect(lengths.phi).toBeCloseTo(Math.PI / 2 - (2 * 20 * Math.PI) / 180 + lengths.lean, 9);
      expect(lengths['edge-ease']).toBeCloseTo((style.fall - style.stand) * lengths.phi, 9);
      expect(lengths['swing-angle']).toBeCloseTo(lengths['edge-ease'] / (style.stand + style.fall), 9);
      expect(lengths['collar-neck-edge']).toBeCloseTo(lengths['back-neck'] + lengths['front-neck-seam'], 6);
      const chords = (curve: readonly (readonly [number, number])[][]) =>
        curve.reduce((sum, [p0, p1, p2, p3]) => sum + polygon(p0, p1, p2, p3), 0);
      expect(lengths['back-neck']).toBeCloseTo(chords(block['back-neckline'].curve), 4);
      expect(lengths['outer-edge']).toBeCloseTo(chords(targets['outer-edge'].curve), 4);
    },
  );

  test('of whatever is given on the table besides the block, the block has nothing', async () => {
    const sheet = await reference('true-draped', '--figure', regularFile);
    expect(Object.keys(sheet.block)).not.toContain('neck-mark-1');
  });

  test('on a figure of one’s own lies where plain trigonometry says', async () => {
    const sheet = await reference(
      'roll-line',
      '--figure',
      regularFile,
      '--style',
      'overlap=1 1/4 in',
      '--style',
      'stand=30 mm',
    );
    expect(sheet.figure).toEqual(regular);
    expect(sheet.style).toMatchObject({ overlap: 31.75, stand: 30 });
    const [neckX, neckY] = sheet.block['neck-point'].point;
    const slope = (20 * Math.PI) / 180;
    const stand = [neckX - 30 * Math.cos(slope), neckY + 30 * Math.sin(slope)];
    const [breakX, breakY] = [-31.75, 1.5 * 25.4];
    expect(sheet.targets['overlap-edge'].line.through[0]).toBeCloseTo(-31.75, 9);
    expect(sheet.targets['break-point'].point[0]).toBeCloseTo(breakX, 9);
    expect(sheet.targets['break-point'].point[1]).toBeCloseTo(breakY, 9);
    expect(sheet.targets['stand-point'].point[0]).toBeCloseTo(stand[0] ?? 0, 9);
    expect(sheet.targets['stand-point'].point[1]).toBeCloseTo(stand[1] ?? 0, 9);
    const lean = Math.atan2((stand[0] ?? 0) - breakX, (stand[1] ?? 0) - breakY);
    expect(sheet.targets['roll-line'].line.direction[0]).toBeCloseTo(Math.sin(lean), 9);
    expect(sheet.targets['roll-line'].line.direction[1]).toBeCloseTo(Math.cos(lean), 9);
  });

  test('follows the house rule asked for', async () => {
    const neckTo = async (...words: readonly string[]) => {
      const { block, targets } = await reference('stand-point', '--style', 'stand=1 1/2 in', ...words);
      const [[x, y], [standX, standY]] = [block['neck-point'].point, targets['stand-point'].point];
      return Math.hypot(standX - x, standY - y);
    };
    expect(await neckTo()).toBeCloseTo(1.5 * 25.4, 9);
    expect(await neckTo('--house', 'stand-rule=quarter-inch-less')).toBeCloseTo(1.25 * 25.4, 9);
  });

  test('follows the button by each of the three rules', async () => {
    const overlapBy = async (rule: string) => {
      const words = ['--style', 'button=1 in', '--style', 'overlap=40 mm', '--house', `overlap-rule=${rule}`];
      return -(await reference('overlap-button', ...words)).targets['overlap-edge'].line.through[0];
    };
    expect(await overlapBy('button-half-plus-quarter-inch')).toBeCloseTo(0.75 * 25.4, 9);
    expect(await overlapBy('twice-the-button')).toBeCloseTo(2 * 25.4, 9);
    expect(await overlapBy('given')).toBeCloseTo(40, 9);
  });

  test('is printed on one line for a program, and set out for a person', async () => {
    const forProgram = await runAsPerson('reference', ['overlap']);
    const forPerson = await runHere(referenceCommand, ['overlap'], '', true);
    expect(forProgram.out.trim().split('\n')).toHaveLength(1);
    expect(forPerson.out.trim().split('\n').length).toBeGreaterThan(50);
    expect(JSON.parse(forPerson.out)).toEqual(JSON.parse(forProgram.out));
  });

  test('tells a person by which house rules it was drawn, beside the JSON', async () => {
    const words = ['stand-point', '--house', 'stand-rule=quarter-inch-less'];
    const { out, err } = await runHere(referenceCommand, words, '', true);
    expect(JSON.parse(out).exercise).toBe('stand-point');
    expect(err.split('\n')[0]).toBe(
      'By the house rule on the order, the stand point lies past the neck point by the stand less 1/4 in.',
    );
  });

  test('tells a person below the JSON that the file has no fault, and what is in it', async () => {
    const { err } = await runHere(referenceCommand, ['stand-point'], '', true);
    expect(err.trimEnd().split('\n').at(-1)).toMatchInlineSnapshot(
      `"stand-point.yaml has no fault: 1 target, 2 checks for 6 marks, 7 misreadings. The reference can be drawn on every invented figure and on other orders, and there every misreading comes out wrong."`,
    );
  });

  test('is not printed in part where the order leaves no way to draw all of it', async () => {
    const words = ['collar-single', '--style', 'stand=1 3/4 in', '--style', 'fall=1 3/8 in'];
    const { status, out, err } = await runHere(referenceCommand, words);
    expect([status, out]).toEqual([1, '']);
    expect(err).toMatch(/^Step \d+: The tape cannot be set to −.* in: it measures from nothing upward\./);
  });

  test('samples the same figure for the same seed', async () => {
    const [one, same, other] = await Promise.all([
      reference('roll-line', '--seed', 'a'),
      reference('roll-line', '--seed', 'a'),
      reference('roll-line', '--seed', 'b'),
    ]);
    expect(one).toEqual(same);
    expect(other.figure).not.toEqual(one.figure);
  });

  test('may use style measures in those of others', async () => {
    const { style } = await reference('roll-line', '--style', 'fall=stand + 16 mm');
    expect(style.fall - style.stand).toBeCloseTo(16, 9);
  });
});

describe('what cannot be drawn is refused with the reason', () => {
  test.each([
    [
      'a title typed without its hyphens',
      ['Roll', 'Line'],
      'No exercise is called “Roll Line”. Did you mean “roll-line”?',
    ],
    ['an exercise there is none of', ['rol-line'], 'No exercise is called “rol-line”. Did you mean “roll-line”?'],
    [
      'a style measure the exercise does not use',
      ['overlap', '--style', 'stand=1 in'],
      'No style measure of this exercise is called “stand”. There are: overlap.',
    ],
    [
      'a style value without a unit',
      ['overlap', '--style', 'overlap=3'],
      'The overlap, “overlap”, has to come to a length; “3” does not. Write it with its unit, for example “1 1/4 in” or “32 mm”.',
    ],
    [
      'a figure file that is not there',
      ['overlap', '--figure', path.join(base, 'none.json')],
      `The figure in ${path.join(base, 'none.json')} cannot be used. There is no such file or folder.`,
    ],
    [
      'a figure file that is not JSON',
      ['overlap', '--figure', figureFile('broken.json', '{"neck-base": 380,')],
      `The figure in ${path.join(base, 'broken.json')} cannot be used. It is not JSON.`,
    ],
    [
      'a house rule there is none of',
      ['overlap', '--house', 'roll-rule=x'],
      '“roll-rule” is not a house rule. The house rules are: overlap-rule, stand-rule, cover-rule, swing-rule.',
    ],
  ])('%s', async (_, words, said) => {
    expect(await runHere(referenceCommand, words)).toEqual({ status: 1, out: '', err: `${said}\n` });
  });

  test('a figure with measures missing, misspelt or in another unit: a line each', async () => {
    const file = figureFile('odd.json', JSON.stringify({ ...regular, 'neck-base': 38, sholder: 130 }));
    const { status, out, err } = await runHere(referenceCommand, ['overlap', '--figure', file]);
    expect([status, out]).toEqual([1, '']);
    expect(err.replaceAll(file, 'FILE')).toMatchInlineSnapshot(`
      "The figure in FILE cannot be used. “sholder” is not a measure of a figure. The measures are: neck-base, shoulder, shoulder-slope, front-waist, back-waist.
      The figure in FILE cannot be used. The neck-base girth, “neck-base”, is 38 mm. An adult’s lies between 270 and 600 mm: look at the tape again, and at the unit.
      "
    `);
  });

  test.each([
    [[], `Say which exercise. There are: ${exerciseNames().join(', ')}.`],
    [['overlap', 'roll-line'], 'One exercise at a time; “roll-line” is one too many.'],
    [
      ['overlap', '--style', 'overlap'],
      '“--style” is followed by a name, an equals sign and a value; “overlap” was found.',
    ],
    [['overlap', '--figur', 'x'], 'There is no option “--figur”.'],
    [['overlap', '--figure'], 'The option “--figure” needs a value after it.'],
  ])('called with %j is explained, with status 2', async (words, said) => {
    const { status, out, err } = await runHere(referenceCommand, words);
    expect([status, out, err.split('\n')[0]]).toEqual([2, '', said]);
    expect(err).toContain('npm run --silent reference');
  });

  test('is explained on request', async () => {
    const { status, out } = await runAsPerson('reference', ['-h']);
    expect(status).toBe(0);
    expect(out).toContain('The origin lies where the centre front crosses the waist');
  });
});

test('a curve is a list of cubics, a length lies nowhere', () => {
  const at = (x: number, y: number) => ({ x, y });
  const path = [{ p0: at(0, 0), p1: at(1, 0), p2: at(2, 1), p3: at(3, 1) }];
  expect(geometryOf({ kind: 'curve', path })).toEqual({
    curve: [
      [
        [0, 0],
        [1, 0],
        [2, 1],
        [3, 1],
      ],
    ],
  });
  expect(geometryOf({ kind: 'length', length: 5 })).toBeNull();
});
