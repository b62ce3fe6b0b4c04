import { expect, test } from 'vitest';
import { millimetres } from '../../src/drafting/quantity.ts';
import { type HouseMeasures, houseMeasures } from '../../src/garment/house.ts';
import { houseRules } from '../../src/garment/house-rules.ts';
import { en } from '../../src/words/en/index.ts';
import { say } from '../../src/words/say.ts';

const measures = new Map([
  ['button', millimetres(20)],
  ['overlap', millimetres(31)],
  ['stand', millimetres(30)],
]);

function lengthsOf(made: HouseMeasures): Record<string, number> | string {
  if (!made.ok) return say(made.message, { language: 'en', unit: 'cm' });
  return Object.fromEntries([...made.measures].map(([name, quantity]) => [name, quantity.value]));
}

test('rules left open take their usual choice', () => {
  expect(lengthsOf(houseMeasures({}, measures))).toEqual({
    button: 20,
    overlap: 31,
    stand: 30,
    'overlap-by-rule': 10 + 6.35,
    'stand-by-rule': 30,
  });
});

test.each([
  ['overlap-rule', 'button-half-plus-quarter-inch', 'overlap-by-rule', 16.35],
  ['overlap-rule', 'twice-the-button', 'overlap-by-rule', 40],
  ['overlap-rule', 'given', 'overlap-by-rule', 31],
  ['stand-rule', 'full', 'stand-by-rule', 30],
  ['stand-rule', 'quarter-inch-less', 'stand-by-rule', 23.65],
])('%s: %s makes %s %d mm', (rule, choice, name, length) => {
  const made = houseMeasures({ [rule]: choice }, measures);
  expect(made.ok && made.measures.get(name)?.value).toBeCloseTo(length, 9);
});

test.each([
  ['eighth-inch-and-turn', 9.525],
  ['half-inch', 12.7],
  ['five-eighths-inch', 15.875],
])('cover-rule: %s makes the fall exceed the stand by %d mm', (choice, length) => {
  const collar = new Map([...measures, ['cloth-turn', millimetres(6.35)] as const]);
  const made = houseMeasures({ 'cover-rule': choice }, collar);
  expect(made.ok && made.measures.get('cover-by-rule')?.value).toBeCloseTo(length, 9);
});

test('swing-rule says with a bare number whether the iron is reckoned with', () => {
  const collar = new Map([...measures, ['fall', millimetres(44)] as const, ['gorge-depth', millimetres(54)] as const]);
  const iron = (choices: Record<string, string>) => {
    const made = houseMeasures(choices, collar);
    return made.ok ? made.measures.get('iron') : null;
  };
  expect(iron({})).toEqual({ dimension: 'number', value: 0 });
  expect(iron({ 'swing-rule': 'measured' })).toEqual({ dimension: 'number', value: 0 });
  expect(iron({ 'swing-rule': 'fall-less-stand' })).toEqual({ dimension: 'number', value: 1 });
});

test('a rule without its inputs adds nothing', () => {
  const made = houseMeasures({ 'overlap-rule': 'given' }, new Map([['button', millimetres(20)]]));
  expect(made.ok && [...made.measures.keys()]).toEqual(['button']);
});

test('the measures handed in are left alone', () => {
  const before = new Map(measures);
  houseMeasures({}, measures);
  expect(measures).toEqual(before);
});

test('an unknown rule or choice is refused in words', () => {
  expect(lengthsOf(houseMeasures({ 'lap-rule': 'given' }, measures))).toMatchInlineSnapshot(
    `"“lap-rule” is not a house rule. The house rules are: overlap-rule, stand-rule, cover-rule, swing-rule."`,
  );
  expect(lengthsOf(houseMeasures({ 'stand-rule': 'half' }, measures))).toMatchInlineSnapshot(
    `"“half” is not a choice of the house rule “stand-rule”. The choices are: full, quarter-inch-less."`,
  );
});

test('a choice named like part of every object is refused as well', () => {
  expect(houseMeasures({ 'stand-rule': 'constructor' }, measures).ok).toBe(false);
});

test('every choice has a source, words, and a usual choice that is one of them', () => {
  for (const rule of houseRules) {
    expect(rule.choices.map((one) => one.name)).toContain(rule.usual);
    expect(en).toHaveProperty([`house.${rule.name}`]);
    for (const choice of rule.choices) {
      expect(choice.source).not.toBe('');
      expect(en).toHaveProperty([`house.${rule.name}.${choice.name}`]);
    }
  }
});
