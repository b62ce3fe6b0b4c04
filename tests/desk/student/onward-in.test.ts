import { expect, test } from 'vitest';
import { onwardIn } from '../../../src/desk/student/onward-in.ts';
import { setMark } from '../../../src/exchange/write-set.ts';
import { say } from '../../../src/words/say.ts';
import { weekTwo } from '../../exchange/sets.ts';

const inSet = { set: weekTwo, mark: setMark(weekTwo), student: { student: 'Ilse', number: '' } };
const titles = { 'roll-line': 'The roll line, whole' };
const after = (exercise: string) => {
  const { href, says } = onwardIn(inSet, exercise, titles, '../set/', '');
  return [href, say(says, { language: 'en', unit: 'cm' })];
};

test('after an exercise of a set comes the next in its order', () => {
  expect(after('overlap-button')).toEqual([
    `../roll-line/#in=${inSet.mark.id}`,
    'Next in the set: The roll line, whole',
  ]);
});

test('after the last comes the set, to hand it in, in other words than the way back that stands beside every draft', () => {
  expect(after('notch-level')).toEqual(['../set/', 'That was the last of the set: on to handing it in']);
});
