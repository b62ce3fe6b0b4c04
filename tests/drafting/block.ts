import { millimetres, radians } from '../../src/drafting/quantity.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Shape } from '../../src/drafting/shape.ts';
import type { Givens, Pins, Sheet } from '../../src/drafting/sheet.ts';
import type { Step } from '../../src/drafting/step.ts';
import type { Path } from '../../src/geometry/cubic.ts';
import type { Line } from '../../src/geometry/line.ts';
import type { Point } from '../../src/geometry/point.ts';
import type { Message } from '../../src/words/message.ts';
import { type Reader, say } from '../../src/words/say.ts';

/** Who the tests speak to. */
export const inCentimetres: Reader = { language: 'en', unit: 'cm' };
export const inInches: Reader = { language: 'en', unit: 'in' };

const at = (x: number, y: number): Shape => ({ kind: 'point', point: { x, y } });
const line = (x: number, y: number, angle: number): Shape => ({
  kind: 'line',
  line: { through: { x, y }, direction: { x: Math.cos(angle), y: Math.sin(angle) } },
});

/**
 * A made-up block with round numbers: the centre front upright through the origin, the waist level, the shoulder line
 * falling 22.5 degrees from the neck point, and for a neckline a quarter ellipse as one cubic.
 */
export const block: Givens = {
  shapes: new Map<string, Shape>([
    ['centre-front', line(0, 0, Math.PI / 2)],
    ['waist', line(0, 0, 0)],
    ['shoulder-line', line(70, 400, -Math.PI / 8)],
    ['front-neck-point', at(0, 320)],
    ['neck-point', at(70, 400)],
    ['shoulder-tip', at(70 + 130 * Math.cos(Math.PI / 8), 400 - 130 * Math.sin(Math.PI / 8))],
    [
      'neckline',
      {
        kind: 'curve',
        path: [{ p0: { x: 0, y: 320 }, p1: { x: 38, y: 320 }, p2: { x: 70, y: 356 }, p3: { x: 70, y: 400 } }],
      },
    ],
  ]),
  measures: new Map([
    ['overlap', millimetres(25)],
    ['stand', millimetres(30)],
    ['fall', millimetres(42)],
    ['break-rise', millimetres(40)],
    ['shoulder-slope', radians(Math.PI / 8)],
  ]),
};

/** A draft on the block. Steps are given loosely, as they might come from anywhere. */
export function draft(steps: readonly unknown[], pins?: Pins): Sheet {
  return replay(block, steps as readonly Step[], pins);
}

/** The problems of a draft in words, each with its step and field. */
export function problemsOf(steps: readonly unknown[]): readonly string[] {
  return draft(steps).problems.map(({ step, field, message }) => `${step + 1} ${field ?? '-'}: ${spoken(message)}`);
}

export const spoken = (message: Message): string => say(message, inCentimetres);

/** The shape of a name on a sheet that must be there and of this kind; with its problems where it is not. */
function shapeOf<K extends Shape['kind']>(sheet: Sheet, name: string, kind: K): Extract<Shape, { kind: K }> {
  const shape = sheet.shapes.get(name);
  if (shape?.kind === kind) return shape as Extract<Shape, { kind: K }>;
  const why = sheet.problems.map(({ name: step, message }) => `${step}: ${spoken(message)}`);
  throw new Error(`no ${kind} ${name} on the sheet. ${why.join(' ')}`);
}

export const pointOf = (sheet: Sheet, name: string): Point => shapeOf(sheet, name, 'point').point;
export const lineOf = (sheet: Sheet, name: string): Line => shapeOf(sheet, name, 'line').line;
export const pathOf = (sheet: Sheet, name: string): Path => shapeOf(sheet, name, 'curve').path;
export const taped = (sheet: Sheet, name: string): number => shapeOf(sheet, name, 'length').length;
export const angleOf = (sheet: Sheet, name: string): number => shapeOf(sheet, name, 'angle').angle;
