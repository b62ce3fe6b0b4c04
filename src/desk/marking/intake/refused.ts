import { begunText } from '../../../exchange/beginning.ts';
import { stillMissing, type UnreadPiece, unreadPiece } from '../../../exchange/class/unread.ts';
import type { HandIn } from '../../../exchange/hand-in.ts';
import type { FiledUnread } from '../../../exchange/marking-file/marking-file.ts';
import { handInLine } from '../../../exchange/notes/draft-key.ts';
import { wholeOf } from '../../../exchange/whole.ts';
import { type Message, message } from '../../../words/message.ts';

/** What could not be read or not be marked, where it lay, and why. */
export interface Refused {
  readonly ok: false;
  readonly where: string;
  readonly message: Message;
  /** What could be read though it could not be marked. */
  readonly handIn: HandIn | null;
  /** How it begins, where it begins as a hand-in (`begunText`); empty otherwise. */
  readonly begun: string;
}

/** A file or a piece of work of which nothing could be read. */
export function refusedAt(where: string, why: Message, begun = ''): Refused {
  return { ok: false, where, message: why, handIn: null, begun };
}

/** Whether it was never looked at, because the teacher stopped before it came to its turn. */
export function wasStopped({ message: why }: Refused): boolean {
  return 'key' in why && (why.key === 'mark.stopped' || why.key === 'mark.stopped-piece');
}

/** What a marking file tells of again: why, where it says so. */
export function refusedBefore({ found, begun, why }: FiledUnread): Refused {
  return refusedAt(found, why === '' ? message('mark.was-unread') : message('mark.was-unread-why', { why }), begun);
}

/** Whether a marking file told of it, and not why. */
export function isUntold({ message: why }: Refused): boolean {
  return 'key' in why && why.key === 'mark.was-unread';
}

/** What lies on the desk, as far as it is looked at here. */
type Lying = { readonly ok: true; readonly handIn: HandIn } | Refused;

/**
 * What could not be read or not be marked, as far as each tells of itself whose it is; without what lies there whole beside
 * it.
 */
export function unreadAmong(taken: readonly Lying[]): readonly UnreadPiece[] {
  const { unread, missing } = unreadIn(taken);
  return unread.flatMap(({ piece }) => (missing.has(piece) ? [piece] : []));
}

/** What could not be read and lies there whole beside it: it is told of, and is nobody's remark. */
export function wholeBeside(taken: readonly Lying[]): ReadonlySet<Refused> {
  const { unread, missing } = unreadIn(taken);
  return new Set(unread.flatMap(({ one, piece }) => (missing.has(piece) ? [] : [one])));
}

interface Unread {
  readonly unread: readonly { readonly one: Refused; readonly piece: UnreadPiece }[];
  /** Those of which no whole lies there. */
  readonly missing: ReadonlySet<UnreadPiece>;
}

function unreadIn(taken: readonly Lying[]): Unread {
  const unread = taken.flatMap((one) => {
    if (one.ok || wasStopped(one)) return [];
    const begun = one.handIn === null ? one.begun : begunText(handInLine(one.handIn));
    return [{ one, piece: unreadPiece(one.where, begun) }];
  });
  const pieces = unread.map(({ piece }) => piece);
  // Is there anything of which the whole could be told?
  if (pieces.every(({ part }) => part === null)) return { unread, missing: new Set(pieces) };
  const wholes = taken.flatMap((one) => (one.ok ? [wholeOf(one.handIn)] : []));
  return { unread, missing: new Set(stillMissing(pieces, wholes)) };
}
