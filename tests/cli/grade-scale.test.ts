import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Readable } from 'node:stream';
import { afterAll, describe, expect, test } from 'vitest';
import { crewOf } from '../../src/cli/crew.ts';
import { loadExercise } from '../../src/cli/exercises.ts';
import { gradeCommand } from '../../src/cli/grade-command.ts';
import { inOrder } from '../../src/cli/in-order.ts';
import { attempt } from '../../src/cli/speak.ts';
import { tell } from '../../src/cli/tell.ts';
import type { Work } from '../../src/cli/work.ts';
import type { HandIn } from '../../src/exchange/hand-in.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import { misread } from '../../src/grader/misreading.ts';
import { findProgram } from '../run/debian.ts';
import { runAsPerson, runHere } from './run-command.ts';

const base = mkdtempSync(path.join(tmpdir(), 'scale-'));
afterAll(() => rmSync(base, { recursive: true }));

const grade = path.resolve(import.meta.dirname, '../../src/cli/grade.ts');
const overlap = loadExercise('overlap');
const wrong = misread(overlap.reference, overlap.misreadings[0] ?? never());

/** A student's hand-in as a line, every third one right. */
function lineOf(at: number): string {
  const handIn: HandIn = {
    student: `Student ${at}`,
    number: String(at),
    set: null,
    exercise: 'overlap',
    order: { figure: { sampled: 'anyone', seed: String(at) }, style: {}, house: {} },
    strictness: 'workroom',
    unit: 'cm',
    steps: at % 3 === 0 ? overlap.reference : wrong,
    shown: [],
    hints: {},
    checks: 0,
    begun: null,
    saved: null,
  };
  return JSON.stringify(handInJson(handIn));
}

/** A hand-in a line, every fifth one cut off. */
function linesOf(count: number): readonly string[] {
  return Array.from({ length: count }, (_, at) => (at % 5 === 0 ? lineOf(at).slice(0, -9) : lineOf(at)));
}

const lines = linesOf(600);
const file = path.join(base, 'class.ndjson');
writeFileSync(file, lines.map((line) => `${line}\n`).join(''));

describe('a long stream', () => {
  test('is marked on all cores, and every piece is told once, in the order it came', async () => {
    const { status, out, err } = await runAsPerson('grade', [file]);
    const rows = out
      .trim()
      .split('\n')
      .map((row) => JSON.parse(row));
    expect(status).toBe(1);
    expect(rows.map(({ number }) => Number(number))).toEqual(lines.flatMap((_, at) => (at % 5 === 0 ? [] : [at])));
    expect(rows.filter(({ marks, of }) => marks === of)).toHaveLength(
      rows.filter(({ number }) => number % 3 === 0).length,
    );
    expect(
      err
        .trim()
        .split('\n')
        .map((told) => Number(/ndjson:(\d+):/.exec(told)?.[1]) - 1),
    ).toEqual(lines.flatMap((_, at) => (at % 5 === 0 ? [at] : [])));
  }, 60_000);

  test('comes to the same on one core and on three', async () => {
    const one = await runAsPerson('grade', ['--cores', '1', file]);
    expect(await runAsPerson('grade', ['--cores', '3', file])).toEqual(one);
  }, 60_000);

  test('is put into a gradebook, a line a student', async () => {
    const { out } = await runAsPerson('grade', ['--csv', file]);
    const [head, ...body] = out.trimEnd().split('\r\n');
    expect(head).toBe('student,number,overlap,marks,of,remarks');
    // Whoever's work was cut off has a line that says so.
    expect(body).toHaveLength(600);
    expect(body).toContain('Student 3,3,6,6,6,');
    expect(body.filter((row) => row.endsWith(',,0,6,overlap: could not be read'))).toHaveLength(120);
  }, 60_000);

  test('has no remark on a piece that was cut off where the whole of it lies beside it, and tells of the file all the same', async () => {
    const { out, err, status } = await runHere(
      gradeCommand,
      ['--csv', '-'],
      `${lines.join('\n')}\n${lineOf(6)}\n${lineOf(15)}\n`,
    );
    const body = out.trimEnd().split('\r\n');
    expect(body).toContain('Student 15,15,6,6,6,');
    expect(body.filter((row) => row.endsWith(',,0,6,overlap: could not be read'))).toHaveLength(119);
    expect([err.trim().split('\n').length, status]).toEqual([120, 1]);
  }, 60_000);

  test.each([
    ['--csv', 'student,number,overlap,marks,of,remarks'],
    ['--summary', '{"students":'],
    ['--json', '{"student":'],
  ])('told to stop, %s prints whole lines of what was marked, and says that it is a part', async (form, begins) => {
    let heard = 0;
    const told = { out: '', err: '' };
    const status = await attempt(gradeCommand, ['--cores', '1', form, file], {
      say: (text) => {
        told.out += text;
        return Promise.resolve();
      },
      complain: (text) => {
        told.err = text;
        return Promise.resolve();
      },
      input: Readable.from([]),
      terminal: false,
      progress: (text) => {
        if (text !== '') heard += 1;
      },
      stopped: () => heard >= 40,
    });
    const { out, err } = told;
    expect(status).toBe(130);
    expect(out.startsWith(begins)).toBe(true);
    expect(out.endsWith('\n')).toBe(true);
    expect(err).toBe(
      'Stopped before the end. This is a part: 32 pieces of work marked, and 8 that could not be read.\n',
    );
    if (form === '--csv') expect(out.trimEnd().split('\r\n')).toHaveLength(41);
    if (form === '--summary') expect(JSON.parse(out).work).toBe(32);
  });

  test('comes to the same report on the class, whoever marks it', async () => {
    const { out } = await runAsPerson('grade', ['--summary', file]);
    expect(JSON.parse(out)).toMatchObject({ students: 480, work: 480, repeated: 0 });
    expect(JSON.parse(out).exercises[0].worked).toBe(480);
  }, 60_000);

  test('may be told to stop: what is printed is whole lines, and the status says so', async () => {
    const child = spawn(process.execPath, [grade, '-'], { stdio: ['pipe', 'pipe', 'pipe'] });
    let [out, err] = ['', ''];
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    let told = false;
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
      if (!told) child.kill('SIGINT');
      told = true;
    });
    child.stdin.on('error', () => undefined);
    const closed = new Promise((resolve) => child.on('close', resolve));
    // The stream stays open: only the signal ends it.
    child.stdin.write(`${lines.filter((_, at) => at % 5 !== 0).join('\n')}\n`);
    expect(await closed).toBe(130);
    expect(err).toMatch(/^Stopped before the end\. This is a part: \d+ pieces of work marked\.\n$/);
    expect(out.endsWith('\n')).toBe(true);
    for (const row of out.trim().split('\n')) expect(JSON.parse(row).exercise).toBe('overlap');
  }, 60_000);

  test.skipIf(findProgram(['parallel']) === null)(
    'may be split by a job runner and comes out the same (skipped where GNU parallel is not installed)',
    async () => {
      const input = lines.filter((_, at) => at % 5 !== 0).join('\n');
      const whole = await runAsPerson('grade', ['-'], input);
      const split = spawn('parallel', [
        '--will-cite',
        '--pipe',
        '--keep-order',
        '-N',
        '100',
        process.execPath,
        grade,
        '-',
      ]);
      let out = '';
      split.stdout.setEncoding('utf8').on('data', (text: string) => {
        out += text;
      });
      const closed = new Promise((resolve) => split.on('close', resolve));
      split.stdin.end(`${input}\n`);
      expect([await closed, whole.status]).toEqual([0, 0]);
      expect(out).toBe(whole.out);
    },
    120_000,
  );
});

describe('a crew', () => {
  const manner = { by: { set: null, strictness: null }, form: 'json' } as const;
  const piece = (at: number): Work => ({ where: `a:${at}`, file: 'a', text: lines[at] ?? '' });

  test('answers a stream that trickles as it trickles', async () => {
    let release: (() => void) | undefined;
    async function* trickle(): AsyncGenerator<Work> {
      yield piece(1);
      await new Promise<void>((resolve) => {
        release = resolve;
      });
      yield piece(2);
    }
    const crew = crewOf(manner, 2);
    const told = inOrder(trickle(), crew);
    expect((await told.next()).value).toEqual(tell(piece(1), manner));
    release?.();
    expect((await told.next()).value).toEqual(tell(piece(2), manner));
    expect((await told.next()).done).toBe(true);
    await crew.goHome();
  });

  test('holds no more than it has under way, however much there is', async () => {
    let given = 0;
    async function* endless(): AsyncGenerator<Work> {
      for (;;) {
        given += 1;
        yield await Promise.resolve(piece(1));
      }
    }
    const crew = crewOf(manner, 1);
    const told = inOrder(endless(), crew);
    for (let at = 0; at < 200; at += 1) await told.next();
    expect(given).toBeLessThan(200 + 5 * 32);
    await crew.goHome();
  });
});

function never(): never {
  throw new Error('The exercise has no misreading.');
}
