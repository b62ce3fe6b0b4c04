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

/**
 * What could not be read or not be marked, as far as each tells of itself whose it is; without what lies there whole beside
 * it.
 */
export function unreadAmong(
  taken: readonly ({ readonly ok: true; readonly handIn: HandIn } | Refused)[],
): readonly UnreadPiece[] {
  const unread = taken.flatMap((one) => {
    if (one.ok || wasStopped(one)) return [];
    return unreadPiece(one.where, one.handIn === null ? one.begun : begunText(handInLine(one.handIn)));
  });
  if (unread.every(({ part }) => part === null)) return unread;
  return stillMissing(
    unread,
    taken.flatMap((one) => (one.ok ? [wholeOf(one.handIn)] : [])),
  );
}
