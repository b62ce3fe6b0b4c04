import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { formOf } from '../../src/drafting/form.ts';
import { DRAFT_LENGTH, EXPRESSION_LENGTH, LIST_LENGTH, NAME_LENGTH } from '../../src/drafting/limits.ts';
import { readSteps } from '../../src/drafting/read.ts';
import { sentenceOf } from '../../src/drafting/sentence.ts';
import { forms } from '../../src/drafting/verbs.ts';
import { block, draft, inCentimetres } from './block.ts';

const text = readFileSync(new URL('../../docs/drafting-language.md', import.meta.url), 'utf8');

/** Every example of the page, with the sentence that stands under it, if one does. */
const examples = Array.from(text.matchAll(/```json\n(.*?)\n```(?:\n\n> ([^\n]*))?/gs), ([, json, sentence]) => ({
  json: json ?? '',
  sentence,
}));

describe('the examples of the language page', () => {
  test.each(examples)('$json', ({ json, sentence }) => {
    const read = readSteps([JSON.parse(json)]);
    expect(read).toMatchObject({ ok: true });
    if (!read.ok) return;
    expect(draft(read.steps).problems).toEqual([]);
    if (sentence) expect(read.steps.map((step) => sentenceOf(step, inCentimetres, block.measures))).toEqual([sentence]);
  });

  test('show every form, all but the first with its sentence', () => {
    expect(examples.filter(({ sentence }) => sentence === undefined)).toHaveLength(1);
    const shown = new Set(examples.map(({ json }) => formOf(JSON.parse(json))?.id));
    expect(forms.filter(({ id }) => !shown.has(id))).toEqual([]);
  });
});

test('the page states the limits the code has', () => {
  expect(text).toContain(`at most ${NAME_LENGTH} characters`);
  expect(text).toContain(`At most ${EXPRESSION_LENGTH} characters`);
  expect(text).toContain(`no list more than ${LIST_LENGTH} entries, no draft more than ${DRAFT_LENGTH} steps`);
});
