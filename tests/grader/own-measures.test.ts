import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/drafting/step.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { otherOrders } from '../../src/grader/other-orders.ts';
import { readExercise } from '../../src/grader/read-exercise.ts';
import { say } from '../../src/words/say.ts';
import { type Authored, authored, faultsAfter, faultsIn } from './authored.ts';

const reader = { language: 'en', unit: 'cm' } as const;

/** The overlap exercise with a measure of its own in place of the overlap: all an author writes is YAML. */
function withOwn(change: (style: Authored) => void = () => undefined): Authored {
  const text = JSON.stringify(authored('overlap'))
    .replaceAll('{overlap}', '{facing-reach}')
    .replaceAll('"distance":"overlap', '"distance":"facing-reach');
  const data = JSON.parse(text);
  const { overlap } = data.style;
  data.style = { 'facing-reach': { ...overlap, about: 'How far the facing reaches beyond the centre front.' } };
  change(data.style);
  return data;
}

function exercise(): Exercise {
  const read = readExercise('overlap', withOwn());
  if (!read.ok) throw new Error(faultsIn('overlap', withOwn()));
  return read.exercise;
}

describe('a measure that an exercise brings along', () => {
  const own = exercise();
  const order = orderFor(own, 'first');
  const named = (distance: string): readonly Step[] =>
    own.reference.map((step) => (step.name === 'overlap-edge' ? ({ ...step, distance } as Step) : step));

  test('is on the order, and in what is said, as any other', () => {
    const laid = layOut(own, order);
    expect(laid.ok && laid.learner.measures.get('facing-reach')).toEqual({ dimension: 'length', value: 31.75 });
    const { reports } = gradeDraft(own, order, named('facing-reach / 2'), 'workroom');
    const said = reports.flatMap(({ sentences }) => sentences.map((one) => say(one, reader))).join(' ');
    expect(said).toContain('3.2 cm');
    expect(said).not.toMatch(/[{}]/);
  });

  test('differs on other orders within its range, so that a number typed in its place lets go and is told by its name', () => {
    const values = otherOrders(own, order).map(({ style }) => Number.parseFloat(style['facing-reach'] ?? ''));
    expect(new Set(values).size).toBeGreaterThan(2);
    for (const value of values) expect(value >= 25.4 && value <= 44.45).toBe(true);
    const right = gradeDraft(own, order, own.reference, 'workroom');
    expect([right.marks, right.otherFigures]).toEqual([right.of, { tried: 6, held: 6, letGo: [] }]);
    const typed = gradeDraft(own, order, named('1 1/4 in'), 'workroom');
    expect(typed.marks).toBe(typed.of);
    expect(typed.otherFigures.held).toBeLessThan(6);
    expect(typed.otherFigures.letGo.map(({ message }) => say(message, reader)).join()).toContain('equal facing reach:');
  });
});

describe('an author is told', () => {
  test('what is wrong with a measure of the exercise’s own', () => {
    const told = (change: (style: Authored) => void) => faultsIn('overlap', withOwn(change));
    expect(
      told((style) => {
        style['facing-reach'].about = 'Reaches {overlap} out.';
      }),
    ).toMatchInlineSnapshot(
      `"style.facing-reach.about: This text uses “overlap” in braces, and it can use no values. Write the words themselves."`,
    );
    expect(
      told((style) => {
        style['facing-reach'].value = '2 in';
      }),
    ).toContain('should lie between “from” and “to”');
    expect(
      told((style) => {
        style['facing-reach'].to = '2000 mm';
      }),
    ).toMatchInlineSnapshot(
      `"style.facing-reach.to: The facing reach, “facing-reach”, comes to 78 3/4 in. It should lie between 0 in and 39 3/8 in."`,
    );
    expect(
      told((style) => {
        style.overlap = { value: '1 in', from: '1 in', to: '2 in', about: 'The lap.' };
        for (const name of ['waist', 'shoulder', 'stand-by-rule', 'off', 'cm'])
          style[name] = { value: '1 in', from: '1 in', to: '2 in', about: 'Something.' };
      }),
    ).toMatchInlineSnapshot(`
      "style.overlap.about: “overlap” is a measure of the course, and its words are there already. Leave “about” out.
      style.waist: “waist” is the name of something else on every table, and cannot name a measure of this exercise. Choose another name.
      style.shoulder: “shoulder” is the name of something else on every table, and cannot name a measure of this exercise. Choose another name.
      style.stand-by-rule: “stand-by-rule” is the name of something else on every table, and cannot name a measure of this exercise. Choose another name.
      style.off: “off” is the name of something else on every table, and cannot name a measure of this exercise. Choose another name.
      style.cm: “cm” is the name of something else on every table, and cannot name a measure of this exercise. Choose another name."
    `);
  });

  test('that a name which is no measure of the course can be made one', () => {
    expect(
      faultsAfter('overlap', (data) => {
        data.style['facing-reach'] = { value: '1 in', from: '1 in', to: '2 in' };
      }),
    ).toMatch(
      /^style\.facing-reach: “facing-reach” is not a style measure\. .* For a measure of this exercise alone, say/,
    );
  });
});
