import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { expect, test } from 'vitest';
import type { CheckRow, WorkRow } from '../../src/exchange/grade-row.ts';
import { classOf, type Made } from '../generated/class.ts';
import { type Kind, kinds } from '../generated/kinds.ts';

/** How many pieces are handed in. FUZZ=100000 tries so many. */
const COUNT = Number(process.env['FUZZ'] ?? 2000);
const SEED = process.env['PROPERTY_SEED'] ?? 20261125;

const grade = path.resolve(import.meta.dirname, '../../src/cli/grade.ts');

/** How often each kind was counted. */
type Tally = Partial<Record<Kind, number>>;

/** What was handed in: without the texts, so that any number takes little room. */
interface HandedIn {
  readonly pieces: Omit<Made, 'text'>[];
  readonly tally: Tally;
}

test(`${COUNT} pieces of work of every kind: each comes out once, in its turn, as what it is`, async () => {
  const child = spawn(process.execPath, [grade, '-'], { stdio: ['pipe', 'pipe', 'pipe'] });
  const closed = once(child, 'close');
  const handedIn: HandedIn = { pieces: [], tally: {} };
  const [, rows, refusals] = await Promise.all([
    handIn(child, handedIn),
    rowsOf(child.stdout, handedIn),
    refusalsOf(child.stderr, handedIn),
  ]);
  expect(await closed).toEqual([1, null]);
  expect({ ...rows, ...refusals }).toEqual(handedIn.tally);
  // Every kind was there, or nothing was shown.
  expect(Object.keys(handedIn.tally).sort()).toEqual(Object.keys(kinds).sort());
}, 3_600_000);

async function handIn({ stdin }: ChildProcess, { pieces, tally }: HandedIn): Promise<void> {
  for (const { text, ...made } of classOf(COUNT, SEED)) {
    count(tally, made.kind);
    pieces.push(made);
    if (stdin?.write(`${text}\n`) === false) await once(stdin, 'drain');
  }
  stdin?.end();
}

/** The rows, each held against the next piece that was to be marked. */
async function rowsOf(out: Readable, { pieces }: HandedIn): Promise<Tally> {
  const tally: Tally = {};
  const faults: string[] = [];
  let at = -1;
  for await (const line of createInterface({ input: out })) {
    do at += 1;
    while (at < pieces.length - 1 && comesOut(pieces, at) === 'refusal');
    const made = pieces[at];
    const row: WorkRow = JSON.parse(line);
    if (made === undefined || row.number !== String(made.first) || !isAsMade(row, made))
      faults.push(`line ${at + 1}, ${made?.kind} ${made?.misreading ?? ''}: ${row.exercise} of ${row.student}`);
    else count(tally, made.kind);
  }
  expect(faults.slice(0, 10)).toEqual([]);
  return tally;
}

/**
 * The refusals, each a sentence that says on which line the piece stood. Of pieces of one exercise that there is none of only the first
 * has one, and what is said in the end counts the others.
 */
async function refusalsOf(err: Readable, { pieces }: HandedIn): Promise<Tally> {
  const tally: Tally = {};
  for await (const line of createInterface({ input: err })) {
    const again = /^“sleeve”, .* is named by (one piece|[\d,]+ pieces) more.+\.$/.exec(line)?.[1];
    if (again !== undefined) {
      count(tally, 'unknown', again === 'one piece' ? 1 : Number(again.replace(/\D/g, '')));
      continue;
    }
    const number = Number(/^standard input:(\d+): .+\.$/.exec(line)?.[1]);
    const made = pieces[number - 1];
    expect(made === undefined ? line : kinds[made.kind].comesOut).toBe('refusal');
    if (made) count(tally, made.kind);
  }
  return tally;
}

function comesOut(pieces: HandedIn['pieces'], at: number): 'row' | 'refusal' {
  return kinds[(pieces[at] as Omit<Made, 'text'>).kind].comesOut;
}

function count(tally: Tally, kind: Kind, pieces = 1): void {
  tally[kind] = (tally[kind] ?? 0) + pieces;
}

const some = ({ checks }: WorkRow, is: (check: CheckRow) => boolean): boolean => checks.some(is);

/** Whether a row says of a piece what it was made to be. */
function isAsMade(row: WorkRow, { kind, misreading }: Omit<Made, 'text'>): boolean {
  const { marks, of, otherFigures } = row;
  switch (kind) {
    case 'right':
      return marks === of && otherFigures.held === otherFigures.tried && otherFigures.tried > 0;
    case 'misread':
      return marks < of && some(row, (check) => check.misreading === misreading);
    case 'carried':
      return marks < of && some(row, ({ carried }) => carried);
    case 'typed':
      return marks === of && otherFigures.held < otherFigures.tried;
    case 'unanswered':
      return marks < of && some(row, ({ status, off }) => status === 'missing' && off === null);
    default:
      return kind === 'repeated';
  }
}
