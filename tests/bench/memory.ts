import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import type { Readable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { classOf } from '../generated/class.ts';
import { gradeWords } from './measure/grade-command.ts';

/** What the grade command needs for a class of a thousand and for one of a hundred thousand (ten thousand without --long): whether it grows with the stream. */
const COUNTS = process.argv.includes('--long') ? [1000, 100_000] : [1000, 10_000];

const teller = path.resolve(import.meta.dirname, 'measure/tell-memory.ts');

interface Told {
  /** The most it ever held, kilobytes. */
  readonly peak: number;
  /** What it still holds on its heap after everything was marked and collected, bytes. */
  readonly heap: number;
}

async function memoryFor(count: number, cores: number): Promise<Told> {
  const words = ['--expose-gc', '--import', teller, ...gradeWords(), '--cores', String(cores), '-'];
  const child = spawn(process.execPath, words, { stdio: ['pipe', 'ignore', 'ignore', 'pipe'] });
  const told = text(child.stdio[3] as Readable);
  for (const piece of classOf(count, 'memory'))
    if (!child.stdin?.write(`${piece.text}\n`) && child.stdin) await once(child.stdin, 'drain');
  child.stdin?.end();
  return JSON.parse(await told);
}

const rows: Readonly<Record<string, number>>[] = [];
for (const cores of [1, 2]) {
  for (const count of COUNTS) {
    const { peak, heap } = await memoryFor(count, cores);
    rows.push({
      cores,
      'hand-ins': count,
      'peak, MB': Math.round(peak / 1024),
      'heap at the end, MB': Math.round(heap / 2 ** 20),
    });
  }
}
console.table(rows);
