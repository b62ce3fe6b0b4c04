import { describe, expect, test } from 'vitest';
import { asName } from '../../src/grader/authoring/file-name-faults.ts';
import { placeOf, placeText } from '../../src/grader/reading/fault.ts';
import { authored, faultsAfter, faultsIn } from './authored.ts';

test('an exercise as it stands has no fault', () => {
  expect(faultsIn('break-point', authored('break-point'))).toBe('no fault');
});

test('a place is written and read back', () => {
  const place = ['misreadings', 2, 'instead', 0, 'distance'];
  expect(placeText(place)).toBe('misreadings[2].instead[0].distance');
  expect(placeOf(placeText(place))).toEqual(place);
  expect(placeText([])).toBe('');
  expect(placeOf('[3]')).toEqual([3]);
});

describe('the form of the file', () => {
  test('has to be a group of fields', () => {
    expect(faultsIn('x', ['title'])).toMatchInlineSnapshot(
      `"(file): An exercise is a group of fields such as title, brief and targets; a list of 1 was found."`,
    );
    expect(faultsIn('x', null)).toMatchInlineSnapshot(
      `"(file): An exercise is a group of fields such as title, brief and targets; nothing was found."`,
    );
  });

  test('has no field left out and none too many', () => {
    const change = (exercise: Record<string, unknown>) => {
      Reflect.deleteProperty(exercise, 'lesson');
      exercise['tittle'] = exercise['title'];
      Reflect.deleteProperty(exercise, 'title');
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(`
      "lesson: This is missing: the name of the lesson it belongs to.
      tittle: There is no such field here. Did you mean “title”? The fields are: title, lesson, brief, figure, style, house, applies, shows, given, shaken, targets, reference, checks, misreadings, worn."
    `);
  });

  test('says what a field wants and what was found', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.brief = '   ';
      exercise.style.overlap = '1 1/4 in';
      exercise.targets[0].hints.pop();
      exercise.checks[0].marks = 1.5;
      exercise.checks[1].why = null;
      exercise.figure = { sampled: 'child' };
      exercise.misreadings[0].id = 'Body side';
      exercise.checks[0].most = '3 cm\u200e';
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(`
      "brief: This should be the brief: what to make, for whom, what to hand in; “   ” was found.
      figure.sampled: This should be whose figures are sampled: one of women, men, anyone; “child” was found.
      style.overlap: This should be a style measure: value, from and to; “1 1/4 in” was found.
      checks[0].marks: This should be marks, a whole number from 1 to 100; the number 1.5 was found.
      checks[0].most: This should be a text whose characters can all be seen; “3 cm\\u200e” was found.
      checks[1].why: This should be why it shows on the body; nothing was found.
      misreadings[0].id: This should be a name: lower-case words and numbers joined by hyphens, beginning with a letter; “Body side” was found.
      targets[0].hints: This should be three hints: where to look, which tool, the step itself; a list of 2 was found."
    `);
  });

  test('offers the nearest word where a word is misspelt', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.checks[0].measure = 'paralel';
      exercise.checks[1].tolerance = 'squares';
      exercise.targets[0].makes = 'circle';
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(`
      "targets[0].makes: This should be what the target is: one of point, line, curve, length, angle; “circle” was found.
      checks[0].measure: This should be what the check measures: one of position, distance, line, squareness, parallel, length, walk, through, level, bow, shape, smoothness, inflection, bend, angle; “paralel” was found. Did you mean “parallel”?
      checks[1].tolerance: This should be a tolerance class: one of mark, seam, square, level; “squares” was found. Did you mean “square”?"
    `);
  });

  test('names step and field where a step does not fit', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.reference[0].verb = 'paralel';
      Reflect.deleteProperty(exercise.reference[1], 'other');
      exercise.misreadings[1].instead[0].distnce = '3 cm';
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(`
      "reference[0].verb: Step 1 (overlap-edge), “verb”: A verb of the language is expected, and “paralel” was found. Did you mean “parallel”?
      reference[1].other: Step 2 (waist-point), “other”: This is missing. It takes a line or a curve.
      misreadings[1].instead[0].distnce: Step 1 (overlap-edge), “distnce”: There is no such field here. Did you mean “distance”?"
    `);
  });

  test('refuses fields called as something every object has', () => {
    const data = { ...authored('overlap'), style: JSON.parse('{"__proto__": {"value": "1 in"}, "constructor": 1}') };
    expect(faultsIn('overlap', data)).toMatchInlineSnapshot(`
      "style.__proto__: There is no such field here. Take it out.
      style.constructor: There is no such field here. Take it out."
    `);
  });
});

describe('names', () => {
  test('of lessons, people, style measures and house rules have to be known', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.lesson = 'overlaps';
      exercise.figure = { named: 'amra' };
      exercise.style.ovrlap = { value: '1 in', from: '1 in', to: '1 in' };
      exercise.style.overlap = { value: '2 in', from: '3 in', to: '1 furlong' };
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(`
      "lesson: No lesson is called “overlaps”. Did you mean “overlap”?
      figure.named: No invented figure is called “amra”. Did you mean “amara”?
      style.overlap.to: The overlap, “overlap”, is “1 furlong”. Between “1” and “furlong” a sign is missing. Write +, -, * or / between them.
      style.ovrlap: “ovrlap” is not a style measure. The style measures are: overlap, button, button-to-edge, break-rise, break-rise-high, top-button-rise, break-above-button, stand, fall, cloth-turn, gorge-depth, notch-width, notch-drop, lapel-width, peak-rise, collar-end. For a measure of this exercise alone, say under “about” what it is."
    `);
    expect(
      faultsAfter('stand-point', (exercise) => {
        exercise.house = { 'stand-rule': 'half', 'collar-rule': 'full' };
      }),
    ).toMatchInlineSnapshot(`
      "house.stand-rule: “half” is not a choice of the house rule “stand-rule”. The choices are: full, quarter-inch-less.
      house.collar-rule: “collar-rule” is not a house rule. The house rules are: overlap-rule, stand-rule, cover-rule, swing-rule."
    `);
  });

  test('of targets are each named once, checked, answered once, and in the order in which they are made', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.targets.reverse();
      exercise.targets.push({ ...exercise.targets[0], name: 'button' }, exercise.targets[0]);
      exercise.reference[3].answers = 'break-point';
      exercise.reference[1].answers = 'break-levl';
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(`
      "reference[3].answers: Two steps of the reference answer the target “break-point”. Leave “answers” on one of them.
      targets[1].name: No step of the reference answers the target “break-level”. Write “answers: break-level” on the step that makes it.
      targets[3].name: No check looks at the target “button”. Add one under checks, or take the target out.
      targets[3].name: No step of the reference answers the target “button”. Write “answers: button” on the step that makes it.
      targets[4].name: Two targets are called “break-point”. Give each its own name.
      reference[1].answers: No target of this exercise is called “break-levl”. Did you mean “break-level”?"
    `);
  });

  test('of exercises, targets and misreadings are none that every object has, nor anything but lower-case words', () => {
    const called = (name: string) => {
      const text = JSON.stringify(authored('break-point')).replaceAll('"break-level"', `"${name}"`);
      const data = JSON.parse(text);
      data.misreadings[0].id = name;
      return faultsIn('break-point', data);
    };
    for (const name of ['constructor', 'prototype'])
      expect(called(name)).toBe(
        ['targets[1].name', 'misreadings[0].id']
          .map(
            (at) =>
              `${at}: “${name}” is a word that every program keeps for itself, and cannot name an exercise, a target or a misreading. Choose another name.`,
          )
          .join('\n'),
      );
    for (const name of ['__proto__', 'toString'])
      expect(called(name)).toContain(
        `targets[1].name: This should be a name: lower-case words and numbers joined by hyphens, beginning with a letter; “${name}” was found.`,
      );
    expect(faultsIn('constructor', authored('break-point'))).toMatch(/^\(file\): “constructor” is a word/);
    expect(asName('Constructor')).toBe('my-exercise');
  });

  test('in checks have to be there, and of the kind that is measured', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.checks[0].target = 'overlap-ege';
      exercise.checks[1].to = 'waist-line';
      exercise.checks[2].measure = 'position';
      exercise.checks[3].to = 'neck-point';
      exercise.checks[4].from = 'front-edge';
      exercise.shows[0] = 'center-front';
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(`
      "shows[0]: No object of the block is called “center-front”. Did you mean “centre-front”?
      checks[0].target: No target of this exercise is called “overlap-ege”. Did you mean “overlap-edge”?
      checks[1].to: No object of the block or the reference is called “waist-line”. There are: centre-front, waist, collarbone-level, shoulder-line, front-neck-point, neck-point, shoulder-tip, front-neckline, back-neckline, back-neck-point, centre-back, overlap-edge, break-level, break-point, waist-point.
      checks[2].measure: The measure “position” reads a point; the target “break-level” makes a line. Choose another measure.
      checks[3].to: “neck-point” is a point, and a line is wanted here.
      checks[4].from: No object of the block or the reference is called “front-edge”. There are: centre-front, waist, collarbone-level, shoulder-line, front-neck-point, neck-point, shoulder-tip, front-neckline, back-neckline, back-neck-point, centre-back, overlap-edge, break-level, break-point, waist-point."
    `);
  });

  test('in misreadings have to be those of targets and of the steps they replace', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      const [first, second, third, fourth] = exercise.misreadings;
      first.target = 'edge';
      second.id = first.id;
      second.instead[0].name = 'overlap-edg';
      Reflect.deleteProperty(third.instead[0], 'answers');
      third.first = [{ verb: 'pencil', name: 'waist-point', at: [0, 0] }];
      fourth.instead = [];
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(`
      "misreadings[0].target: No target of this exercise is called “edge”. There are: overlap-edge, break-level, break-point.
      misreadings[1].id: Two misreadings are called “body-side”. Give each its own name.
      misreadings[1].instead[0].name: No step of the reference is called “overlap-edg”. Did you mean “overlap-edge”?
      misreadings[2].instead[0]: The step “break-level” replaces the one that answers “break-level”, so it has to answer it too. Write “answers: break-level” on it.
      misreadings[2].first[0].name: “waist-point” is already the name of a step of the reference. Under “first” give new marks new names.
      misreadings[3].instead: A misreading has to replace at least one step of the reference. Write it under “instead”."
    `);
  });
});

describe('ranges of a check', () => {
  test('are lengths, in order, of measures that read lengths', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      Object.assign(exercise.checks[0], { least: '2 in', most: '1 in' });
      Object.assign(exercise.checks[1], { least: '1 in' });
      Object.assign(exercise.checks[2], { most: 'break-rize' });
      Object.assign(exercise.checks[4], { least: '3' });
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(`
      "checks[0].least: “least” comes to 2 in, more than “most”, 1 in. Exchange them.
      checks[1].least: “least” and “most” are lengths, and this measure reads an angle. Take them out.
      checks[2].most: “break-rize” is not a length that can be worked out here. No measure and no taped length is called “break-rize”. Did you mean “break-rise”?
      checks[4].least: “3” does not come to a length. Write one with its unit, such as 1 1/4 in or stand + 6 mm."
    `);
  });

  test('are angles, in order, of a bend', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      const bends = exercise.checks.filter(({ measure }: { measure: string }) => measure === 'bend');
      Object.assign(bends[0], { most: '2 in' });
      Object.assign(bends[1], { least: '30 deg', most: '25 deg' });
      Object.assign(bends[2], { most: '25 dog' });
    };
    expect(faultsAfter('collar-single', change)).toMatchInlineSnapshot(`
      "checks[15].most: “2 in” does not come to an angle. Write one with its unit, such as 40 deg.
      checks[16].least: “least” comes to 30°, more than “most”, 25°. Exchange them.
      checks[33].most: “25 dog” is not an angle that can be worked out here. Between “25” and “dog” a sign is missing. Write +, -, * or / between them."
    `);
  });

  test('may use the measures of the order', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      Object.assign(exercise.checks[2], { least: 'break-rise - 1/4 in', most: 'break-rise + 1/4 in' });
    };
    expect(faultsAfter('break-point', change)).toBe('no fault');
  });
});

describe('texts', () => {
  test('close their braces and use only values there are', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.brief = 'Lap the fronts by {overlap';
      exercise.title = 'Edge of {overlap}';
      exercise.targets[0].hints[2] = 'Parallel, {ovrlap} left.';
      exercise.checks[0].why = 'It is <b>{off}</b> off.';
      exercise.checks[0].mend = 'Move it by {off}.';
      exercise.misreadings[0].says = 'You took {measured} for {expected}, <off>.';
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(`
      "title: This text uses “overlap” in braces, and it can use no values. Write the words themselves.
      brief: The braces of this text cannot be read near “{overlap”. Between { and } stands the name of a measure, in lower case; every brace is closed.
      targets[0].hints[2]: This text uses “ovrlap” in braces, and there is no such value. Did you mean “overlap”?
      checks[0].why: This text uses “b” in braces, and there is no such value. There are: overlap, neck-base, shoulder, shoulder-slope, front-waist, back-waist, off, measured, expected, way.
      checks[0].mend: This text uses “off” in braces, and there is no such value. There are: overlap, neck-base, shoulder, shoulder-slope, front-waist, back-waist.
      misreadings[0].says: Near “<off>.” something reads as a tag. Texts are plain: leave out angle brackets."
    `);
  });

  test('may choose words by a value', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.brief = '{overlap, select, other {Lap by {overlap}.}} It’s “one” # sign.';
    };
    expect(faultsAfter('overlap', change)).toBe('no fault');
  });
});

describe('what only a replay shows', () => {
  test('a reference that cannot be carried out', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.reference[0].distance = 'overlap + lap';
      exercise.reference[3].other = 'overlap-edge';
      exercise.reference[3].one = 'centre-front';
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(
      `"reference[0].distance: The reference cannot carry out this step. No measure and no taped length is called “lap”. Choose one from the list, or tape the length first."`,
    );
  });

  test('a step of the reference that comes to nothing as a whole, before an answer of another kind', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.reference.push({ verb: 'parallel', name: 'far', to: 'waist', distance: '4000000 in', side: 'up' });
      exercise.targets[2].makes = 'line';
      exercise.checks.splice(4, 2, { ...exercise.checks[0], target: 'break-point' });
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(`
      "reference[4]: The reference cannot carry out this step. This would lie more than a hundred metres away. Check the distances, or lines that hardly lean toward each other.
      targets[2].makes: The reference answers the target “break-point” with a point, but the target makes a line. Change “makes”, or the step."
    `);
  });

  test('a style measure that the order does not state, also where a length is called nearly so', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.reference[1].distance = 'stand';
      exercise.reference.unshift({ verb: 'tape', name: 'stands', from: 'front-neck-point', to: 'neck-point' });
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(
      `"reference[2].distance: The reference cannot carry out this step. “stand” is a style measure that this order does not state. Add it under “style”, with value, from and to."`,
    );
  });

  test('an answer of another kind than its target makes', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.targets[2].makes = 'line';
      exercise.checks.splice(4, 2, { ...exercise.checks[0], target: 'break-point' });
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(
      `"targets[2].makes: The reference answers the target “break-point” with a point, but the target makes a line. Change “makes”, or the step."`,
    );
  });

  test('a check that cannot be read although everything is there', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.checks[0].measure = 'level';
      Reflect.deleteProperty(exercise.checks[0], 'from');
      Reflect.deleteProperty(exercise.checks[0], 'at');
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(
      `"checks[0]: This check cannot be read on the reference. Look at the objects it names: they must be there, and not run parallel where they have to meet."`,
    );
  });

  test('a misreading that comes out right, on one order at least', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.misreadings[0].instead[0].side = 'left';
      exercise.misreadings[1].instead[0].distance = 'overlap * 0.85';
    };
    expect(faultsAfter('overlap', change)).toMatchInlineSnapshot(`
      "misreadings[0]: Done this way, the target “overlap-edge” still comes out right: of its checks “parallel” is off most, by 0 in on one of the orders tried, and 1/4 in is allowed at the most lenient. Replace a step that matters more, add a check that sees the difference, choose a finer tolerance, or narrow the ranges of the style.
      misreadings[1]: Done this way, the target “overlap-edge” still comes out right: of its checks “parallel” is off most, by 3/16 in on one of the orders tried, and 1/4 in is allowed at the most lenient. Replace a step that matters more, add a check that sees the difference, choose a finer tolerance, or narrow the ranges of the style."
    `);
  });

  test('a misreading that comes out as nothing', () => {
    const change = (exercise: ReturnType<typeof authored>) => {
      exercise.misreadings[6].instead[0].one = 'waist';
    };
    expect(faultsAfter('break-point', change)).toMatchInlineSnapshot(
      `"misreadings[6].instead[0].other: Done this way, nothing comes out for the target “break-point”. Waist and break level run parallel, so they do not cross. Choose lines that lean toward each other."`,
    );
  });
});

describe('what is given on the table', () => {
  const edge = { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' };

  test('is steps that can be carried out on every order and answer nothing', () => {
    expect(
      faultsAfter('overlap', (exercise) => {
        exercise.given = [
          { ...edge, answers: 'overlap-edge' },
          { ...edge, verb: 'paralel', name: 'other' },
        ];
      }),
    ).toMatchInlineSnapshot(
      `"given[1].verb: Step 2 (other), “verb”: A verb of the language is expected, and “paralel” was found. Did you mean “parallel”?"`,
    );
    expect(
      faultsAfter('overlap', (exercise) => {
        exercise.given = [{ ...edge, answers: 'overlap-edge' }];
      }),
    ).toMatchInlineSnapshot(
      `"given[0].answers: A step given on the table is no answer of the learner. Take “answers” out."`,
    );
    expect(
      faultsAfter('overlap', (exercise) => {
        exercise.given = [{ ...edge, to: 'center-front' }];
      }),
    ).toMatchInlineSnapshot(
      `"given[0].to: This step, given on the table, cannot be carried out. Nothing on the sheet is called “center-front”. Did you mean “centre-front”?"`,
    );
    expect(
      faultsAfter('overlap', (exercise) => {
        // An overlap of an inch and a quarter can be laid off here, but not the widest of the orders.
        const far = { verb: 'pencil', name: 'far', at: [-99960, 0] };
        const line = { verb: 'parallel', name: 'upright', to: 'centre-front', through: 'far' };
        exercise.given = [far, line, { ...edge, to: 'upright' }];
      }),
    ).toMatchInlineSnapshot(
      `"given[2]: This step, given on the table, cannot be carried out. This would lie more than a hundred metres away. Check the distances, or lines that hardly lean toward each other."`,
    );
  });

  test('is shaken where marks of that name are given', () => {
    expect(
      faultsAfter('overlap', (exercise) => {
        exercise.given = [edge];
        exercise.shaken = { marks: ['edge', 'corner'], by: '2' };
      }),
    ).toMatchInlineSnapshot(`
      "shaken.marks[1]: No given mark is called “corner”. There are: edge.
      shaken.by: “2” does not come to a length. Write one with its unit, such as 1 1/4 in or stand + 6 mm."
    `);
    expect(
      faultsAfter('overlap', (exercise) => {
        exercise.given = [edge];
        exercise.shaken = { marks: ['edge'], by: '2 mm' };
      }),
    ).toMatchInlineSnapshot(`"shaken.marks[0]: “edge” is a line, and a point is wanted here."`);
    expect(
      faultsAfter('overlap', (exercise) => {
        exercise.given = [edge];
        exercise.shaken = { marks: [], by: '2 furlongs' };
      }),
    ).toMatchInlineSnapshot(`"shaken.marks: This should be a list of given marks; a list of 0 was found."`);
  });
});
