import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { givenMark, tidied } from '../../../src/exchange/notes/given-mark.ts';
import { say } from '../../../src/words/say.ts';

const reader = { language: 'en', unit: 'cm' } as const;

function said(typed: string, reason = 'Drawn well, on the wrong side.'): string {
  const given = givenMark(typed, reason, 4);
  return given.ok ? 'given' : say(given.message, reader);
}

describe('a mark a teacher types', () => {
  test.each(['0', '4', '3.5', ' 2 ', '1,25', '.5'])('may be “%s”', (typed) => {
    expect(givenMark(typed, ' because ', 4)).toEqual({
      ok: true,
      mark: { marks: Number(typed.replace(',', '.')), of: 4, reason: 'because' },
    });
  });

  test.each(['', 'four', '-1', '1e3', '0x1', '3 of 4', 'Infinity', '1.2.3'])('is refused as “%s”', (typed) => {
    expect(said(typed)).toBe('Write the marks as a number from 0 to 4.');
  });

  test('is refused where it is more than can be earned', () => {
    expect(said('4.01')).toBe('No more than 4 can be earned here. Write a number from 0 to 4.');
  });

  test.each(['', '  ', '\n\t', '\u0000'])('is refused without a reason: “%s”', (reason) => {
    expect(said('3', reason)).toBe('Give a reason: the student reads it beside the mark.');
  });

  test('is within what can be earned, or refused, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.integer({ min: 1, max: 20 }), (typed, reason, of) => {
        const given = givenMark(typed, reason, of);
        if (!given.ok) return;
        expect(given.mark.marks).toBeGreaterThanOrEqual(0);
        expect(given.mark.marks).toBeLessThanOrEqual(of);
        expect(given.mark.reason).toMatch(/\S/);
      }),
    );
  });
});

test('a text is kept line by line, without what is not seen', () => {
  expect(tidied('Well\r\ndrawn,\rbut\tshort\u0000\u001b.')).toBe('Well\ndrawn,\nbut short.');
});
