import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Readable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { gradeCommand } from '../../src/cli/grade-command.ts';
import { setCommand } from '../../src/cli/set-command.ts';
import { attempt } from '../../src/cli/speak.ts';
import { whyUnreadable } from '../../src/cli/work.ts';
import { workRow } from '../../src/exchange/grade-row.ts';
import type { HandIn } from '../../src/exchange/hand-in.ts';
import { orderFrom } from '../../src/exchange/order-from.ts';
import { handInJson, writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { misread } from '../../src/grader/misreading.ts';
import { say } from '../../src/words/say.ts';
import { rightOverlap } from '../exchange/hand-ins.ts';
import { runAsPerson, runHere } from './run-command.ts';

const base = mkdtempSync(path.join(tmpdir(), 'grade-'));
const at = (...parts: readonly string[]) => path.join(base, ...parts);
const rowsIn = (out: string) =>
  out
    .trim()
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line));

const roll = loadExercise('roll-line');
const throughNeck = roll.misreadings.find(({ id }) => id === 'through-neck-point') ?? never();

/** A roll line ruled through the neck point, by somebody invented. */
const wrongRoll: HandIn = {
  ...rightOverlap,
  student: 'Bo Achterberg',
  number: '',
  set: null,
  exercise: 'roll-line',
  order: { figure: { sampled: 'women', seed: 'bo' }, style: {}, house: {} },
  unit: 'in',
  steps: misread(roll.reference, throughNeck),
  hints: {},
  checks: 0,
  begun: null,
  saved: null,
};

const line = (handIn: HandIn) => JSON.stringify(handInJson(handIn));

beforeAll(() => {
  mkdirSync(at('class', 'late'), { recursive: true });
  mkdirSync(at('class', '.hidden'));
  mkdirSync(at('empty'));
  writeFileSync(at('class', 'b.json'), writeHandIn(wrongRoll));
  writeFileSync(at('class', 'a.json'), writeHandIn(rightOverlap));
  writeFileSync(at('class', 'cut.json'), writeHandIn(rightOverlap).slice(0, 200));
  writeFileSync(at('class', 'notes.txt'), 'not for marking');
  writeFileSync(at('class', '.hidden', 'x.json'), 'not for marking');
  writeFileSync(at('class', 'late', 'more.jsonl'), `${line(rightOverlap)}\n\n{"format": 3}\n${line(wrongRoll)}\n`);
});

afterAll(() => rmSync(base, { recursive: true }));

describe('marking a folder', () => {
  test('prints one JSON line for every piece of work, sorted by name, and tells what it could not read', async () => {
    const { status, out, err } = await runAsPerson('grade', [at('class')]);
    const rows = rowsIn(out);
    expect(rows.map(({ student, exercise, marks, of }) => [student, exercise, marks, of])).toEqual([
      ['Ilse Maringa', 'overlap', 6, 6],
      ['Bo Achterberg', 'roll-line', 10, 14],
      ['Ilse Maringa', 'overlap', 6, 6],
      ['Bo Achterberg', 'roll-line', 10, 14],
    ]);
    const told = err.trim().split('\n');
    expect(told).toHaveLength(3);
    expect(told[0]).toMatch(
      /cut\.json: This is not a whole file of the course: it can be read as far as line \d+, column \d+/,
    );
    expect(told[1]).toMatch(
      /more\.jsonl:3: This is not a hand-in: “format” should be “gorgeline hand-in”, and the number 3 was found\./,
    );
    expect(told[2]).toMatch(/class: One file was passed over, .*: notes\.txt\.$/);
    expect(status).toBe(1);
  });

  test('ends after the piece in hand when it is told to stop, and says so in its status', async () => {
    let out = '';
    const status = await attempt(gradeCommand, [at('class')], {
      say: async (text) => {
        out += await Promise.resolve(text);
      },
      complain: () => Promise.resolve(),
      input: Readable.from([]) as AsyncIterable<string>,
      terminal: false,
      stopped: () => out !== '',
    });
    expect(rowsIn(out)).toHaveLength(1);
    expect(status).toBe(130);
  });

  test('gives exactly these fields', async () => {
    const { out } = await runHere(gradeCommand, [at('class', 'b.json')]);
    const [row] = rowsIn(out);
    expect(Object.keys(row)).toEqual([
      'student',
      'set',
      'exercise',
      'marks',
      'of',
      'problems',
      'checks',
      'otherFigures',
      'file',
      'number',
      'strictness',
      'shown',
      'hints',
      'checked',
      'begun',
      'saved',
      'ownOrder',
      'house',
      'inSet',
    ]);
    expect(Object.keys(row.checks[0])).toEqual([
      ...['target', 'check', 'status', 'measured', 'expected', 'off', 'tolerance', 'unit'],
      ...['marks', 'of', 'carried', 'misreading'],
    ]);
    expect(row.checks.at(-1)).toMatchObject({
      target: 'roll-line',
      check: 'line',
      status: 'beyond',
      marks: 0,
      of: 4,
      carried: false,
      misreading: 'through-neck-point',
    });
    expect(row.otherFigures).toEqual({ tried: 6, held: 6 });
    expect(row.set).toBeNull();
    expect(row.house).toEqual({ 'stand-rule': 'full' });
  });

  test('agrees with the grader to the last digit', async () => {
    const { out } = await runHere(gradeCommand, [at('class', 'b.json')]);
    const made = orderFrom(wrongRoll, roll);
    if (!made.ok) throw new Error('no order');
    const grade = gradeDraft(roll, made.order, wrongRoll.steps, wrongRoll.strictness);
    const file = at('class', 'b.json');
    expect(rowsIn(out)).toEqual([
      JSON.parse(
        JSON.stringify(
          workRow(file, { ok: true, handIn: wrongRoll, exercise: roll, order: made.order, grade, remarks: [] }, null),
        ),
      ),
    ]);
  });

  test('by a set counts its marks and tells its remarks, in the table too', async () => {
    const [set, notSet] = [at('roll.set.json'), at('class', 'b.json')];
    const made = await runHere(setCommand, ['roll-line=50', '--due', '2026-03-06T17:00Z']);
    writeFileSync(set, made.out);
    const { out } = await runHere(gradeCommand, ['--set', set, at('class', 'b.json')]);
    const [row] = rowsIn(out);
    expect(row.inSet).toMatchObject({
      of: 50,
      marks: (row.marks / row.of) * 50,
      remarks: ['other-set', 'other-figure'],
    });
    const table = await runHere(gradeCommand, ['--set', set, at('class', 'b.json')], '', true);
    expect(table.out).toMatch(
      / \/ 50 .*\n {2}handed in for another set; drawn for another figure than the set gives this student\n/,
    );
    const refused = await runHere(gradeCommand, ['--set', notSet, at('class')]);
    expect(refused).toMatchObject({ status: 1, out: '' });
    expect(refused.err).toMatch(/^The set in .*b\.json cannot be used\. This is not a problem set/);
  });

  test('of nothing says so and fails nobody', async () => {
    expect(await runHere(gradeCommand, [at('empty')])).toEqual({
      status: 0,
      out: '',
      err: `${at('empty')}: Nothing to mark here: the folder holds no .json, .jsonl or .ndjson file.\n`,
    });
  });
});

describe('marking standard input', () => {
  test('takes one document', async () => {
    const { status, out } = await runAsPerson('grade', ['-'], writeHandIn(rightOverlap));
    expect([status, rowsIn(out).length]).toEqual([0, 1]);
  });

  test('takes one a line, and goes on after a broken one', async () => {
    const input = [line(rightOverlap), '{"oops', line(wrongRoll)].join('\n');
    const { status, out, err } = await runHere(gradeCommand, ['-'], input);
    expect([status, rowsIn(out).length]).toEqual([1, 2]);
    expect(err).toMatch(/^standard input:2: This is not a whole file/);
  });

  test('takes it among files', async () => {
    const { status, out } = await runHere(
      gradeCommand,
      [at('class', 'a.json'), '-', at('class', 'b.json')],
      line(wrongRoll),
    );
    expect([status, rowsIn(out).map(({ exercise }) => exercise)]).toEqual([0, ['overlap', 'roll-line', 'roll-line']]);
  });

  test('stops quietly when nobody reads on', async () => {
    const file = path.resolve(import.meta.dirname, '../../src/cli/grade.ts');
    const child = spawn(process.execPath, [file, '-']);
    let err = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    child.stdin.on('error', () => undefined);
    child.stdout.once('data', () => child.stdout.destroy());
    const closed = new Promise((resolve) => child.on('close', resolve));
    for (let i = 0; i < 400; i += 1) child.stdin.write(`${line(rightOverlap)}\n`);
    child.stdin.end();
    expect([await closed, err]).toEqual([0, '']);
  });
});

describe('a path that cannot be read', () => {
  test('is told in one line, and the rest go on', async () => {
    const { status, out, err } = await runHere(gradeCommand, [at('nowhere.json'), at('class', 'a.json')]);
    expect([status, rowsIn(out).length]).toEqual([1, 1]);
    expect(err).toBe(`${at('nowhere.json')}: There is no such file or folder.\n`);
  });

  test.each([
    ['EACCES', 'This may not be read: its permissions forbid it.'],
    ['EISDIR', 'This is a folder, and a file is wanted.'],
    ['EIO', 'This cannot be read (EIO).'],
  ])('because of %s is told in words', (code, said) => {
    expect(say(whyUnreadable(Object.assign(new Error('no'), { code })), { language: 'en', unit: 'cm' })).toBe(said);
  });

  test.each([
    [
      'an exercise there is none of',
      { exercise: 'roll-lin' },
      /No exercise is called “roll-lin”\. Did you mean “roll-line”\?/,
    ],
    [
      'an exercise that is a path',
      { exercise: 'constructor' },
      /This copy of the course has no exercise “constructor”/,
    ],
    ['targets of another exercise', { shown: ['notch'] }, /shown\[0\]: No target of this exercise is called “notch”/],
    ['a figure of a child', { order: { figure: { measures: { 'neck-base': 200 } } } }, /order\.style: This is missing/],
  ])('holds %s', async (_, change, said) => {
    const { status, out, err } = await runHere(
      gradeCommand,
      ['-'],
      JSON.stringify({ ...handInJson(rightOverlap), ...change }),
    );
    expect([status, out]).toEqual([1, '']);
    expect(err).toMatch(said);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});

describe('the command line', () => {
  test('may choose another strictness than the student had', async () => {
    const slightlyOff = {
      ...rightOverlap,
      steps: rightOverlap.steps.map((step) => ({ ...step, distance: 'overlap + 5 mm' })),
    } as HandIn;
    const marks = async (...words: readonly string[]) => {
      const [row] = rowsIn((await runHere(gradeCommand, [...words, '-'], line(slightlyOff))).out);
      return [row.marks, row.checks[0].tolerance];
    };
    expect(await marks()).toEqual([4, 3]);
    expect(await marks('--strictness', 'learner')).toEqual([6, 6]);
    expect(await marks('--strictness', 'sample-room')).toEqual([2, 1.5]);
  });

  test('is explained on request', async () => {
    const { status, out, err } = await runHere(gradeCommand, ['--help']);
    expect([status, err]).toEqual([0, '']);
    expect(out).toContain('npm run --silent grade -- [options] PATH...');
  });

  test.each([
    [[], 'Say what is to be marked: a file, a folder, or - for standard input.'],
    [['--fast', 'x'], 'There is no option “--fast”.'],
    [['--strictness'], 'The option “--strictness” needs a value after it.'],
    [['--bom', 'x'], '“--bom” goes with “--csv”: nothing else begins with a mark.'],
    [['--best', '--json', 'x'], '“--best” goes with “--csv” or “--summary”: otherwise every piece is told.'],
    [['--json=1', 'x'], 'The option “--json” takes no value.'],
    [['--cores', 'all', 'x'], '--cores is followed by a number from 1 to 999; “all” was found.'],
    [['--strictness', 'hard', 'x'], 'No strictness is called “hard”. There are: learner, workroom, sample-room.'],
  ])('called with %j is explained, with status 2', async (words, said) => {
    const { status, out, err } = await runHere(gradeCommand, words);
    expect([status, out, err.split('\n')[0]]).toEqual([2, '', said]);
    expect(err).toContain('npm run --silent grade');
  });
});

describe('at a terminal', () => {
  const unfinished = { ...wrongRoll, student: ' ', steps: wrongRoll.steps.slice(0, 3) };
  const parallel = { verb: 'cross', name: 'nowhere', one: 'waist', other: 'collarbone-level' } as const;
  const stuck = { ...rightOverlap, student: 'A name that is a good deal longer than the column', steps: [parallel] };
  const input = [rightOverlap, wrongRoll, unfinished, stuck].map(line).join('\n');

  test('the work is a table', async () => {
    const { out } = await runHere(gradeCommand, ['-'], `${input}\n{}`, true);
    expect(out).toMatchInlineSnapshot(`
      "student                    exercise             marks       right holds    how                          file
      Ilse Maringa               overlap              6 / 6       on 6 of 6      1 hint                       standard input
      Bo Achterberg              roll-line            10 / 14     on 6 of 6      other order                  standard input
        roll-line            line         not yet       31.6 mm off, 3 allowed; through-neck-point
        By the house rule on the order, the stand point lies the full stand past the neck point.
      (no name)                  roll-line            7 / 14      on 6 of 6      other order                  standard input
        stand-point          position     missing       nothing handed in
        stand-point          distance     missing       nothing handed in
        roll-line            line         missing       nothing handed in
        By the house rule on the order, the stand point lies the full stand past the neck point.
      A name that is a good dea… overlap              0 / 6       not tried      1 hint                       standard input
        Step 1: Waist and collarbone level run parallel, so they do not cross. Choose lines that lean toward each other.
        overlap-edge         parallel     missing       nothing handed in
        overlap-edge         squareness   missing       nothing handed in

      4 pieces of work marked. One could not be read.
      "
    `);
  });

  test('an order that is not the exercise’s own is told, but of work in a set, whose order counts', async () => {
    const set = at('table.set.json');
    writeFileSync(set, (await runHere(setCommand, ['roll-line', '--figures', 'each=women'])).out);
    const alone = await runHere(gradeCommand, ['-'], line(wrongRoll), true);
    const inSet = await runHere(gradeCommand, ['--set', set, '-'], line(wrongRoll), true);
    expect(alone.out).toContain('other order');
    expect(inSet.out).toMatch(/^Bo Achterberg/m);
    expect(inSet.out).not.toContain('other order');
  });

  test('a check whose step failed says which step could not be drawn', async () => {
    const lost = { ...wrongRoll, steps: wrongRoll.steps.filter(({ name }) => name !== 'overlap-edge') };
    const { out } = await runHere(gradeCommand, ['-'], line(lost), true);
    expect(out).toMatch(/break-point +level +missing +step 2 could not be drawn/);
    expect(out).toMatch(/overlap-edge +parallel +missing +nothing handed in/);
  });

  test('JSON may be asked for', async () => {
    const { out } = await runHere(gradeCommand, ['--json', '-'], input, true);
    expect(rowsIn(out)).toHaveLength(4);
  });
});

function never(): never {
  throw new Error('not there');
}

test('the report on a class asks about drafts that are alike', async () => {
  const steps: HandIn['steps'] = [
    { verb: 'pencil', name: 'low', at: [-24.7, 37.3], answers: 'break-point' },
    { verb: 'pencil', name: 'high', at: [41.2, 391.6], answers: 'stand-point' },
  ];
  const draft = (student: string): string =>
    line({ ...wrongRoll, student, order: { ...wrongRoll.order, figure: { sampled: 'women', seed: student } }, steps });
  writeFileSync(
    at('alike.ndjson'),
    `${draft('Ana')}\n${draft('Bo\u202e')}\n${line({ ...wrongRoll, student: 'Cem' })}\n`,
  );
  const { out } = await runHere(gradeCommand, ['--summary', at('alike.ndjson')]);
  expect(out).not.toContain('\u202e');
  expect(JSON.parse(out).alike).toEqual([
    {
      exercise: 'roll-line',
      numbers: 4,
      students: [
        { key: 'ana', who: { student: 'Ana', number: '' } },
        { key: 'bo\u202e', who: { student: 'Bo\u202e', number: '' } },
      ],
    },
  ]);
});

test('the gradebook begins with a mark of UTF-8 where it is asked for, and the best of several counts where that is', async () => {
  const worse = { ...rightOverlap, steps: [], saved: '2026-12-01T09:00:00.000Z' };
  const input = `${line(rightOverlap)}\n${line(worse)}\n`;
  const csv = async (...words: readonly string[]) => (await runHere(gradeCommand, ['--csv', ...words, '-'], input)).out;
  const [last, best] = [await csv(), await csv('--best')];
  expect(await csv('--bom')).toBe(`\uFEFF${last}`);
  expect([last.split('\r\n')[1], best.split('\r\n')[1]]).toEqual(['Ilse Maringa,17,0,0,6,', 'Ilse Maringa,17,6,6,6,']);
  const report = async (...words: readonly string[]) =>
    JSON.parse((await runHere(gradeCommand, ['--summary', ...words, '-'], input)).out).exercises[0].facility;
  expect([await report(), await report('--best')]).toEqual([0, 1]);
});
