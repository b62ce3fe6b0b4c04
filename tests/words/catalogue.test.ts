import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { en } from '../../src/words/en/index.ts';
import type { Entry } from '../../src/words/entry.ts';

const entries = Object.entries(en as Readonly<Record<string, Entry>>);

describe('the English catalogue', () => {
  test('needs exactly the values its messages use', () => {
    const wrong = entries.filter(([, { text, needs }]) => `${[...needs].sort()}` !== `${argumentsOf(text)}`);
    expect(wrong.map(([key, { text, needs }]) => ({ key, needs: [...needs].sort(), uses: argumentsOf(text) }))).toEqual(
      [],
    );
  });

  test('has no empty message', () => {
    expect(entries.filter(([, { text }]) => text.trim() === '').map(([key]) => key)).toEqual([]);
  });
});

test('arguments are found in plurals, choices and tags', () => {
  const text = '{a} {n, plural, one {{b}} other {# {c}}} {s, select, x {{d}} other {}} <em>{e}</em>';
  expect(argumentsOf(text)).toEqual(['a', 'b', 'c', 'd', 'e', 'em', 'n', 's']);
});

/** The names of the values an ICU message uses, sorted, each once. */
function argumentsOf(text: string): readonly string[] {
  return [...new Set(new IntlMessageFormat(text, 'en').getAst().flatMap(namesIn))].sort();
}

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

function namesIn(element: Element): readonly string[] {
  const own = 'value' in element && !isLiteral(element) ? [element.value] : [];
  const choices = 'options' in element ? Object.values(element.options).flatMap(({ value }) => value) : [];
  const children = 'children' in element ? element.children : [];
  return [...own, ...[...choices, ...children].flatMap(namesIn)];
}

/** In the parser's tree, a run of plain text has type 0. */
function isLiteral(element: Element): boolean {
  return Number(element.type) === 0;
}
