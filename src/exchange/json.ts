import { type Message, message } from '../words/message.ts';

export type Json = { readonly ok: true; readonly json: unknown } | { readonly ok: false; readonly message: Message };

/** Largest set and largest hand-in, in characters; a draft of as many steps as may be read stays well below. */
export const FILE_LENGTH = 512 * 1024;

/** Parses a file of ours, of at most so many characters. Refuses one that is empty, too large or cut off, and says where where the engine tells. */
export function readJson(text: string, longest = FILE_LENGTH): Json {
  // Is there anything in it?
  if (text.trim() === '') return { ok: false, message: message('files.empty') };
  // Is it text as it was saved?
  if (text.startsWith('\uFFFD') || text.includes('\0')) return { ok: false, message: message('files.not-utf8') };
  // Could it be a draft?
  if (text.length > longest) return { ok: false, message: message('files.too-large', { limit: longest / 1024 }) };
  try {
    return { ok: true, json: JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text) };
  } catch (error) {
    return { ok: false, message: whereOf(error, text) };
  }
}

/** Engines agree on throwing a SyntaxError and on nothing in its message; V8 and others name a position. */
function whereOf(error: unknown, text: string): Message {
  const position = /position (\d+)/.exec(error instanceof Error ? error.message : '')?.[1];
  const at = position === undefined ? endWhereCut(error, text) : Number(position);
  if (at === null) return message('files.not-json');
  const before = text.slice(0, at).split('\n');
  return message('files.not-json-at', { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 });
}

/** V8 names no position where the text just ends. */
function endWhereCut(error: unknown, text: string): number | null {
  return error instanceof Error && /end of/i.test(error.message) ? text.length : null;
}
