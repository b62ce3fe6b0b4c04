import * as v from 'valibot';
import { expression, fields, list, name, named, type Wanted, word } from '../grader/reading/fields.ts';
import { type Strictness, strictnessFactor } from '../grader/tolerance.ts';
import { HAND_IN_FORMAT, HAND_IN_VERSION } from './hand-in.ts';

/** The form of a hand-in file. What its fields name is looked up afterwards. */

const LINE_LENGTH = 200;

/** One line of text, possibly empty, without control characters. */
function line(wanted: Wanted) {
  return v.pipe(v.string(wanted), v.maxLength(LINE_LENGTH, wanted), v.regex(/^[^\p{Cc}]*$/u, wanted));
}

const strictnesses = Object.keys(strictnessFactor) as [Strictness, ...Strictness[]];

const figure = v.union(
  [
    fields({ named: name('wants.person') }, 'wants.figure-recipe'),
    fields(
      { sampled: word(['women', 'men', 'anyone'], 'wants.group'), seed: line('wants.seed') },
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
    student: line('wants.student'),
    set: v.nullable(line('wants.set')),
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
    saved: v.nullable(v.pipe(v.string('wants.saved'), v.isoTimestamp('wants.saved'))),
  },
  'wants.hand-in',
);

export type HandInForm = v.InferOutput<typeof handInForm>;
