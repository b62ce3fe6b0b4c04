import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { discriminationIndex } from '../../../src/exchange/class/discrimination.ts';

/** Right or wrong, for students in the order of the whole, best first. */
const ranked = (right: readonly number[]) => right.map((part, place) => ({ part, whole: 1 - place / right.length }));

describe('the discrimination index', () => {
  test('of forty students takes eleven above and eleven below: 9 right against 3 is 6 in 11 (classroom example)', () => {
    const upper = [1, 1, 1, 1, 1, 1, 1, 1, 1, 0, 0];
    const middle = Array.from({ length: 18 }, (_, place) => place % 2);
    const lower = [1, 0, 0, 1, 0, 0, 1, 0, 0, 0, 0];
    expect(discriminationIndex(ranked([...upper, ...middle, ...lower]), 5)).toBeCloseTo(6 / 11, 12);
  });

  test('is left out where a group would be too small, and where all stand alike', () => {
    expect(discriminationIndex(ranked(new Array(16).fill(1)), 5)).toBeNull();
    expect(discriminationIndex(ranked(new Array(17).fill(1)), 5)).toBe(0);
    expect(discriminationIndex(new Array(30).fill({ part: 1, whole: 1 }), 5)).toBeNull();
    expect(discriminationIndex([], 0)).toBeNull();
  });

  test('does not depend on the order of the list, even where many stand alike', () => {
    const standing = fc.record({ part: fc.constantFrom(0, 0.5, 1), whole: fc.constantFrom(0, 0.25, 0.5, 0.75, 1) });
    fc.assert(
      fc.property(fc.array(standing, { minLength: 19, maxLength: 60 }), fc.nat(), (class_, turn) => {
        const at = turn % class_.length;
        const other = [...class_.slice(at), ...class_.slice(0, at)];
        const [one, two] = [discriminationIndex(class_, 5), discriminationIndex(other, 5)];
        if (one === null) expect(two).toBeNull();
        else expect(two).toBeCloseTo(one, 12);
      }),
    );
  });

  test('lets two share a place who earned as much on other parts, in whatever order that was added up', () => {
    const best = Array.from({ length: 5 }, () => ({ part: 1, whole: 0.9 }));
    const rest = Array.from({ length: 16 }, (_, at) => ({ part: 0, whole: at / 100 }));
    const [little, more] = [0.3 + 0.2 + 0.1, 0.1 + 0.2 + 0.3];
    expect(little).not.toBe(more);
    for (const [one, other] of [[little, more] as const, [more, little] as const]) {
      const shared = [
        { part: 1, whole: one },
        { part: 0, whole: other },
      ];
      expect(discriminationIndex([...best, ...shared, ...rest], 5)).toBeCloseTo(5.5 / 6, 12);
    }
  });

  test('lies between -1 and 1, and turns its sign when the whole is turned about', () => {
    const standing = fc.record({
      part: fc.double({ min: 0, max: 1, noNaN: true }),
      whole: fc.integer({ min: 0, max: 9 }),
    });
    fc.assert(
      fc.property(fc.array(standing, { minLength: 19, maxLength: 60 }), (class_) => {
        const found = discriminationIndex(class_, 5);
        const turned = discriminationIndex(
          class_.map(({ part, whole }) => ({ part, whole: -whole })),
          5,
        );
        if (found === null) return expect(turned).toBeNull();
        expect(Math.abs(found)).toBeLessThanOrEqual(1);
        expect(turned).toBeCloseTo(-found, 9);
      }),
    );
  });
});
