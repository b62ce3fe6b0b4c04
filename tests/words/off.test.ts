import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { message } from '../../src/words/message.ts';
import { say, valueText } from '../../src/words/say.ts';

const cm = { language: 'en', unit: 'cm' } as const;
const inches = { language: 'en', unit: 'in' } as const;

/** A shown length in steps of what is shown: millimetres, or sixteenths of an inch. */
function stepsOf(text: string): number {
  const found = /^(?:(\d+(?:\.\d)?) cm|(?:(\d+)(?: |$))?(?:(\d+)\/(\d+) )?in)$/.exec(
    text.replace(/^(\d+) in$/, '$1 in'),
  );
  if (found?.[1] !== undefined) return Math.round(Number(found[1]) * 10);
  const [, , whole = '0', top = '0', bottom = '16'] = found ?? [];
  return Number(whole) * 16 + (Number(top) * 16) / Number(bottom);
}

describe('how far two lengths are apart', () => {
  test('agrees with the two lengths as they are shown', () => {
    const length = fc.double({ min: 0, max: 500, noNaN: true });
    fc.assert(
      fc.property(length, length, fc.constantFrom(cm, inches), (one, other, reader) => {
        const apart = String(valueText({ apart: [one, other], unit: 'mm' }, reader));
        const shown = [one, other].map((mm) => stepsOf(String(valueText({ mm }, reader))));
        const steps = Math.abs((shown[0] ?? 0) - (shown[1] ?? 0));
        if (steps === 0 && one !== other) expect(apart).toMatch(/^under/);
        else expect(stepsOf(apart)).toBe(steps);
      }),
    );
  });

  test('agrees with two angles as they are shown, at halves of a tenth too', () => {
    const angle = fc.integer({ min: 0, max: 3600 }).map((steps) => (steps * 0.05 * Math.PI) / 180);
    fc.assert(
      fc.property(angle, angle, (one, other) => {
        const tenths = (text: unknown): number => Math.round(Number(String(text).replace('°', '')) * 10);
        const steps = Math.abs(tenths(valueText({ radians: one }, cm)) - tenths(valueText({ radians: other }, cm)));
        const apart = valueText({ apart: [one, other], unit: 'radians' }, cm);
        if (steps === 0 && one !== other) expect(apart).toMatch(/^under/);
        else expect(tenths(apart)).toBe(steps);
      }),
      { numRuns: 1000 },
    );
  });

  test('is 0.4 cm where 3.6 cm and 3.2 cm are shown, whatever they really are', () => {
    expect(valueText({ apart: [36.4, 31.6], unit: 'mm' }, cm)).toBe('0.4 cm');
  });

  test('is never nothing', () => {
    expect(valueText({ apart: [31.9, 31.6], unit: 'mm' }, cm)).toBe('under 1 mm');
    expect(valueText({ apart: [31.9, 31.2], unit: 'mm' }, inches)).toBe('under 1/16 in');
    expect(valueText({ apart: [0.5, 0.50001], unit: 'radians' }, cm)).toBe('under 0.1°');
  });
});

test('a length that something is off by is never nothing', () => {
  expect(valueText({ off: 0.4 }, cm)).toBe('under 1 mm');
  expect(valueText({ off: 0.76 }, inches)).toBe('under 1/16 in');
  expect(valueText({ off: -3 }, cm)).toBe('0.3 cm');
  expect(say(message('grader.too-low', { off: { off: 0.2 } }), inches)).toBe('under 1/16 in too low');
});

test('a half goes up however it was worked out, so that one length never reads two ways', () => {
  const [overlap, inch] = [88.9, 25.4];
  for (const mm of [63.5, overlap - inch, 25.4 * 2.5]) expect(valueText({ mm }, cm)).toBe('6.4 cm');
  expect(valueText({ mm: -63.5 }, cm)).toBe('−6.4 cm');
  expect(valueText({ mm: 25.4 / 32 - 1e-13 }, inches)).toBe('1/16 in');
  expect(valueText({ apart: [overlap - inch, 60], unit: 'mm' }, cm)).toBe('0.4 cm');
});
