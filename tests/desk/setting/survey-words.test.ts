import { expect, test } from 'vitest';
import { survey } from '../../../src/garment/survey.ts';
import { message } from '../../../src/words/message.ts';
import { say } from '../../../src/words/say.ts';

test('what is said of the survey on an order and on the desk names as many people as it measured', () => {
  const people = (survey.women.count + survey.men.count).toLocaleString('en');
  for (const key of ['table.figure-survey', 'desk.survey-what'] as const)
    expect(say(message(key), { language: 'en', unit: 'cm' })).toContain(`${people} adults`);
});
