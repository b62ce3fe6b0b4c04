import { describe, expect, test } from 'vitest';
import { en } from '../../src/words/en/index.ts';
import type { Entry } from '../../src/words/entry.ts';
import { inReadersUnit } from '../../src/words/literal-lengths.ts';
import { argumentsOf } from './arguments-of.ts';

/** A message whose lengths, which stand in braces as values do, are said. */
const said = (text: string): string => inReadersUnit(text, 'cm');

const entries = Object.entries(en as Readonly<Record<string, Entry>>);

describe('the English catalogue', () => {
  test('needs exactly the values its messages use', () => {
    const wrong = entries.filter(([, { text, needs }]) => `${[...needs].sort()}` !== `${argumentsOf(said(text))}`);
    expect(
      wrong.map(([key, { text, needs }]) => ({ key, needs: [...needs].sort(), uses: argumentsOf(said(text)) })),
    ).toEqual([]);
  });

  test('has no empty message', () => {
    expect(entries.filter(([, { text }]) => text.trim() === '').map(([key]) => key)).toEqual([]);
  });
});

test('arguments are found in plurals, choices and tags', () => {
  const text = '{a} {n, plural, one {{b}} other {# {c}}} {s, select, x {{d}} other {}} <em>{e}</em>';
  expect(argumentsOf(text)).toEqual(['a', 'b', 'c', 'd', 'e', 'em', 'n', 's']);
});
