import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { en } from '../../src/words/en/index.ts';
import type { Entry } from '../../src/words/entry.ts';
import { inReadersUnit } from '../../src/words/literal-lengths.ts';
import { message } from '../../src/words/message.ts';
import { addLanguage, formatOf, say, type Translation } from '../../src/words/say.ts';
import { argumentsOf } from './arguments-of.ts';
import { de } from './de.ts';

const catalogue = Object.entries(en as Readonly<Record<string, Entry>>);
const german = { language: 'de', unit: 'cm' } as const;

/** Every message of the catalogue, marked as said in a language of its own. */
const marked: Translation = Object.fromEntries(catalogue.map(([key, { text }]) => [key, `«${text}»`]));

addLanguage('de', de);
addLanguage('en-x-marked', marked);

describe('a second language', () => {
  test('is one file: every message is said in it as soon as it is there', () => {
    for (const [key, { text }] of catalogue) {
      expect([key, formatOf(key as keyof typeof en, { language: 'en-x-marked', unit: 'cm' }).getAst()]).toEqual([
        key,
        new IntlMessageFormat(`«${inReadersUnit(text, 'cm')}»`, 'en').getAst(),
      ]);
    }
    const roll = loadExercise('roll-line');
    const { reports } = gradeDraft(roll, orderFor(roll, 'x'), roll.reference, 'workroom');
    for (const { sentences } of reports) {
      for (const sentence of sentences)
        expect(say(sentence, { language: 'en-x-marked', unit: 'cm' })).toMatch(/^«.*»$/);
    }
  });

  test('says what it has, in its own order and with its own plurals, lists and names', () => {
    const judged = { namedAll: ['overlap-edge', 'break-point'] };
    expect(say(message('grader.judged-from-right', { judged, count: 2 }), german)).toBe(
      '(Vorderkante und Brechpunkt stimmen, und davon wurde ausgegangen.)',
    );
    const figure = { said: message('figure.level', { measured: { mm: 38 } }) };
    expect(say(message('grader.right-figure', { target: { named: 'break-point' }, figure }), german)).toBe(
      'Brechpunkt stimmt: 3.8 cm über der Taille.',
    );
  });

  test('falls back to English for a message it has not, with English plurals, and to the words of a name', () => {
    expect(say(message('grader.right', { target: { named: 'break-point' } }), german)).toBe(
      'Your Brechpunkt is right.',
    );
    expect(say(message('grade-table.sum', { marked: 1, refused: 2 }), german)).toBe(
      'One piece of work marked. 2 could not be read.',
    );
    expect(say(message('grader.right', { target: { named: 'roll-line-high' } }), german)).toBe(
      'Your high roll line is right.',
    );
    expect(say(message('grader.right', { target: { named: 'gorge-corner' } }), german)).toBe(
      'Your gorge corner is right.',
    );
  });

  test('uses the values that the English messages need, and no others', () => {
    const strange = Object.entries(de).flatMap(([key, text]) => {
      const needed: readonly string[] = (en as Readonly<Record<string, Entry>>)[key]?.needs ?? [];
      return argumentsOf(text ?? '').filter((name) => !needed.includes(name));
    });
    expect(strange).toEqual([]);
  });

  test('that nobody added is said in English', () => {
    expect(say(message('grader.no-way'), { language: 'cy', unit: 'cm' })).toBe('a hair off');
  });
});
