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
      /** The stop right after it, which no line may begin with. */
      readonly stop: string;
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
      pieces.push({ kind: 'words', text: stopped(pieces, before), key: `words-${index}` });
      continue;
    }
    const field = fields.find((one) => one.field === part.field);
    const text = part.filled ? unbroken(part.text) : '';
    if (field) pieces.push({ kind: 'blank', field, text, filled: part.filled, before, stop: '' });
    before = '';
  }
  return pieces;
}

/** The pieces without the blanks that are not offered; the stop after one goes to the blank before it. */
export function offered(pieces: readonly Piece[], isOffered: (field: Field) => boolean): Piece[] {
  const kept: Piece[] = [];
  for (const piece of pieces) {
    const last = kept.at(-1);
    if (piece.kind === 'words' || piece.filled || isOffered(piece.field)) kept.push(piece);
    else if (last?.kind === 'blank') kept[kept.length - 1] = { ...last, stop: last.stop + piece.stop };
  }
  return kept;
}

/** Gives the stop that words begin with to the blank before them; the rest of the words. */
function stopped(pieces: Piece[], text: string): string {
  const last = pieces.at(-1);
  if (last?.kind !== 'blank') return text;
  const stop = text.match(/^[.,;:]+/)?.[0] ?? '';
  pieces[pieces.length - 1] = { ...last, stop };
  return text.slice(stop.length);
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
