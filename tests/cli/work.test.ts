import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { gradeCommand } from '../../src/cli/grade-command.ts';
import type { WorkRow } from '../../src/exchange/grade-row.ts';
import type { HandIn } from '../../src/exchange/hand-in.ts';
import type { ProblemSet } from '../../src/exchange/set.ts';
import { setOrder } from '../../src/exchange/set-order.ts';
import { handInJson, writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { setJson, setMark, writeSet } from '../../src/exchange/write-set.ts';
import { rightOverlap } from '../exchange/hand-ins.ts';
import { weekTwo } from '../exchange/sets.ts';
import { runHere } from './run-command.ts';

const base = mkdtempSync(path.join(tmpdir(), 'work-'));
const at = (...parts: readonly string[]) => path.join(base, ...parts);
afterAll(() => rmSync(base, { recursive: true }));

const overlap = loadExercise('overlap');
const overlapSet: ProblemSet = {
  ...weekTwo,
  title: 'Overlap',
  exercises: [{ exercise: 'overlap', marks: 10 }],
  house: {},
};

function folder(name: string): (...parts: readonly string[]) => string {
  mkdirSync(at(name));
  return (...parts) => at(name, ...parts);
}

describe('a folder', () => {
  test('that links back to itself is marked once', async () => {
    const inside = folder('loop');
    writeFileSync(inside('a.json'), writeHandIn(rightOverlap));
    symlinkSync('.', inside('again'));
    symlinkSync('..', inside('up.json'));
    const { status, out, err } = await runHere(gradeCommand, [inside()]);
    expect([status, out.trim().split('\n').length]).toEqual([0, 1]);
    expect(err).toBe(
      `${inside()}: 2 files were passed over, for work is in regular .json, .jsonl and .ndjson files: again and up.json.\n`,
    );
  });

  test('is followed where a link leads to a file, and told where it leads nowhere', async () => {
    const inside = folder('linked');
    symlinkSync(at('loop', 'a.json'), inside('b.json'));
    symlinkSync('gone.json', inside('c.json'));
    const { status, out, err } = await runHere(gradeCommand, [inside()]);
    expect([status, out.trim().split('\n').length]).toEqual([1, 1]);
    expect(err).toBe(`${inside('c.json')}: There is no such file or folder.\n`);
  });

  test('of many other files is told in one line', async () => {
    const inside = folder('pictures');
    for (let i = 10; i < 22; i += 1) writeFileSync(inside(`p${i}.png`), '');
    const { status, err } = await runHere(gradeCommand, [inside()]);
    expect(status).toBe(0);
    expect(err.trim().split('\n').at(-1)).toMatch(
      /: 12 files were passed over, .*: p10\.png, .* and p19\.png, and 2 more\.$/,
    );
  });
});

describe('what cannot be seen in a hand-in', () => {
  const turned = { ...handInJson(rightOverlap), student: 'Ilse \u202eagniraM' };

  test('is spelled out at a terminal', async () => {
    const { out } = await runHere(gradeCommand, ['-'], JSON.stringify(turned), true);
    expect(out).toContain('Ilse \\u202eagniraM');
    expect(out).not.toContain('\u202e');
  });

  test('is escaped in JSON, and the same when it is read', async () => {
    const { out } = await runHere(gradeCommand, ['-'], JSON.stringify(turned));
    expect(out).not.toContain('\u202e');
    expect(JSON.parse(out).student).toBe(turned.student);
  });

  test('is spelled out in a refusal, and refused in an expression', async () => {
    const [step] = rightOverlap.steps;
    const steps = [{ ...step, distance: 'overlap\u001b[2J', to: 'centre\u202efront' }];
    const { status, err } = await runHere(gradeCommand, ['-'], JSON.stringify({ ...turned, steps }));
    expect(status).toBe(1);
    expect(err).toMatch(/^[ -~“”‘’…–]+\n$/);
    expect(err).toContain('centre\\u202efront');
  });

  test('is spelled out in the name of a file', async () => {
    const inside = folder('named');
    writeFileSync(inside('a\u001b.json'), '{');
    const { err } = await runHere(gradeCommand, [inside()]);
    expect(err).toContain('a\\u001b.json: This is not a whole file');
  });
});

test.each(['utf16le', 'utf-16le without a mark'])('a file saved as %s is said to be no UTF-8', async (how) => {
  const text = Buffer.from(writeHandIn(rightOverlap), 'utf16le');
  const file = at(`${how}.json`);
  writeFileSync(file, how === 'utf16le' ? Buffer.concat([Buffer.from([0xff, 0xfe]), text]) : text);
  const { status, err } = await runHere(gradeCommand, [file]);
  expect(status).toBe(1);
  expect(err).toMatch(/: This is not saved as UTF-8\. Save it again from the table/);
});

describe('a problem set among the work', () => {
  const inSet: HandIn = {
    ...rightOverlap,
    set: setMark(overlapSet),
    order: setOrder(overlapSet, overlap, rightOverlap),
  };

  /** The rows and what is said beside them, of a folder with this in it. */
  async function marked(name: string, files: Readonly<Record<string, string>>, options: readonly string[] = []) {
    const inside = folder(name);
    for (const [file, text] of Object.entries(files)) writeFileSync(inside(file), text);
    const { status, out, err } = await runHere(gradeCommand, [...options, inside()]);
    const rows = out
      .trim()
      .split('\n')
      .map((row): WorkRow => JSON.parse(row));
    return { status, marks: rows.map((row) => row.inSet?.of ?? null), err: err.replaceAll(`${inside()}/`, '') };
  }

  test('is what the work is marked by, and is no work', async () => {
    const files = { 'a.json': writeHandIn(inSet), 'week.set.json': writeSet(overlapSet), 'z.json': writeHandIn(inSet) };
    expect(await marked('with-set', files)).toEqual({
      status: 0,
      marks: [10, 10],
      err: 'week.set.json: This is the problem set “Overlap”; the work is marked by it.\n',
    });
  });

  test('that lies there twice is one', async () => {
    const files = { 'a.json': writeHandIn(inSet), 'one.json': writeSet(overlapSet), 'two.json': writeSet(overlapSet) };
    expect((await marked('with-copy', files)).marks).toEqual([10]);
  });

  test('is not guessed at where there are two', async () => {
    const other = { ...overlapSet, title: 'Another' };
    const files = { 'a.json': writeHandIn(inSet), 'one.json': writeSet(overlapSet), 'two.json': writeSet(other) };
    const { status, marks, err } = await marked('with-two', files);
    expect([status, marks]).toEqual([0, [null]]);
    expect(err).toMatch(
      /^one\.json: This is the problem set “Overlap”, and no work\. It counts for nothing here: .*--set\./,
    );
  });

  test('gives way to the one that is named', async () => {
    const named = path.join(base, 'named.json');
    writeFileSync(named, writeSet({ ...overlapSet, exercises: [{ exercise: 'overlap', marks: 4 }] }));
    const files = { 'a.json': writeHandIn(inSet), 'week.set.json': writeSet(overlapSet) };
    expect(await marked('with-named', files, ['--set', named])).toEqual({
      status: 0,
      marks: [4],
      err: 'week.set.json: This is the problem set “Overlap”; the work is marked by another.\n',
    });
  });

  test('that is damaged is told as any other file, and the work is marked by itself', async () => {
    const files = { 'a.json': writeHandIn(inSet), 'week.set.json': writeSet({ ...overlapSet, seed: '' }) };
    const { status, marks, err } = await marked('with-damaged', files);
    expect([status, marks]).toEqual([1, [null]]);
    expect(err).toMatch(/^week\.set\.json: .*seed.*\.\n$/);
  });

  test('in a stream is told, and marks nothing', async () => {
    const line = (json: unknown) => `${JSON.stringify(json)}\n`;
    const { status, err } = await runHere(gradeCommand, ['-'], line(setJson(overlapSet)) + line(handInJson(inSet)));
    expect(status).toBe(0);
    expect(err).toMatch(/^standard input:1: This is the problem set “Overlap”, and no work\./);
  });
});
