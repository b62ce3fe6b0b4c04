import type { HalfStep } from '../../drafting/form.ts';
import { formById } from '../../drafting/form.ts';
import { type SentencePart, sentenceParts } from '../../drafting/sentence.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Field } from '../../drafting/verbs.ts';
import { unbroken } from '../../words/unbroken.ts';
import type { Filling, ToolId } from '../model/bench.ts';
import { fieldsOf } from '../model/tools.ts';
import type { Say } from '../say.ts';

/** Words, or a blank of the sentence in hand. */
export type Piece =
  | { readonly kind: 'words'; readonly text: string; readonly key: string }
  | {
      readonly kind: 'blank';
      readonly field: Field;
      readonly text: string;
      readonly filled: boolean;
      readonly before: string;
    };

/** The sentence of a tool as it is filled, in pieces. Optional blanks that are empty stand at the end, so that they can be filled. */
export function piecesOf(tool: ToolId, filled: Readonly<Record<string, Filling>>, sheet: Sheet, say: Say): Piece[] {
  const fields = fieldsOf(tool);
  const parts =
    tool === 'measure'
      ? measureParts(filled, say)
      : sentenceParts({ verb: formById(tool).verb, ...filled } as HalfStep, say.reader, {
          measures: sheet.measures,
          form: tool,
        });
  const pieces: Piece[] = [];
  let before = '';
  for (const [index, part] of parts.entries()) {
    if (part.kind === 'text') {
      before = unbroken(part.text);
      pieces.push({ kind: 'words', text: before, key: `words-${index}` });
      continue;
    }
    const field = fields.find((one) => one.field === part.field);
    if (field)
      pieces.push({ kind: 'blank', field, text: part.filled ? unbroken(part.text) : '', filled: part.filled, before });
    before = '';
  }
  return pieces;
}

function measureParts(filled: Readonly<Record<string, Filling>>, say: Say): SentencePart[] {
  const [before = '', after = ''] = say('table.measure-sentence', { one: '\u0000', other: '\u0001' }).split('\u0000');
  const [between = '', end = ''] = after.split('\u0001');
  const against = say('table.measure-other', { other: '' });
  const blank = (field: string, optional: boolean): SentencePart => {
    const name = filled[field];
    const text = typeof name === 'string' ? say('table.label', { name: { named: name } }) : '';
    return { kind: 'blank', field, text, filled: text !== '', optional, wanted: '' };
  };
  return [
    { kind: 'text', text: before },
    blank('one', false),
    { kind: 'text', text: `${between}${against}` },
    blank('other', true),
    { kind: 'text', text: end },
  ];
}
