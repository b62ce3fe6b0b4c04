import { expect, test } from 'vitest';
import { setRules } from '../../src/desk/set-rules.ts';
import { say } from '../../src/words/say.ts';
import { weekTwo } from '../exchange/sets.ts';

const told = (change: Partial<typeof weekTwo>) =>
  setRules({ ...weekTwo, ...change }).map((rule) => say(rule, { language: 'en', unit: 'cm' }));

test('students are told how often they may check, what a check says, whether there are hints, and how narrowly they are marked', () => {
  expect(told({})).toEqual([
    'A draft may be checked 3 times.',
    'A check says which answers are right, and how the others are off.',
    'Hints may be taken; your teacher sees which.',
    'A mark, a line or a level is right within 3 mm, a walked seam within 1.5 mm, a square within 1°. What is off by up to twice that earns half its marks.',
  ]);
  expect(told({ checks: null, feedback: 'verdict', hints: false, strictness: 'sample-room' })).toEqual([
    'A draft may be checked as often as you like.',
    'A check says which answers are right.',
    'There are no hints.',
    'A mark, a line or a level is right within 1.5 mm, a walked seam within 0.75 mm, a square within 0.5°. What is off by up to twice that earns half its marks.',
  ]);
});
