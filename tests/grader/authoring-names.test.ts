import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { blockOf } from '../../src/garment/block.ts';
import { figureMeasures } from '../../src/garment/figure.ts';
import { houseRules } from '../../src/garment/house-rules.ts';
import { people } from '../../src/garment/people.ts';
import { styleMeasures } from '../../src/garment/style-measures.ts';
import { tolerances } from '../../src/grader/tolerance.ts';
import { type Key, written } from '../../src/words/message.ts';
import { say } from '../../src/words/say.ts';

const docs = new URL('../../docs/', import.meta.url);
const names = readFileSync(new URL('names.md', docs), 'utf8');

/** The rows of the table under a heading of the page, cell by cell, without the marks of code. */
function rows(heading: string): readonly (readonly string[])[] {
  const [, under = ''] = names.split(`\n## ${heading}\n`);
  const [section = ''] = under.split('\n## ');
  return [...section.matchAll(/^\| `.*$/gm)].map(([row]) =>
    row
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim().replaceAll('`', '')),
  );
}

/** House rules are said in inches, as the drafts that they come from say them. */
const spoken = (key: string) => say({ key: key as Key, values: {} }, { language: 'en', unit: 'in' });

function lengths(mms: readonly number[]): string {
  const inUnit = (unit: 'cm' | 'in') =>
    mms.map((mm) => say(written('{length}', { length: { mm } }), { language: 'en', unit })).join(' to ');
  return `${inUnit('in')} (${inUnit('cm')})`;
}

describe('the page of names for authors has', () => {
  test('the objects of the block, each of its kind', () => {
    const block = blockOf(people[0]?.figure ?? never());
    if (!block.ok) never();
    expect(rows('On the table').map(([name, kind]) => [name, kind])).toEqual(
      [...block.shapes].map(([name, { kind }]) => [name, kind]),
    );
  });

  test('the style measures, with what each is and what is usual', () => {
    expect(rows('Style measures')).toEqual(
      styleMeasures.map(({ name, usual }) => [name, spoken(`about.${name}`), lengths(usual)]),
    );
  });

  test('the measures of the body', () => {
    expect(rows('Measures of the body')).toEqual(figureMeasures.map((name) => [name, spoken(`about.${name}`)]));
  });

  test('the invented figures', () => {
    expect(rows('Figures')).toEqual(people.map(({ id, group, note }) => [id, group, note]));
  });

  test('the house rules, with what each choice says and needs', () => {
    expect(rows('House rules')).toEqual(
      houseRules.flatMap(({ name, makes, choices }) =>
        choices.map((choice) => [
          ...[name, choice.name, spoken(`house.${name}.${choice.name}`)],
          ...[choice.uses.join(', '), makes],
        ]),
      ),
    );
  });

  test('the tolerances of the workroom', () => {
    expect(Object.fromEntries(rows('Tolerances').map(([name = '', , allowed]) => [name, allowed]))).toEqual({
      ...{ mark: '3 mm (1/8 in)', level: '3 mm (1/8 in)', seam: '1.5 mm (1/16 in)', square: '1°' },
    });
    expect(tolerances).toEqual({
      mark: { length: 3, angle: 1 },
      seam: { length: 1.5, angle: 1 },
      square: { length: 3, angle: 1 },
      level: { length: 3, angle: 1 },
    });
  });
});

function never(): never {
  throw new Error('not there');
}
