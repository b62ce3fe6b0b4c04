import { type Message, message } from '../words/message.ts';
import { FILE_LENGTH } from './json.ts';
import { linesOf, type StreamLine } from './lines.ts';

/** One piece of work of a stream: its text, or why there is none. `line` counts from 1; null where the whole stream is one document. */
export type Piece =
  | { readonly line: number | null; readonly text: string }
  | { readonly line: number | null; readonly refused: Message };

const tooLarge = message('files.too-large', { limit: FILE_LENGTH / 1024 });

/**
 * Divides a stream into pieces of work: one JSON document, or one a line. It is one a line when the first line is whole,
 * or when the second starts as a piece of its own. Memory does not grow with the stream.
 */
export async function* piecesIn(chunks: AsyncIterable<string>): AsyncGenerator<Piece> {
  const lines = linesOf(chunks, FILE_LENGTH);
  const first = await nextOf(lines);
  // Is there anything at all?
  if (first === null) return yield { line: null, refused: message('files.empty') };
  const second = await nextOf(lines);
  if (isWhole(first.text) || second?.text?.trimStart().startsWith('{')) {
    yield pieceOf(first);
    if (second !== null) yield pieceOf(second);
    for await (const line of lines) yield pieceOf(line);
    return;
  }
  yield await gathered([first, ...(second === null ? [] : [second])], lines);
}

async function nextOf(lines: AsyncGenerator<StreamLine>): Promise<StreamLine | null> {
  const { value, done } = await lines.next();
  return done ? null : value;
}

function pieceOf({ number, text }: StreamLine): Piece {
  return text === null ? { line: number, refused: tooLarge } : { line: number, text };
}

/** Whether a text is one whole JSON document; null is none. */
export function isWhole(text: string | null): boolean {
  if (text === null) return false;
  try {
    JSON.parse(text.replace(/^\uFEFF/, ''));
    return true;
  } catch {
    return false;
  }
}

/** The whole stream as one document; its blank lines are left out, which JSON does not mind. */
async function gathered(begun: readonly StreamLine[], lines: AsyncGenerator<StreamLine>): Promise<Piece> {
  const texts: string[] = [];
  let length = 0;
  const fits = ({ text }: StreamLine): boolean => {
    if (text === null) return false;
    texts.push(text);
    length += text.length + 1;
    return length <= FILE_LENGTH;
  };
  if (!begun.every(fits)) return { line: null, refused: tooLarge };
  for await (const line of lines) if (!fits(line)) return { line: null, refused: tooLarge };
  return { line: null, text: texts.join('\n') };
}
