import { describe, expect, test } from 'vitest';
import { notAmong, readClassList } from '../../../src/exchange/class/class-list.ts';
import { type Entry, gradebookOf } from '../../../src/exchange/class/gradebook.ts';
import { gradebookCsv } from '../../../src/exchange/class/gradebook-csv.ts';
import { weekTwo } from '../sets.ts';

const who = (student: string, number = '') => ({ student, number });
const entry = (student: string, number = ''): Entry => ({
  ...{ student, number, exercise: 'roll-line', marks: 5, of: 20, saved: null, remarks: [], figureOf: null },
});

describe('a class list', () => {
  test('is read as it is written or pasted: a name, a number behind it or before it, or one of the two', () => {
    const text =
      'Ada Brandt, 101\n  Bela Castel 102 \nCastel, Cem; B-7\n\n104 Dai Eklund\nEfe van der Berg\n106\nAda  brandt,101';
    expect(readClassList(text)).toEqual([
      who('Ada  brandt', '101'),
      who('Bela Castel', '102'),
      who('Castel, Cem', 'B-7'),
      who('Dai Eklund', '104'),
      who('Efe van der Berg'),
      who('', '106'),
    ]);
    expect(readClassList(' \n\n')).toEqual([]);
  });

  test('knows its students by the number where both have one, and by the name where one of the two has none', () => {
    const list = [who('Ada', '1'), who('Bo'), who('Cem', '3'), who('Dai', '4'), who('', '5')];
    const came = [who('ada b.', '1'), who('BO', '2'), who('Cem'), who('Dai', '14'), who('')];
    expect(notAmong(list, came)).toEqual([who('Dai', '4'), who('', '5')]);
    expect(notAmong(came, list)).toEqual([who('Dai', '14')]);
  });
});

describe('a gradebook with a class list', () => {
  const book = gradebookOf([entry('Bo', '7'), entry('Zoe', '9')], weekTwo, { list: [who('Ada', '3'), who('Bo', '7')] });

  test('has a line for whoever handed in nothing, and tells who is not on the list', () => {
    expect(book.lines.map(({ student, marks, listed }) => [student, marks, listed])).toEqual([
      ['Ada', 0, 'absent'],
      ['Bo', 5, null],
      ['Zoe', 5, 'unlisted'],
    ]);
    const csv = gradebookCsv(book, { language: 'en', unit: 'cm' }).split('\r\n');
    expect(csv.slice(1, 4)).toEqual([
      'Ada,3,,,,0,35,nothing handed in',
      'Bo,7,,5,,5,35,',
      'Zoe,9,,5,,5,35,not on the class list',
    ]);
  });

  test('is as it was where there is no list', () => {
    expect(gradebookOf([entry('Bo', '7')], weekTwo).lines.map(({ listed }) => listed)).toEqual([null]);
  });
});
