import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Filling } from '../model/bench.ts';
import { optionsFor } from '../model/options.ts';
import type { Say } from '../say.ts';
import { labelAfter, wantedIn } from './blank-words.ts';
import type { Piece } from './sentence-pieces.ts';

interface Around {
  /** What can be named: all that lies there before the step. */
  readonly sheet: Sheet;
  readonly shown: (name: Name) => boolean;
  readonly say: Say;
}

/** A blank of a sentence as a box shows it, whether the step is in hand or stands in the working. */
export function blankFor(
  { field, before, text }: Extract<Piece, { kind: 'blank' }>,
  filled: Readonly<Record<string, Filling>>,
  { sheet, shown, say }: Around,
) {
  const value = filled[field.field];
  const wanted = wantedIn(field, say);
  return {
    value,
    field: field.field,
    blank: field.blank,
    label: labelAfter(before, wanted),
    wanted,
    text,
    typed: typeof value === 'string' ? value : text,
    options: optionsFor(field.blank, sheet, shown, value),
    sheet,
    say,
  };
}
