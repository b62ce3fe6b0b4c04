import { describe, expect, test } from 'vitest';
import { forms } from '../../src/drafting/verbs.ts';
import type { Filling, ToolId } from '../../src/table/model/bench.ts';
import { optionsFor } from '../../src/table/model/options.ts';
import { sheetOf } from '../../src/table/model/reduce.ts';
import { fieldsOf, toolFor, tools } from '../../src/table/model/tools.ts';
import { readTyped } from '../../src/table/model/typed.ts';
import { say } from '../../src/words/say.ts';
import { benchAfter, edge, level, room, step } from './room.ts';

const speak = (words: Parameters<typeof say>[0]) => say(words, { language: 'en', unit: 'cm' });

/** A sheet with a crossing, marks and a curve on it. */
const begun = benchAfter([
  ...edge,
  ...level,
  ...step('cross', { one: 'line-1', other: 'line-2' }),
  ...step('pencil', { at: [40, 120] }),
  ...step('curve', { through: ['mark-1', 'mark-2', 'neck-point'] }),
]);

/** What is typed into the blanks of each way of using a tool; a list is typed entry by entry. */
const typed: Readonly<Record<Exclude<ToolId, 'measure'>, Readonly<Record<string, string | readonly string[]>>>> = {
  pencil: { at: '4 cm, 12 cm' },
  along: { on: 'shoulder line', from: 'neck point', distance: 'stand', toward: 'left' },
  cross: { one: 'line 1', other: 'collarbone level' },
  compass: { about: 'neck point', radius: '12 cm', on: 'centre front', near: 'down' },
  foot: { from: 'neck point', on: 'waist' },
  part: { from: 'neck point', to: 'shoulder tip', fraction: '1/3' },
  rule: { from: 'mark 1', to: 'neck point' },
  square: { to: 'shoulder line', through: 'neck point' },
  parallel: { to: 'waist', distance: 'stand + 6 mm', side: 'up' },
  'parallel-through': { to: 'shoulder line', through: 'mark 2' },
  slant: { to: 'waist', angle: '30 deg', turn: 'anticlockwise', through: 'mark 1' },
  curve: { through: ['mark 1', 'mark 2', 'shoulder tip'], leave: 'along line 1', arrive: 'square to shoulder line' },
  offset: { of: 'curve 1', distance: '1 cm', side: 'left' },
  seam: { run: ['curve 1', 'shoulder line, from neck point to shoulder tip'] },
  fold: { what: 'curve 1', over: 'line 1' },
  swing: { what: 'shoulder tip', about: 'neck point', by: '1 cm', at: '7 cm', turn: 'clockwise' },
  'swing-angle': { what: 'mark 2', about: 'mark 1', angle: '10 deg', turn: 'clockwise' },
  tape: { along: 'curve 1' },
  'tape-between': { from: 'neck point', to: 'shoulder tip' },
  'tape-set': { length: 'stand * 2' },
  protractor: { from: 'line 1', to: 'shoulder line' },
  'protractor-along': { along: 'curve 1' },
};

/** Fills the blanks as a learner types, each entry taken from what the list offers. */
function filled(use: ToolId, words: Readonly<Record<string, string | readonly string[]>>): Record<string, Filling> {
  const sheet = sheetOf(begun, room);
  const blanks: Record<string, Filling> = {};
  for (const { field, blank } of fieldsOf(use)) {
    const entry = words[field];
    for (const text of entry === undefined ? [] : [entry].flat()) {
      const options = optionsFor(blank, sheet, () => true, blanks[field]);
      const read = readTyped(text, blank, sheet, options, speak);
      if (!read.ok) throw new Error(`${use}.${field}: ${speak(read.message)}`);
      blanks[field] = read.value;
    }
  }
  return blanks;
}

describe('every verb of the language', () => {
  test('lies on the table as a tool', () => {
    expect(new Set(tools.flatMap(({ uses }) => uses))).toEqual(new Set([...forms.map(({ id }) => id), 'measure']));
    for (const { id } of forms) expect(toolFor(id).uses).toContain(id);
  });

  test.each(Object.entries(typed))('%s is filled from its lists and carried out', (use, words) => {
    const bench = benchAfter(step(use as ToolId, filled(use as ToolId, words)), begun);
    expect(bench.steps).toHaveLength(begun.steps.length + 1);
    expect(sheetOf(bench, room).problems.map((problem) => speak(problem.message))).toEqual([]);
  });
});
