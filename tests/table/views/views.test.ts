import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rollReport } from '../../../src/garment/collar/roll-report.ts';
import { momentAt, rollingOf } from '../../../src/garment/collar/rolling.ts';
import { walkOf } from '../../../src/garment/collar/walk.ts';
import { wornOf } from '../../../src/garment/collar/worn.ts';
import { arcPath } from '../../../src/geometry/arc.ts';
import { lengthOf } from '../../../src/geometry/length.ts';
import { startOf } from '../../../src/geometry/path.ts';
import type { Point } from '../../../src/geometry/point.ts';
import { holds, widthOf } from '../../../src/table/drawing/box.ts';
import type { Drawing } from '../../../src/table/drawing/drawing.ts';
import { keyOf } from '../../../src/table/drawing/key.ts';
import { placeLabels } from '../../../src/table/drawing/labels.ts';
import { runWithin } from '../../../src/table/drawing/rectangle.ts';
import { runsOf } from '../../../src/table/drawing/runs.ts';
import { rollDrawing } from '../../../src/table/views/roll-drawing.ts';
import { walkDrawing } from '../../../src/table/views/walk-drawing.ts';
import { waveAbout } from '../../../src/table/views/wave.ts';
import { viewsOf } from '../../../src/table/views/which.ts';
import { sayNotch, wornDrawing } from '../../../src/table/views/worn-drawing.ts';
import { say } from '../../../src/words/say.ts';
import { chordLength } from '../../geometry/oracle.ts';
import { referenceOf, swungBy } from './reference.ts';

const reader = { language: 'en', unit: 'cm' } as const;
const names = { over: 'roll-line', level: 'collarbone-level' };

/** Everything that has a place lies in the box. */
function outside({ parts, box }: Drawing): readonly string[] {
  return parts.flatMap((part) => {
    const path = part.kind === 'curve' ? part.path : part.kind === 'cloth' ? part.outline : [];
    return path.flatMap(({ p0, p3 }) => (holds(box, p0) && holds(box, p3) ? [] : [keyOf(part)]));
  });
}

/** The words that have no seat in a picture so wide, px, or lie across a line in it. */
function misplacedAt(width: number, drawing: Drawing): readonly string[] {
  const pixels = width / widthOf(drawing.box);
  const onPage = ({ x, y }: Point): Point => ({ x: x * pixels, y: -y * pixels });
  const placed = placeLabels(drawing, pixels, (words) => say(words, reader));
  const lines = drawing.parts.filter(({ kind }) => kind === 'curve' || kind === 'line').flatMap((one) => runsOf([one]));
  const crossed = placed.filter(({ text, anchor, shift }) => {
    const { x, y } = onPage(anchor);
    const about = { at: { x: x + shift.x, y: y + shift.y }, halfWide: (text.length * 6.9) / 2, halfHigh: 8 };
    return lines.some(({ from, to }) => runWithin(about, onPage(from), onPage(to)) > 0);
  });
  const seated = new Set(placed.map(({ text }) => text));
  const left = drawing.labels.map(({ words }) => say(words, reader)).filter((text) => !seated.has(text));
  return [...left, ...crossed.map(({ text }) => text)];
}

describe('what a draft can be looked at as', () => {
  test.each([
    ['roll-line', []],
    ['lapel-folded', ['worn']],
    ['swing', ['roll']],
    ['neck-edge', ['roll', 'walk']],
    ['collar-outline', ['worn', 'roll', 'walk']],
    ['collar-single', ['worn', 'roll', 'walk']],
    ['collar-double', ['worn', 'roll', 'walk']],
    ['shawl', ['worn', 'roll', 'walk']],
    ['true-draped', ['worn', 'roll', 'walk']],
  ])('%s: %j', (id, views) => {
    const { sheet, plan } = referenceOf(id);
    expect(viewsOf(sheet, plan)).toEqual(views);
  });
});

describe('the picture of a draft as it is worn', () => {
  test.each(['lapel-folded', 'collar-single', 'collar-double', 'shawl', 'true-draped'])(
    'of %s holds its sheet still while it turns over, and everything on it',
    (id) => {
      const { sheet, plan } = referenceOf(id);
      const worn = wornOf(sheet, plan);
      if (!worn) throw new Error('Nothing turns over.');
      const boxes = [0, 0.2, 0.5, 0.8, 1].map((fraction) => {
        const drawing = wornDrawing(worn, fraction, names, 'cm');
        expect(outside(drawing)).toEqual([]);
        expect(new Set(drawing.parts.map(keyOf)).size).toBe(drawing.parts.length);
        return drawing.box;
      });
      for (const box of boxes) expect(box).toEqual(boxes[0]);
    },
  );

  test('hatches the other side of the cloth once it is over, and says how far it is', () => {
    const { sheet, plan } = referenceOf('collar-single');
    const worn = wornOf(sheet, plan);
    if (!worn) throw new Error('Nothing turns over.');
    const sides = (fraction: number) =>
      wornDrawing(worn, fraction, names, 'cm').parts.flatMap((part) =>
        part.kind === 'cloth' && (part.name === 'lapel' || part.name === 'collar') ? [part.side] : [],
      );
    expect(sides(0)).toEqual(['right', 'right']);
    expect(sides(1)).toEqual(['other', 'other']);
    const says = (fraction: number) => wornDrawing(worn, fraction, names, 'cm').says.map((one) => say(one, reader));
    expect(says(0)).toMatchInlineSnapshot(`
      [
        "The front from above, flat as it is cut: lapel and collar lie in front of the roll line.",
      ]
    `);
    expect(says(0.75)).toMatchInlineSnapshot(`
      [
        "The front from above: lapel and collar stand up on the roll line, turned over by 135°.",
      ]
    `);
    expect(says(1)).toMatchInlineSnapshot(`
      [
        "The front from above: lapel and collar, turned over the roll line onto the body.",
      ]
    `);
  });

  test.each(['collar-single', 'collar-double', 'shawl'])('has all its words, and none across a line: %s', (id) => {
    const { sheet, plan } = referenceOf(id);
    const worn = wornOf(sheet, plan);
    if (!worn) throw new Error('Nothing turns over.');
    for (const fraction of [0, 1])
      for (const width of [620, 448]) expect(misplacedAt(width, wornDrawing(worn, fraction, names, 'cm'))).toEqual([]);
  });

  test('says where the notch will sit: below its level, on it, or above', () => {
    const notchAt = (drop: string, side: 'up' | 'down') => {
      const { sheet, plan } = referenceOf('collar-single', (step) =>
        step.name === 'notch-level' ? { ...step, distance: drop, side } : step,
      );
      const worn = wornOf(sheet, plan);
      const said = worn && sayNotch(worn, names);
      return said && say(said, reader);
    };
    expect(notchAt('1/2 in', 'down')).toMatchInlineSnapshot(
      `"Worn, the notch sits 1.3 cm below the collarbone level."`,
    );
    expect(notchAt('0 mm', 'down')).toMatchInlineSnapshot(`"Worn, the notch sits on the collarbone level."`);
    expect(notchAt('1 cm', 'up')).toMatchInlineSnapshot(
      `"Worn, the notch sits 1 cm above the collarbone level: there it crowds the neck."`,
    );
  });
});

describe('the picture of how a collar will roll', () => {
  test.each([
    ['lies', 1],
    ['pulls', 0.3],
    ['ripples', 1.8],
  ] as const)('when it %s', (verdict, part) => {
    const { sheet, plan } = referenceOf('collar-single', swungBy(part));
    const report = rollReport(sheet, 3, plan);
    if (!report) throw new Error('There is no report.');
    const drawing = rollDrawing(sheet, report, 'cm');
    expect(report.verdict).toBe(verdict);
    expect(outside(drawing)).toEqual([]);
    expect(new Set(drawing.parts.map(keyOf)).size).toBe(drawing.parts.length);
    const stress = drawing.parts.filter(({ tone }) => tone === 'red');
    expect(stress.length > 0).toBe(verdict === 'pulls');
    // The edge is drawn as much longer than the seam as it was measured to be.
    const curveOf = (name: string) =>
      drawing.parts.flatMap((one) => (one.kind === 'curve' && one.name === name ? [one.path] : []))[0];
    const [edge, seam] = [curveOf('edge-drawn'), curveOf('neck-seam')];
    if (!edge || !seam) throw new Error('There is no edge.');
    expect(chordLength(edge, 60) - chordLength(seam, 60)).toBeCloseTo(report.drawn, 1);
  });

  test.each([0, 0.1, 0.3, 0.6, 1, 1.3, 1.8, 2.4])(
    'has all its words, and none across a line, swung by %d of the ease',
    (part) => {
      const { sheet, plan } = referenceOf('collar-single', swungBy(part));
      const report = rollReport(sheet, 3, plan);
      if (!report) throw new Error('There is no report.');
      const drawing = rollDrawing(sheet, report, 'cm');
      for (const width of [620, 448, 340]) expect(misplacedAt(width, drawing)).toEqual([]);
    },
  );
});

test('a wave is as much longer than what it runs about as it is said to be', () => {
  const about = arcPath({ x: 0, y: 0 }, 120, 0, 1.8);
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 60, noNaN: true }), (over) => {
      expect(lengthOf(waveAbout(about, over))).toBeCloseTo(lengthOf(about) + over, 2);
      expect(startOf(waveAbout(about, over)).x).toBeCloseTo(120, 6);
    }),
    { numRuns: 40 },
  );
});

describe('the picture of a collar being walked', () => {
  test.each(['neck-edge', 'collar-single', 'shawl', 'true-draped'])(
    'of %s holds its sheet still while the collar moves',
    (id) => {
      const { sheet, plan } = referenceOf(id);
      const walk = walkOf(sheet, plan);
      if (!walk) throw new Error('There is nothing to walk.');
      const rolling = rollingOf(walk.seam, walk.collar);
      const drawings = [0, 0.3, 0.6, 1].map((part) => walkDrawing(sheet, walk, rolling, momentAt(rolling, part), 'cm'));
      for (const drawing of drawings) {
        expect(drawing.box).toEqual(drawings[0]?.box);
        expect(new Set(drawing.parts.map(keyOf)).size).toBe(drawing.parts.length);
      }
      expect(drawings[3]?.says.map((one) => say(one, reader))).toEqual([
        expect.stringMatching(/^The garment’s neck seam .* from the centre back\.$/),
      ]);
    },
  );

  test.each(['collar-single', 'collar-double', 'shawl', 'true-draped'])('%s walks its seam', (id) => {
    const { sheet, plan } = referenceOf(id);
    for (const { over } of walkOf(sheet, plan)?.stretches ?? []) expect(Math.abs(over)).toBeLessThan(1.5);
  });
});
