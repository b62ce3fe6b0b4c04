import { expect, test } from 'vitest';
import { strangeExercise } from '../../src/exchange/strange-exercise.ts';
import { say } from '../../src/words/say.ts';

const said = (name: string) => say(strangeExercise(name, ['overlap', 'roll-line']), { language: 'en', unit: 'cm' });

test('an exercise that this copy of the course does not have was misspelt, or is another copy’s', () => {
  expect(said('roll-lin')).toBe('No exercise is called “roll-lin”. Did you mean “roll-line”?');
  expect(said('pocket-line')).toMatchInlineSnapshot(
    `"This copy of the course has no exercise “pocket-line”. A teacher may have added it to another copy: open this there, or ask whoever handed it out."`,
  );
});
