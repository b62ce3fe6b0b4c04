import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { availableParallelism } from 'node:os';
import { classOf } from '../generated/class.ts';
import { gradeWords } from './measure/grade-command.ts';
import { shareBelow, short } from './measure/rounds.ts';

/** How many hand-ins the grade command marks in a second, on one core and on two: a mixed class over all exercises, from the start of the process to its end. */
const COUNT = 10_000;
const ROUNDS = 3;

const lines = [...classOf(COUNT, 'cores')].map(({ text }) => text);

async function secondsOn(cores: number): Promise<number> {
  const begun = performance.now();
  const child = spawn(process.execPath, [...gradeWords(), '--cores', String(cores), '-'], {
    stdio: ['pipe', 'ignore', 'ignore'],
  });
  const closed = once(child, 'close');
  for (const line of lines) if (!child.stdin.write(`${line}\n`)) await once(child.stdin, 'drain');
  child.stdin.end();
  await closed;
  return (performance.now() - begun) / 1000;
}

const took: Record<number, number[]> = { 1: [], 2: [] };
for (let round = 0; round < ROUNDS; round += 1) for (const cores of [1, 2]) took[cores]?.push(await secondsOn(cores));
const [one, two] = [shareBelow(took[1] ?? [], 0.5), shareBelow(took[2] ?? [], 0.5)];
console.table([
  { cores: 1, 'hand-ins': COUNT, seconds: short(one), 'hand-ins a second': Math.round(COUNT / one), ratio: 1 },
  {
    cores: 2,
    'hand-ins': COUNT,
    seconds: short(two),
    'hand-ins a second': Math.round(COUNT / two),
    ratio: short(one / two),
  },
]);
console.log(`This machine has ${availableParallelism()} cores.`);
