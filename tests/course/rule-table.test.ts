import { describe, expect, test } from 'vitest';
import { ruleTable } from '../../src/course/rule-table.ts';

const inches = (mm: number): number => mm / 25.4;

describe('the table of a house rule', () => {
  test('works out the overlap from the button', () => {
    const { choices, rows } = ruleTable('overlap-rule', 'button', ['1/2 in', '3/4 in', '1 in']);
    // ASDP, Standards of Quality for Custom Clothing, closures: half the diameter and 1/4 in.
    expect(rows.map(({ gives }) => inches(gives[0] ?? 0))).toEqual([0.5, 0.625, 0.75].map((x) => expect.closeTo(x, 9)));
    // Twice the diameter: common practice, no source. 1 in carries a half-inch button.
    expect(rows.map(({ gives }) => inches(gives[1] ?? 0))).toEqual([1, 1.5, 2].map((x) => expect.closeTo(x, 9)));
    expect(choices.map(({ source }) => source)).toMatchInlineSnapshot(`
      [
        "Association of Sewing and Design Professionals, Standards of Quality for Custom Clothing, closures: the least lap it accepts.",
        "Common practice, no source.",
      ]
    `);
  });

  test('works out how far the roll line passes the neck point', () => {
    const { rows } = ruleTable('stand-rule', 'stand', ['1 in', '1 1/4 in']);
    // MTOC 1949, Diagram 25 A, and Rosenfeld 1918, p. 135: stand 1 in, neck point to roll line 1 in.
    expect(inches(rows[0]?.gives[0] ?? 0)).toBeCloseTo(1, 9);
    // Vincent, Ladies, p. 48, Diagram 105: stand 1 1/4 in, neck point to roll line 1 in.
    expect(inches(rows[1]?.gives[1] ?? 0)).toBeCloseTo(1, 9);
  });

  test('sets what is one length for all beside what follows from the measure', () => {
    const { rows } = ruleTable('cover-rule', 'cloth-turn', ['1/8 in', '3/8 in']);
    // 1/8 in past the seam and the turn: common practice, no source. 1/2 in: Vincent, Ladies, p. 48. 5/8 in: MTOC 1949, Dia. 25 A.
    expect(rows.map(({ gives }) => gives.map(inches))).toEqual(
      [
        [0.25, 0.5, 0.625],
        [0.5, 0.5, 0.625],
      ].map((row) => row.map((x) => expect.closeTo(x, 9))),
    );
  });

  test('tells an author what there is', () => {
    expect(() => ruleTable('stand-rul', 'stand', ['1 in'])).toThrowErrorMatchingInlineSnapshot(
      `[AuthoringError: <RuleTable rule="…"> names “stand-rul”, and there is no such entry in src/garment/house-rules.ts. Did you mean “stand-rule”?]`,
    );
    expect(() => ruleTable('stand-rule', 'button', ['1 in'])).toThrowErrorMatchingInlineSnapshot(
      '[AuthoringError: No choice of the house rule “stand-rule” follows from “button”.]',
    );
    expect(() => ruleTable('stand-rule', 'stand', ['1'])).toThrowErrorMatchingInlineSnapshot(
      '[AuthoringError: “1” is not a length. Write it with its unit, for example “1 1/4 in” or “32 mm”.]',
    );
  });
});
