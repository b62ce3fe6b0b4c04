import { foundWords } from '../drafting/read/found.ts';
import { isRecord } from '../drafting/record.ts';
import type { Fault } from '../grader/reading/fault.ts';
import { type Key, message } from '../words/message.ts';

/** What files of one kind say of themselves, and what one of them is called in a sentence. */
export interface Kind {
  readonly format: string;
  readonly version: number;
  readonly called: Extract<Key, `kind.${string}`>;
}

/** Why parsed JSON is no file of this kind and version; null where it says it is. Such a file is refused before anything in it is found fault with. */
export function foreignFault(json: unknown, { format, version, called }: Kind): Fault | null {
  const found = isRecord(json) ? json : {};
  if (found['format'] !== format) {
    const values = { kind: { said: message(called) }, format, found: { said: foundWords(found['format']) } };
    return { at: [], message: message('files.not-this', values) };
  }
  const written = found['version'];
  if (written === version) return null;
  if (typeof written === 'number' && Number.isInteger(written) && written > version) {
    return { at: [], message: message('files.version-newer', { found: written, known: version }) };
  }
  return {
    at: ['version'],
    message: message('files.version', { found: { said: foundWords(written) }, known: version }),
  };
}
