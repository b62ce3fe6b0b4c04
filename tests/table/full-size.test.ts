import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { between, distance, type Point } from '../../src/geometry/point.ts';
import { type Box, heightOf, holds, padded, widthOf } from '../../src/table/drawing/box.ts';
import type { Run } from '../../src/table/drawing/runs.ts';
import { fullDrawing } from '../../src/table/full-size/full-drawing.ts';
import { frameOf, MARGIN, PAPERS, printable, SIZES } from '../../src/table/full-size/papers.ts';
import { codeOf, tilesOf } from '../../src/table/full-size/tiles.ts';
import { room } from './room.ts';
import { referenceOf } from './views/reference.ts';

const reader = { language: 'en', unit: 'cm' } as const;
const shows = ['centre-front', 'waist', 'front-neckline', 'shoulder-line'];

describe('paper', () => {
  test('has the sizes of ISO 216, each half the next, and of ANSI/ASME Y14.1', () => {
    // ISO 216:2007, table 1; ASME Y14.1-2012, table 1, in inches.
    expect([SIZES.a4, SIZES.a3, SIZES.a0].map(({ width, height }) => [width, height])).toEqual([
      [210, 297],
      [297, 420],
      [841, 1189],
    ]);
    expect([SIZES.letter, SIZES.tabloid].map(({ width, height }) => [width / 25.4, height / 25.4])).toEqual([
      [8.5, 11],
      [11, 17],
    ]);
  });

  test('is told to the printer as it is reckoned with', () => {
    const style = readFileSync(new URL('../../src/table/full-size/full-size.css', import.meta.url), 'utf8');
    for (const paper of PAPERS) {
      const { width, height } = SIZES[paper];
      expect(style).toContain(`@page paper-${paper} {\n  size: ${width}mm ${height}mm;\n  margin: ${MARGIN}mm;\n}`);
      expect(style).toContain(`.paper-sheet--${paper} {\n    page: paper-${paper};`);
    }
  });
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc.record({ x: number(-700, 700), y: number(-200, 900) });
const drawn = fc.array(fc.record({ from: point, to: point }), { minLength: 1, maxLength: 8 });

describe('the sheets of a draft', () => {
  test('show all of its ink, each part of it on one sheet or, across a frame, on both', () => {
    fc.assert(
      fc.property(drawn, fc.constantFrom(...PAPERS), (ink, paper) => {
        const tiles = tilesOf(about(ink), ink, paper);
        for (const p of ink.flatMap(along)) {
          const on = tiles.filter(({ box }) => holds(padded(box, 1e-6), p)).length;
          expect(on, `${p.x} ${p.y}`).toBeGreaterThan(0);
          expect(on).toBeLessThanOrEqual(4);
        }
      }),
    );
  });

  test('are each as large as their frame, lie frame to frame in one grid, and none is without ink', () => {
    fc.assert(
      fc.property(drawn, fc.constantFrom(...PAPERS), (ink, paper) => {
        const { width, height } = frameOf(paper);
        const tiles = tilesOf(about(ink), ink, paper);
        const [first] = tiles;
        for (const { box, row, column } of tiles) {
          expect([widthOf(box), heightOf(box)]).toEqual([expect.closeTo(width, 6), expect.closeTo(height, 6)]);
          expect(box.min.x - (first?.box.min.x ?? 0)).toBeCloseTo((column - (first?.column ?? 0)) * width, 6);
          expect(box.max.y - (first?.box.max.y ?? 0)).toBeCloseTo(((first?.row ?? 0) - row) * height, 6);
          expect(ink.some((run) => along(run).some((p) => holds(padded(box, 3), p)))).toBe(true);
        }
        expect(new Set(tiles.map(codeOf)).size).toBe(tiles.length);
      }),
    );
  });

  test('are no more than the draft needs: one where it fits on one', () => {
    const small = [{ from: { x: 0, y: 0 }, to: { x: 150, y: 200 } }];
    expect(tilesOf(about(small), small, 'a4').map(codeOf)).toEqual(['A1']);
    // Along a line as long as three sheets are wide nothing else needs paper.
    const long = [{ from: { x: 0, y: 0 }, to: { x: 3 * frameOf('a4').width - 1, y: 0 } }];
    expect(tilesOf(about(long), long, 'a4').map(codeOf)).toEqual(['A1', 'A2', 'A3']);
  });

  test('leave room on all sides for what lies about the frame', () => {
    for (const paper of PAPERS) {
      const [sheet, frame] = [printable(paper), frameOf(paper)];
      expect(sheet.width - frame.width).toBeGreaterThanOrEqual(5);
      expect(sheet.height - frame.height).toBeGreaterThanOrEqual(5);
    }
  });
});

describe('a draft at full size', () => {
  const { sheet } = referenceOf('collar-single');

  test('holds every mark and curve of it, and no red', () => {
    const { drawing, ink } = fullDrawing({ sheet, givens: room.givens, shows, lines: 'all' }, reader);
    expect(drawing.parts.filter(({ tone }) => tone === 'red' || tone === 'right')).toEqual([]);
    for (const part of drawing.parts) if (part.kind === 'mark') expect(holds(drawing.box, part.at)).toBe(true);
    const marks = [...sheet.shapes.values()].flatMap((shape) => (shape.kind === 'point' ? [shape.point] : []));
    const made = marks.filter((p) => ink.some(({ from }) => distance(from, p) < 1e-6));
    expect(made.length).toBeGreaterThan(20);
  });

  test('without its construction lines holds what answers the order, and the block', () => {
    const { drawing } = fullDrawing({ sheet, givens: room.givens, shows, lines: 'answers' }, reader);
    const names = new Set(drawing.parts.map(({ name }) => name));
    for (const answer of sheet.answers.values()) expect(names).toContain(answer);
    expect(drawing.parts.filter(({ tone }) => tone === 'help')).toEqual([]);
    expect(names).toContain('front-neckline');
  });
});

function along({ from, to }: Run): readonly Point[] {
  return Array.from({ length: 200 }, (_, i) => between(from, to, i / 199));
}

function about(ink: readonly Run[]): Box {
  const points = ink.flatMap(({ from, to }) => [from, to]);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { min: { x: Math.min(...xs), y: Math.min(...ys) }, max: { x: Math.max(...xs), y: Math.max(...ys) } };
}
