import { type Message, message } from '../../words/message.ts';
import { type OwnMark, REASON_LENGTH } from './notes.ts';

export type GivenMark =
  | { readonly ok: true; readonly mark: OwnMark }
  | { readonly ok: false; readonly message: Message };

/** A mark as a teacher typed it, for a target that is worth `of`. Refuses what is no mark, and a mark without a reason. */
export function givenMark(typed: string, reason: string, of: number): GivenMark {
  const text = typed.trim().replace(',', '.');
  // Is it a number as people write one?
  if (!/^\d{1,6}(?:\.\d{1,6})?$|^\.\d{1,6}$/.test(text)) return refused(message('mark.own-not-marks', { of }));
  // Does the target have so many?
  if (Number(text) > of) return refused(message('mark.own-over', { of }));
  const why = tidied(reason).trim();
  // Would the student be told why?
  if (why === '') return refused(message('mark.own-no-reason'));
  return { ok: true, mark: { marks: Number(text), of, reason: why.slice(0, REASON_LENGTH) } };
}

function refused(why: Message): GivenMark {
  return { ok: false, message: why };
}

/** A text of several lines as it is kept: one kind of line end, and nothing that is not seen. */
export function tidied(text: string): string {
  return text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll('\t', ' ')
    .replaceAll(/[^\P{Cc}\n]/gu, '');
}
