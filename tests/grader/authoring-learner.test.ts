import { describe, expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../src/cli/exercises.ts';
import { asName } from '../../src/grader/authoring/file-name-faults.ts';
import { authored, faultsAfter, faultsIn } from './authored.ts';

describe('a reference that a learner could not follow', () => {
  test('is none of the course’s', () => {
    expect(exerciseNames().map((name) => loadExercise(name).id)).toEqual(exerciseNames());
  });

  test('types what the order states', () => {
    const typed = (distance: string) =>
      faultsAfter('overlap', (exercise) => {
        exercise.reference[0].distance = distance;
      });
    expect(typed('1 1/4 in')).toMatchInlineSnapshot(
      `"reference[0].distance: “1 1/4 in” is a number, and stays so on every order; “overlap” comes to the same on this one, and no step uses it. Write the name."`,
    );
    // In the other unit too, as a ruler has it.
    expect(typed('3.2 cm')).toContain('Write the name.');
    expect(typed('overlap + 0 mm')).toBe('no fault');
  });

  test('may type what is no measure, and what a measure that is used happens to equal', () => {
    const beside = { verb: 'parallel', name: 'beside', to: 'centre-front', distance: '1 1/4 in', side: 'left' };
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.reference.unshift(beside);
      Object.assign(exercise.reference[1], { to: 'beside', distance: 'overlap - 1 1/4 in' });
    };
    expect(faultsAfter('overlap', change)).toBe('no fault');
  });

  test('builds on what does not lie on the table', () => {
    const hidden = (name: string) =>
      faultsAfter('break-point', (exercise) => {
        exercise.shows = exercise.shows.filter((shown: string) => shown !== name);
      });
    expect(hidden('waist')).toMatchInlineSnapshot(
      `"reference[1]: This step is made from “waist”, which does not lie on the table. Add it under “shows”, or build on something that is there."`,
    );
    // Only the marker reads there.
    expect(hidden('front-neck-point')).toBe('no fault');
  });

  test('has a mark by eye', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.reference[2] = { verb: 'pencil', name: 'break-point', at: [-32, 38], answers: 'break-point' };
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(
      `"reference[2]: A mark by eye lies at the same place on every figure, so it is right on one at most. Make it with another tool, from what lies on the table."`,
    );
  });

  test('uses a measure by a rule that is not in force', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.reference[0].distance = 'overlap-by-rule';
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(
      `"reference[0].distance: The reference cannot carry out this step. “overlap-by-rule” comes from a house rule that is not in force here, so the learner has no such measure. State the rule under “house”: overlap-rule."`,
    );
  });

  test('uses a style measure that the order does not state', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.reference[0].distance = 'button * 2';
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(
      `"reference[0].distance: The reference cannot carry out this step. “button” is a style measure that this order does not state. Add it under “style”, with value, from and to."`,
    );
  });
});

describe('what is told once', () => {
  test('is a slip, and not the steps that only lack what it did not make', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.reference[0].to = 'center-front';
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(
      `"reference[0].to: The reference cannot carry out this step. Nothing on the sheet is called “center-front”. Did you mean “centre-front”?"`,
    );
  });

  test('is the number of hints, and not each that lacks', () => {
    for (const count of [0, 2, 4]) {
      const change = (exercise: ReturnType<typeof authored>) => {
        exercise.targets[0].hints = Array.from({ length: count }, () => 'Look.');
      };
      expect(faultsAfter('overlap', change)).toBe(
        `targets[0].hints: This should be three hints: where to look, which tool, the step itself; a list of ${count} was found.`,
      );
    }
  });

  test('is a target that no step answers, and not the misreadings that answer it', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      Reflect.deleteProperty(exercise.reference[0], 'answers');
    };
    expect(faultsAfter('overlap', change)).toBe(
      'targets[0].name: No step of the reference answers the target “overlap-edge”. Write “answers: overlap-edge” on the step that makes it.',
    );
  });
});

describe('a misreading', () => {
  test('keeps its new marks under “first”', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.misreadings[0].instead.unshift({ verb: 'foot', name: 'help', from: 'neck-point', on: 'waist' });
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(
      `"misreadings[0].instead[0].name: No step of the reference is called “help”. There are: overlap-edge, waist-point. A step under “instead” has the name of the one whose place it takes; what only the wrong way needs goes under “first”."`,
    );
  });

  test('answers nothing with a step in whose place nothing is answered', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.misreadings[0].instead = [
        { verb: 'cross', name: 'waist-point', one: 'centre-front', other: 'waist', answers: 'overlap-edge' },
      ];
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(
      `"misreadings[0].instead[0].answers: The step “waist-point” of the reference answers no target, so the one in its place answers none. Take “answers” out."`,
    );
  });
});

test('a style measure is not the same on every order', () => {
  const change = (exercise: ReturnType<typeof authored>) => {
    exercise.style.overlap = { value: '3.2 cm', from: '32 mm', to: '3.2 cm' };
  };
  expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(
    `"style.overlap: “from”, “value” and “to” are one length, so every order has it, and a number typed for the name would hold on all of them. Leave room on at least one side."`,
  );
});

test('a decimal comma in braces is known by what it leaves behind', () => {
  const change = (exercise: ReturnType<typeof authored>) => {
    exercise.style.overlap = { value: 3, '2 cm': null, from: '3 cm', to: '4 cm' };
  };
  expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(`
    "style.overlap.value: This should be a length with its unit, such as 1 1/4 in; the number 3 was found.
    style.overlap.2 cm: There is no such field here. Is this what stands after a decimal comma? A decimal is written with a point: 1.9 cm."
  `);
});

test('the first hint gives no measure away', () => {
  const change = (exercise: ReturnType<typeof authored>) => {
    exercise.targets[0].hints[0] = 'Look {overlap} to the left.';
  };
  expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(
    `"targets[0].hints[0]: The first hint gives “overlap” away. It says where to look; keep measures for the third."`,
  );
});

describe('the name of an exercise file', () => {
  test('is what an address can hold', () => {
    expect(faultsIn('Top Button', authored('overlap'))).toMatchInlineSnapshot(
      `"(file): The name of an exercise file is lower-case words and numbers joined by hyphens, and this is “Top Button”. Name the file top-button.yaml."`,
    );
    expect(faultsIn('top_button', authored('overlap'))).toContain('Name the file top-button.yaml.');
  });

  test('is made from any words', () => {
    expect(asName('Pocket Line (2)')).toBe('pocket-line-2');
    expect(asName('2nd Button')).toBe('nd-button');
    expect(asName('Ärmel—Schlitz')).toBe('armel-schlitz');
    for (const words of ['', '12', '襟', '-', 'x'.repeat(80)]) expect(asName(words)).toBe('my-exercise');
  });
});
