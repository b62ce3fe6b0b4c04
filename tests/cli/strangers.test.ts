import { expect, test } from 'vitest';
import { gradeCommand } from '../../src/cli/grade-command.ts';
import { Strangers } from '../../src/cli/strangers.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import { rightOverlap } from '../exchange/hand-ins.ts';
import { runHere } from './run-command.ts';

const piece = (student: string, exercise: string) =>
  JSON.stringify({ ...handInJson(rightOverlap), student, exercise, shown: [], hints: {} });

test('a wrong set behind many hand-ins is said once, and of the others how many there were and where', async () => {
  const lines = [
    ...Array.from({ length: 14 }, (_, at) => piece(`Student ${at}`, 'pocket-welt')),
    piece('Ilse', 'overlap'),
    piece('Bo', 'vent'),
  ];
  const { status, out, err } = await runHere(gradeCommand, ['-'], lines.join('\n'));
  expect(status).toBe(1);
  expect(out.trim().split('\n')).toHaveLength(1);
  expect(err).toMatchInlineSnapshot(`
    "standard input:1: This copy of the course has no exercise “pocket-welt”. A teacher may have added it to another copy: open this there, or ask whoever handed it out.
    standard input:16: This copy of the course has no exercise “vent”. A teacher may have added it to another copy: open this there, or ask whoever handed it out.
    “pocket-welt”, which there is no exercise of, is named by 13 pieces more, among them standard input:2, standard input:3, standard input:4, standard input:5, standard input:6, standard input:7, standard input:8, standard input:9, standard input:10 and standard input:11.
    "
  `);
});

test('a stream that names ever other exercises is told line by line once a hundred are kept in mind', () => {
  const strangers = new Strangers();
  const hear = (exercise: string) => strangers.hear({ err: `${exercise}\n`, strange: { where: 'x', exercise } });
  for (let at = 0; at < 100; at += 1) expect(hear(`e-${at}`)).toBe(`e-${at}\n`);
  expect([hear('late'), hear('late'), hear('e-7')]).toEqual(['late\n', 'late\n', '']);
  expect(strangers.inTheEnd()).toBe('“e-7”, which there is no exercise of, is named by one piece more: x.\n');
});
