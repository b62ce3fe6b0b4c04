import { describe, expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../src/cli/exercises.ts';
import { setCommand } from '../../src/cli/set-command.ts';
import { readSet } from '../../src/exchange/read-set.ts';
import { readSetLink } from '../../src/exchange/set-link.ts';
import { runHere } from './run-command.ts';

async function made(...words: readonly string[]) {
  const { status, out, err } = await runHere(setCommand, words);
  expect([status, err]).toEqual([0, '']);
  const read = readSet(out, exerciseNames());
  if (!read.ok) throw new Error(out);
  return read.set;
}

describe('a set from the command line', () => {
  test('needs no more than an exercise, and is worth what its checks are', async () => {
    const marks = loadExercise('roll-line').checks.reduce((sum, check) => sum + check.marks, 0);
    expect(await made('roll-line')).toMatchObject({
      exercises: [{ exercise: 'roll-line', marks }],
      figures: 'stated',
      strictness: 'workroom',
      feedback: 'place',
      checks: null,
      hints: true,
      due: null,
    });
  });

  test('takes everything that a set has', async () => {
    const words = [
      ...['overlap-button=10', 'roll-line', '--title', 'Week 2', '--note', 'Bring muslin.', '--figures', 'each=men'],
      ...['--seed', 'b', '--strictness', 'learner', '--house', 'stand-rule=full', '--feedback', 'verdict'],
      ...['--checks', '3', '--no-hints', '--due', '2026-03-06T17:00Z'],
    ];
    expect(await made(...words)).toMatchObject({
      title: 'Week 2',
      note: 'Bring muslin.',
      exercises: [{ exercise: 'overlap-button', marks: 10 }, { exercise: 'roll-line' }],
      figures: { each: 'men' },
      seed: 'b',
      strictness: 'learner',
      house: { 'stand-rule': 'full' },
      feedback: 'verdict',
      checks: 3,
      hints: false,
      due: '2026-03-06T17:00:00.000Z',
    });
  });

  test('is the same for the same words, and has other figures for others', async () => {
    const [one, same, other] = [await made('swing'), await made('swing'), await made('swing', '--title', 'Week 3')];
    expect(same).toEqual(one);
    expect(other.seed).not.toBe(one.seed);
  });

  test('is due when the day ends, where only a day is given', async () => {
    const { due } = await made('swing', '--due', '2026-03-06');
    expect(new Date(due ?? '').toString()).toMatch(/Mar 06 2026 23:59/);
  });

  test('is printed as a link for a course under any path', async () => {
    const set = await made('swing', '--title', 'Week 3');
    const { out } = await runHere(setCommand, [
      'swing',
      '--title',
      'Week 3',
      '--link',
      'https://school.example/collars',
    ]);
    const address = new URL(out.trim());
    expect(address.origin + address.pathname).toBe('https://school.example/collars/set/');
    expect(readSetLink(address.hash, exerciseNames())).toEqual({ ok: true, set });
  });

  test.each([
    ['http://127.0.0.1:4321', 'http://127.0.0.1:4321/set/'],
    ['https://school.example/collars//', 'https://school.example/collars/set/'],
    ['https://school.example/collars/index.html', 'https://school.example/collars/set/'],
    ['https://school.example/collars/?year=2#top', 'https://school.example/collars/set/'],
  ])('is printed as a link for the course at %s', async (course, way) => {
    const { out } = await runHere(setCommand, ['swing', '--link', course]);
    expect(out.replace(/#.*\n/, '')).toBe(way);
  });
});

test.each([
  ['nothing', []],
  ['an exercise nobody knows', ['roll-lin']],
  ['marks that are no number', ['roll-line=many']],
  ['a group nobody knows', ['roll-line', '--figures', 'each=children']],
  ['a day that is none', ['roll-line', '--due', 'Friday']],
  ['a day that the month has not', ['roll-line', '--due', '2026-02-30']],
  ['a day with the month before or behind it', ['roll-line', '--due', '12/11/2026']],
  ['a number that no day is meant by', ['roll-line', '--due', 'Friday 5']],
  ['a month without a day', ['roll-line', '--due', '2026-03']],
  ['a house rule without its name', ['roll-line', '--house', '=full']],
  ['an address that is none', ['roll-line', '--link', 'school']],
  ['an address without its scheme', ['roll-line', '--link', 'localhost:4321']],
  ['checks that are no number', ['roll-line', '--checks', 'few']],
])('%s is refused in words', async (_, words) => {
  const { status, out, err } = await runHere(setCommand, words);
  expect([out, status === 0]).toEqual(['', false]);
  // Whichever exercises there are.
  expect(err.split('\n')[0]?.replace(exerciseNames().join(', '), '…')).toMatchSnapshot();
});
