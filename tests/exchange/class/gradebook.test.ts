import papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { type Entry, gradebookOf } from '../../../src/exchange/class/gradebook.ts';
import { gradebookCsv } from '../../../src/exchange/class/gradebook-csv.ts';
import { remarksTold } from '../../../src/exchange/class/remarks-told.ts';
import { say } from '../../../src/words/say.ts';
import { weekTwo } from '../sets.ts';

const reader = { language: 'en', unit: 'cm' } as const;
const entry = (student: string, exercise: string, marks: number, more: Partial<Entry> = {}): Entry => ({
  student,
  number: '',
  exercise,
  marks,
  of: 10,
  saved: null,
  remarks: [],
  figureOf: null,
  ...more,
});

describe('a gradebook', () => {
  test('has a line a student, a column an exercise of the set, and their sum', () => {
    const book = gradebookOf(
      [entry('Tam', 'roll-line', 12.5), entry('Ilse', 'roll-line', 20), entry('Tam', 'overlap-button', 4)],
      weekTwo,
    );
    expect(book).toMatchObject({ exercises: ['overlap-button', 'roll-line', 'notch-level'], of: 35, repeated: 0 });
    expect(book.lines.map(({ student, marks }) => [student, marks])).toEqual([
      ['Ilse', 20],
      ['Tam', 16.5],
    ]);
  });

  test('counts the last of what was handed in twice, and knows a student however the name is typed', () => {
    const [early, late] = ['2026-03-01T09:00:00Z', '2026-03-02T09:00:00Z'];
    const book = gradebookOf(
      [entry('tam  okoro', 'swing', 9, { saved: late }), entry('Tam Okoro', 'swing', 3, { saved: early })],
      null,
    );
    expect(book).toMatchObject({ repeated: 1, of: 10, lines: [{ marks: 9 }] });
  });

  test('counts the best where the teacher says so, and the last of several that earned as much', () => {
    const days = ['2026-03-01T09:00:00Z', '2026-03-02T09:00:00Z', '2026-03-03T09:00:00Z'];
    const marks = [0.1 + 0.2, 0.3, 0.2];
    const entries = days.map((saved, at) => entry('Tam', 'swing', marks[at] ?? 0, { saved }));
    const counted = (counts: 'best' | 'last') =>
      gradebookOf(entries, null, { counts }).lines[0]?.entries.get('swing')?.saved;
    // A last digit that adding up left behind makes no draft better than another.
    expect([counted('best'), counted('last')]).toEqual([days[1], days[2]]);
    expect(gradebookOf(entries, null, { counts: 'best' })).toMatchObject({ repeated: 2, lines: [{ marks: 0.3 }] });
  });

  test('knows who has more time: late is only who hands in after it, and the CSV says until when', () => {
    const late = { remarks: ['late', 'hints-taken'] as const, saved: '2026-03-09T10:00:00Z' };
    const entries = [entry('Tam', 'swing', 1, late), entry('Bo', 'swing', 1, late), entry('Ana', 'swing', 1, late)];
    const until = new Map([
      ['tam', '2026-03-09T10:00:00.000Z'],
      ['bo', '2026-03-09T09:59:59.000Z'],
      ['kofi', '2026-03-20T09:00:00.000Z'],
    ]);
    const book = gradebookOf(entries, weekTwo, { until, list: [{ student: 'Kofi', number: '' }] });
    const told = book.lines.map(({ student, entries: own, until: to }) => [
      student,
      own.get('swing')?.remarks,
      to?.slice(0, 10) ?? null,
    ]);
    expect(told).toEqual([
      ['Ana', ['late', 'hints-taken'], null],
      ['Bo', ['late', 'hints-taken'], '2026-03-09'],
      ['Kofi', undefined, '2026-03-20'],
      ['Tam', ['hints-taken'], '2026-03-09'],
    ]);
    const csv = papa.parse<string[]>(gradebookCsv(book, reader), { skipEmptyLines: true }).data;
    const remarks = new Map(csv.map((row) => [row[0], row.at(-1)]));
    expect(remarks.get('Tam')).toMatch(
      /has time until Monday,? 9 March 2026 .*; swing: hints taken where there are none$/,
    );
    expect(remarks.get('Kofi')).toMatch(/; has time until Friday,? 20 March 2026/);
    expect(remarks.get('Ana')).not.toContain('has time');
  });

  test('puts what is not of the set behind it, and knows that nobody was asked for it', () => {
    const strange = [entry('Tam', 'swing', 0, { of: 0, remarks: ['not-in-set'] })];
    const { exercises, others } = gradebookOf(strange, weekTwo);
    expect([exercises.at(-1), others]).toEqual(['swing', ['swing']]);
    // Without a set there is nothing that it is not of.
    expect(gradebookOf(strange, null).others).toEqual([]);
  });
});

describe('what could not be read, in a gradebook', () => {
  const who = (student: string, number = '') => ({ student, number });
  const book = gradebookOf(
    [entry('Ilse Maringa', 'roll-line', 20), entry('Bo', 'roll-line', 5), entry('Bo', 'roll-line', 5, { number: '7' })],
    weekTwo,
    {
      unread: [
        { file: 'x.json', who: who('ilse maringa'), exercise: 'notch-level', part: null },
        { file: 'mail/Ilse-Maringa.week-2.hand-in (1).ndjson', who: null, exercise: null, part: null },
        { file: 'x.json', who: who('=Tam', '3'), exercise: null, part: null },
        // Nobody's: two students have this name, and a picture may be of anything.
        { file: 'bo.week-2.hand-in.ndjson', who: null, exercise: null, part: null },
        { file: 'ilse-maringa.jpg', who: null, exercise: null, part: null },
      ],
    },
  );

  test('stands in the line of whom its beginning or its file names, also where nothing else does', () => {
    expect(book.lines.map(({ student, number, marks, unread }) => [student, number, marks, unread.length])).toEqual([
      ['=Tam', '3', 0, 1],
      ['Bo', '7', 5, 0],
      ['Bo', '', 5, 0],
      ['Ilse Maringa', '', 20, 2],
    ]);
  });

  test('is said in the CSV', () => {
    const rows = papa.parse<string[]>(gradebookCsv(book, reader), { skipEmptyLines: true }).data;
    expect(rows.map((row) => row.at(-1))).toEqual([
      'remarks',
      'a piece could not be read',
      '',
      '',
      'notch-level: could not be read; a piece could not be read',
    ]);
  });
});

describe('the gradebook as CSV', () => {
  const book = gradebookOf(
    [
      entry("=cmd|' /C calc'!A0", 'swing', 10 / 3),
      entry('Ilse, "the quick"', 'swing', 5, { remarks: ['late', 'checks-over'] }),
      entry('@sum', 'overlap', 1),
      entry('two\r\nlines', 'overlap', 1),
      // A line end that no pattern's dot takes in, and the wide letters of another keyboard.
      entry('=1+1\u2028', 'overlap', 1),
      entry('＋2+1', 'overlap', 1),
    ],
    null,
  );
  const csv = gradebookCsv(book, reader);

  test('is read back cell for cell, with formulas defused', () => {
    expect(papa.parse(csv, { skipEmptyLines: true }).data).toEqual([
      ['student', 'number', 'overlap', 'swing', 'marks', 'of', 'remarks'],
      ["'@sum", '', '1', '', '1', '20', ''],
      ["'＋2+1", '', '1', '', '1', '20', ''],
      ["'=1+1\u2028", '', '1', '', '1', '20', ''],
      ["'=cmd|' /C calc'!A0", '', '', String(10 / 3), String(10 / 3), '20', ''],
      ['Ilse, "the quick"', '', '', '5', '5', '20', 'swing: late, checked oftener than the set allows'],
      ['two\r\nlines', '', '1', '', '1', '20', ''],
    ]);
  });

  test('ends every line with CR LF and quotes as RFC 4180 says', () => {
    expect(
      csv
        .replaceAll(/"[^"]*"/g, '')
        .split('\r\n')
        .every((line) => !line.includes('\n')),
    ).toBe(true);
    expect(csv).toContain('"Ilse, ""the quick"""');
    expect(csv.endsWith('\r\n')).toBe(true);
  });
});

test('the CSV says what the grader gave where a teacher changed a mark, and has no such column otherwise', () => {
  const changed = gradebookOf([entry('Ilse', 'swing', 7, { grader: 10 / 3 }), entry('Tam', 'overlap', 1)], null);
  expect(papa.parse(gradebookCsv(changed, reader), { skipEmptyLines: true }).data).toEqual([
    ['student', 'number', 'overlap', 'swing', 'marks', 'of', 'remarks', 'changed by hand'],
    ['Ilse', '', '', '7', '7', '20', '', `swing: the grader gave ${10 / 3}`],
    ['Tam', '', '1', '', '1', '20', '', ''],
  ]);
});

describe('of a figure that is not the student’s own, a teacher is told', () => {
  const told = (handedIn: Partial<Entry>): string => {
    const copied = entry('Tam', 'swing', 7, { number: '12', remarks: ['other-figure'], ...handedIn });
    const { lines } = gradebookOf(
      [entry('Ilse Maringa', 'swing', 5), entry('', 'swing', 5, { number: '7' }), copied],
      null,
    );
    return remarksTold(copied, lines)
      .map((remark) => say(remark, reader))
      .join();
  };

  test.each([
    ['ilse maringa', 'drawn for the figure that the set gives Ilse Maringa, and not for this student’s own'],
    ['#7', 'drawn for the figure that the set gives number 7, and not for this student’s own'],
    ['tam', 'drawn for the figure that goes with this name without a number'],
    ['bo', 'drawn for another figure than the set gives this student'],
    [null, 'drawn for another figure than the set gives this student'],
  ])('of %j: %s', (figureOf, sentence) => {
    expect(told({ figureOf })).toBe(sentence);
  });

  test('in the CSV too', () => {
    const book = gradebookOf(
      [entry('Ilse', 'swing', 5), entry('Tam', 'swing', 5, { remarks: ['late', 'other-figure'], figureOf: 'ilse' })],
      null,
    );
    expect(gradebookCsv(book, reader)).toContain('"swing: late, drawn for the figure that the set gives Ilse, and not');
  });
});
