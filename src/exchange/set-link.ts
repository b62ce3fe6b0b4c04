import { base64urlnopad } from '@scure/base';
import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import { type Message, message } from '../words/message.ts';
import { readSet, type SetReading } from './read-set.ts';
import type { ProblemSet } from './set.ts';
import { setJson } from './write-set.ts';

/** How a set stands in an address, behind the `#`: its JSON, deflated (RFC 1951), in base64url without padding (RFC 4648, section 5). */
export const LINK_PREFIX = 'set=';

/** Longest link that is made, in characters behind the `#`. Mail and chat programs cut addresses beyond about 2,000: common practice, no source. */
export const LINK_LENGTH = 1900;

/** Longest that is read, in characters of the link and in bytes of what it unfolds to. */
const LINK_READ = 16 * 1024;
const LINK_BYTES = 64 * 1024;

export type Link = { readonly ok: true; readonly hash: string } | { readonly ok: false; readonly message: Message };

/** What stands behind the `#` of a set's link, or that it would be too long for one. */
export function setLink(set: ProblemSet): Link {
  const packed = deflateSync(strToU8(JSON.stringify(setJson(set))), { level: 9 });
  const hash = `${LINK_PREFIX}${base64urlnopad.encode(packed)}`;
  if (hash.length > LINK_LENGTH) {
    return { ok: false, message: message('files.link-long', { length: hash.length, limit: LINK_LENGTH }) };
  }
  return { ok: true, hash };
}

/** Reads a set from what stands behind the `#`, with or without it. `exercises` are the names of those there are. */
export function readSetLink(hash: string, exercises: readonly string[]): SetReading {
  const packed = hash.replace(/^#?set=/, '');
  if (packed.length > LINK_READ) return broken;
  const text = unpacked(packed);
  return text === null ? broken : readSet(text, exercises);
}

const broken: SetReading = { ok: false, faults: [{ at: [], message: message('files.link-broken') }] };

/** The text of a link; null where it is damaged, or unfolds to more than a set can be. */
function unpacked(packed: string): string | null {
  const room = new Uint8Array(LINK_BYTES);
  try {
    // What does not find room is dropped, so a small link cannot fill the memory.
    const bytes = inflateSync(base64urlnopad.decode(packed), { out: room });
    return bytes.length < room.length ? strFromU8(bytes) : null;
  } catch {
    return null;
  }
}
