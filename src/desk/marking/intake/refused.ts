import { begunText } from '../../../exchange/beginning.ts';
import { type UnreadPiece, unreadPiece } from '../../../exchange/class/unread.ts';
import type { HandIn } from '../../../exchange/hand-in.ts';
import { handInLine } from '../../../exchange/notes/draft-key.ts';
import type { Message } from '../../../words/message.ts';

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

/** What could not be read or not be marked, as far as each tells of itself whose it is. */
export function unreadAmong(taken: readonly ({ readonly ok: true } | Refused)[]): readonly UnreadPiece[] {
  return taken.flatMap((one) => {
    if (one.ok || wasStopped(one)) return [];
    return unreadPiece(one.where, one.handIn === null ? one.begun : begunText(handInLine(one.handIn)));
  });
}
