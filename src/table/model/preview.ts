import { type Drawn, isDrawn, type Shape } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Message } from '../../words/message.ts';
import type { Draft, Hand, Room } from './bench.ts';
import { stepOf } from './hand.ts';
import { sheetOf } from './reduce.ts';
import { insert } from './steps.ts';

/** What the tool in hand would make: nothing yet, a shape, or the reason why it would make none. */
export type Preview =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'shape'; readonly shape: Shape }
  | { readonly kind: 'problem'; readonly field: string | null; readonly message: Message };

const NOTHING: Preview = { kind: 'nothing' };

/** Tries the tool in hand without making its step. */
export function previewOf(draft: Draft, hand: Hand | null, sheet: Sheet, room: Room): Preview {
  const step = hand && stepOf(hand, sheet, new Set(draft.steps.map(({ name }) => name)));
  if (!step) return NOTHING;
  const at = draft.upTo;
  const tried = sheetOf(insert(draft, step), room);
  const problem = tried.problems.find((one) => one.step === at);
  if (problem) return { kind: 'problem', field: problem.field, message: problem.message };
  const shape = tried.shapes.get(step.name);
  return shape ? { kind: 'shape', shape } : NOTHING;
}

/** The shape to draw ahead of the step; null when there is none to draw. */
export function drawnOf(preview: Preview): Drawn | null {
  return preview.kind === 'shape' && isDrawn(preview.shape) ? preview.shape : null;
}
