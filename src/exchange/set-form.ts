import * as v from 'valibot';
import { fields, list, name, named, word } from '../grader/reading/fields.ts';
import { line, lines, moment, strictnesses, whole } from './fields.ts';
import { SET_CHECKS, SET_EXERCISES, SET_FORMAT, SET_MARKS, SET_VERSION } from './set.ts';

/** The form of a problem set's file. What its fields name is looked up afterwards. */

const NOTE_LENGTH = 2000;

/** Shorter than a line: a student's name is put behind it for a figure of their own. */
const SEED_LENGTH = 60;

const group = word(['women', 'men', 'anyone'], 'wants.group');

const figures = v.union(
  [
    v.literal('stated', 'wants.set-figures'),
    fields({ named: name('wants.person') }, 'wants.set-figures'),
    fields({ sampled: group }, 'wants.set-figures'),
    fields({ each: group }, 'wants.set-figures'),
  ],
  'wants.set-figures',
);

const exercise = fields(
  { exercise: name('wants.exercise-name'), marks: whole(1, SET_MARKS, 'wants.set-marks') },
  'wants.set-exercise',
);

const title = line('wants.set-title');

/** The form of a set while it is made: its title may be empty yet, and it may have no exercises. */
export const unfinishedSetForm = formWith(title, 0);

export const setForm = formWith(v.pipe(title, v.regex(/\S/, 'wants.set-title')), 1);

function formWith<const T extends v.GenericSchema<string>>(titled: T, least: number) {
  return fields(
    {
      format: v.literal(SET_FORMAT),
      version: v.literal(SET_VERSION),
      title: titled,
      note: lines('wants.set-note', NOTE_LENGTH),
      exercises: v.pipe(list(exercise, 'wants.set-exercises', least), v.maxLength(SET_EXERCISES, 'wants.shorter')),
      figures,
      seed: v.pipe(line('wants.set-seed', SEED_LENGTH), v.regex(/\S/, 'wants.set-seed')),
      strictness: word(strictnesses, 'wants.strictness'),
      house: named(name('wants.house-choice'), 'wants.house'),
      feedback: word(['verdict', 'direction', 'place'], 'wants.feedback'),
      checks: v.nullable(whole(1, SET_CHECKS, 'wants.set-checks')),
      hints: v.boolean('wants.set-hints'),
      due: moment('wants.due'),
    },
    'wants.problem-set',
  );
}
