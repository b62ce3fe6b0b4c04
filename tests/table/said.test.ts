import { describe, expect, test } from 'vitest';
import { millimetres, type Quantity, radians } from '../../src/drafting/quantity.ts';
import { saidUnder } from '../../src/table/live/said.ts';
import { say } from '../../src/words/say.ts';
import type { Unit } from '../../src/words/unit.ts';

const says =
  'Comes down {comes-down}, leaning {lean}: {side, select, more {{passes} below} less {{passes} above} other {on the seam}}.';
const compares = { side: ['comes-down', 'stand'] } as const;

function under(down: number, unit: Unit = 'cm'): string | null {
  const measures = new Map<string, Quantity>([
    ['comes-down', millimetres(down)],
    ['stand', millimetres(30)],
    ['passes', millimetres(Math.abs(down - 30))],
    ['lean', radians(Math.PI / 6)],
  ]);
  const said = saidUnder({ says, compares }, measures, unit);
  return said && say(said, { language: 'en', unit });
}

describe('what is said under a figure', () => {
  test('chooses its words by which of two lengths is the longer', () => {
    expect(under(34)).toBe('Comes down 3.4 cm, leaning 30°: 0.4 cm below.');
    expect(under(21)).toBe('Comes down 2.1 cm, leaning 30°: 0.9 cm above.');
    expect(under(30)).toBe('Comes down 3 cm, leaning 30°: on the seam.');
  });

  test('says of two that are shown alike that they are the same, in the reader’s unit', () => {
    expect(under(30.4)).toBe('Comes down 3 cm, leaning 30°: on the seam.');
    expect(under(30.6)).toContain('below');
    expect(under(30.6, 'in')).toContain('on the seam');
  });

  test('is nothing where its author said nothing', () => {
    expect(saidUnder({}, new Map(), 'cm')).toBeNull();
  });
});
