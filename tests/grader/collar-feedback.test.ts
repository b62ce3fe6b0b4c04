import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { misread } from '../../src/grader/misreading.ts';
import { say } from '../../src/words/say.ts';
import { orderOn } from './tables.ts';

const [regular] = people;
if (regular === undefined) throw new Error('no people');

function paragraph(exercise: Exercise, steps: readonly Step[], target: string, house = exercise.house): string {
  const grade = gradeDraft(exercise, orderOn(exercise, regular?.figure ?? never(), house), steps, 'workroom');
  const report = grade.reports.find((one) => one.target === target);
  return (report?.sentences ?? []).map((sentence) => say(sentence, { language: 'en', unit: 'in' })).join('\n');
}

function wrong(exercise: Exercise, id: string): readonly Step[] {
  return misread(exercise.reference, exercise.misreadings.find((one) => one.id === id) ?? never());
}

function swapped(exercise: Exercise, ...instead: readonly Step[]): readonly Step[] {
  return exercise.reference.map((step) => instead.find(({ name }) => name === step.name) ?? step);
}

const whole = loadExercise('collar-single');

test('a collar that was not swung is told what the cloth will do', () => {
  expect(paragraph(whole, wrong(whole, 'not-swung'), 'collar-centre-back')).toMatchInlineSnapshot(`
    "Your collar was not swung. Its outer edge is no longer than the neck edge, but turned down it has further to go: it pulls, stress lines run across the shoulder, and the neck seam shows. Swing the line about the neck point, clockwise, by the edge ease at the collar’s width, before you lay the back neck along it.
    (Your overlap edge, break point, roll line and gorge corner are right, and this was judged from them.)"
  `);
});

test('an edge that bends to and fro is told once, by what its bends back add up to', () => {
  const beside = ['1/4', '3/4'].flatMap((fraction, index): Step[] => [
    { verb: 'part', name: `on-${index}`, from: 'over-shoulder', to: 'collar-point', fraction },
    { verb: 'parallel', name: `out-${index}`, to: 'chord', distance: index === 0 ? '14 mm' : '-14 mm', side: 'left' },
    { verb: 'foot', name: `mark-${index}`, from: `on-${index}`, on: `out-${index}` },
  ]);
  const at = whole.reference.findIndex(({ name }) => name === 'outer-edge');
  const steps: Step[] = [
    ...whole.reference.slice(0, at),
    { verb: 'rule', name: 'chord', from: 'over-shoulder', to: 'collar-point' },
    ...beside,
    {
      verb: 'curve',
      name: 'outer-edge',
      through: ['outer-back', 'over-shoulder', 'mark-0', 'mark-1', 'collar-point'],
      leave: { square: 'collar-centre-back' },
      answers: 'outer-edge',
    },
  ];
  expect(paragraph(whole, steps, 'outer-edge')).toMatchInlineSnapshot(`
    "Your outer edge bends to and fro: its bends back add up to 3/8 in, and 1/16 in is the most allowed.
    An edge that bends to and fro looks wavy when the collar is worn, however well it meets its marks.
    Let the curve bend one way, from the centre back to the collar point. Where its handles pull it about, draw them in.
    (Your overlap edge, break point, roll line, notch, gorge corner, collar centre back, collar neck edge and collar point are right, and this was judged from them.)"
  `);
});

test('an edge that was drawn long is walked, and what is over is said', () => {
  const steps = swapped(whole, {
    verb: 'along',
    name: 'edge-start',
    on: 'true-back',
    from: 'neck-point',
    distance: 'back-neck + 1/4 in',
    toward: 'edge-past',
  });
  expect(paragraph(whole, steps, 'collar-neck-edge')).toMatchInlineSnapshot(`
    "Without the 1/4 in added in step 44 your collar neck edge would be right. If that is a seam allowance, leave it out: a draft is net, its lines are the ones that are sewn, and the allowance comes when the pattern is cut.
    Walked along its seam, your collar neck edge has 1/4 in left over: it measures 9 1/4 in and the seam 9 in.
    This edge is sewn to the neck seam of the jacket. Too long, it is eased in and the fall drops.
    Walk it: the back neck from centre back to shoulder, then the front seam by the gorge corner to the notch. Behind the shoulder trim what is over at the centre back, or add there what is missing; in front draw the edge along the front’s own seam again.
    (Your overlap edge, break point, roll line, notch, gorge corner and collar centre back are right, and this was judged from them.)"
  `);
});

test('a lapel bowed inward is out of range, and taste is left alone', () => {
  const bowed = (distance: string): readonly Step[] =>
    whole.reference.flatMap((step): readonly Step[] =>
      step.name === 'lapel-edge'
        ? [
            { verb: 'part', name: 'half', from: 'lapel-point', to: 'break-point', fraction: '1/2' },
            { verb: 'rule', name: 'chord', from: 'lapel-point', to: 'break-point' },
            { verb: 'square', name: 'aside', to: 'chord', through: 'half' },
            { verb: 'along', name: 'bow', on: 'aside', from: 'half', distance, toward: 'left' },
            {
              verb: 'curve',
              name: 'lapel-edge',
              through: ['lapel-point', 'bow', 'break-point'],
              answers: 'lapel-edge',
            },
          ]
        : [step],
    );
  expect(paragraph(whole, bowed('1/4 in'), 'lapel-edge')).toBe('Your lapel edge is right.');
  expect(paragraph(whole, bowed('-1/4 in'), 'lapel-edge')).toMatchInlineSnapshot(`
    "Your lapel edge bows 1/4 in from the straight to the wrong side; none is allowed there.
    Straight or a little full is taste. Hollow, the edge looks gnawed once it is turned.
    Draw the edge straight from point to break, or bow it away from the roll line, by 3/8 in at the most.
    (Your overlap edge, break point, roll line, notch, gorge corner and lapel point are right, and this was judged from them.)"
  `);
});

test('advice follows the house rule in force', () => {
  const iron = { ...whole.house, 'swing-rule': 'fall-less-stand' };
  // The marker draws the right centre back a second time; a learner does not.
  const none = whole.reference.filter(({ name }) => name !== 'collar-centre-back' && name !== 'right-back');
  expect(paragraph(whole, none, 'collar-centre-back')).toMatchInlineSnapshot(`
    "Nothing on the sheet is pointed out as the collar centre back yet.
    Swing the line through the neck point clockwise by the edge ease at the collar’s width, lay the back neck along it, up from the neck point, and square across there."
  `);
  expect(paragraph(whole, none, 'collar-centre-back', iron)).toMatchInlineSnapshot(`
    "Nothing on the sheet is pointed out as the collar centre back yet.
    Swing the line through the neck point clockwise by the fall less the stand, at the length of the back neck, lay the back neck along it, up from the neck point, and square across there."
  `);
});

test('a taped ease that is too long is said with its size', () => {
  const ease = loadExercise('edge-ease');
  expect(paragraph(ease, wrong(ease, 'whole-for-half'), 'edge-ease')).toMatchInlineSnapshot(`
    "That is the ease of the whole collar. The draft makes half of one: swung by all of it, the edge would ripple. Take the difference once.
    (Your neck seam and fall line are right, and this was judged from them.)"
  `);
});

function never(): never {
  throw new Error('not there');
}
