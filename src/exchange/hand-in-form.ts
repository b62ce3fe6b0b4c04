import * as v from 'valibot';
import { expression, fields, list, name, named, word } from '../grader/reading/fields.ts';
import { line, moment, strictnesses, whole } from './fields.ts';
import { HAND_IN_FORMAT, HAND_IN_VERSION } from './hand-in.ts';
import { NAME_LENGTH, NUMBER_LENGTH } from './student.ts';

/** The form of a hand-in file. What its fields name is looked up afterwards. */

/** Room for a set's seed and a student's name. */
const SEED_LENGTH = 300;

/** Nobody checks a draft more often. */
const CHECKS = 100_000;

const figure = v.union(
  [
    fields({ named: name('wants.person') }, 'wants.figure-recipe'),
    fields(
      { sampled: word(['women', 'men', 'anyone'], 'wants.group'), seed: line('wants.seed', SEED_LENGTH) },
      'wants.figure-recipe',
    ),
    // Measures are read by the reader of figures, which speaks of them by name.
    fields({ measures: v.record(v.string(), v.unknown(), 'wants.measures') }, 'wants.figure-recipe'),
  ],
  'wants.figure-recipe',
);

export const handInForm = fields(
  {
    format: v.literal(HAND_IN_FORMAT),
    version: v.literal(HAND_IN_VERSION),
    student: line('wants.student', NAME_LENGTH),
    number: line('wants.number', NUMBER_LENGTH),
    set: v.nullable(
      fields(
        {
          title: line('wants.set-title'),
          id: v.pipe(v.string('wants.set-id'), v.regex(/^[0-9a-f]{8}$/, 'wants.set-id')),
        },
        'wants.set',
      ),
    ),
    exercise: name('wants.exercise-name'),
    order: fields(
      {
        figure,
        style: named(expression('wants.length'), 'wants.style-values'),
        house: named(name('wants.house-choice'), 'wants.house'),
      },
      'wants.order',
    ),
    strictness: word(strictnesses, 'wants.strictness'),
    unit: word(['cm', 'in'], 'wants.unit'),
    // Steps are read by the reader of the drafting language, which speaks of them by number and name.
    steps: v.custom<readonly unknown[]>((value) => Array.isArray(value), 'wants.steps'),
    shown: list(name('wants.target'), 'wants.shown'),
    hints: named(v.picklist([1, 2, 3], 'wants.hint-tier'), 'wants.hints-taken'),
    checks: whole(0, CHECKS, 'wants.checks-used'),
    begun: moment('wants.saved'),
    saved: moment('wants.saved'),
  },
  'wants.hand-in',
);
