import { entry } from '../entry.ts';

/** What is said of one target in a word or two, wherever it is marked. */
export const verdict = {
  'verdict.word': entry(
    ['verdict'],
    '{verdict, select, right {right} nearly {nearly right} partly {partly right} missing {missing} other {not yet}}',
  ),
};
