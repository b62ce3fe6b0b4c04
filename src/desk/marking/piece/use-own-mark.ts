import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { givenMark } from '../../../exchange/notes/given-mark.ts';
import type { OwnMark } from '../../../exchange/notes/notes.ts';
import type { Message } from '../../../words/message.ts';

/** A teacher's mark while it is written. */
export interface OwnMarkInHand {
  readonly marks: string;
  readonly setMarks: (text: string) => void;
  readonly reason: string;
  readonly setReason: (text: string) => void;
  /** Why it cannot be given as it stands; null before that was tried. */
  readonly trouble: Message | null;
  /** The fields, of which the first has the focus to begin with. */
  readonly first: RefObject<HTMLInputElement>;
  readonly why: RefObject<HTMLTextAreaElement>;
  /** Gives it, or says what is missing. */
  readonly give: () => void;
}

/** `before` is the mark that was given before, `of` what can be earned. */
export function useOwnMark(before: OwnMark | null, of: number, onGive: (mark: OwnMark) => void): OwnMarkInHand {
  const first = useRef<HTMLInputElement>(null);
  const why = useRef<HTMLTextAreaElement>(null);
  const [marks, setMarks] = useState(before === null ? '' : String(before.marks));
  const [reason, setReason] = useState(before?.reason ?? '');
  const [trouble, setTrouble] = useState<Message | null>(null);
  useLayoutEffect(() => first.current?.focus(), []);
  // Whoever pressed Enter goes on writing where something is missing.
  const refuse = (missing: Message): void => {
    setTrouble(missing);
    const wantsReason = 'key' in missing && missing.key === 'mark.own-no-reason';
    (wantsReason ? why : first).current?.focus();
  };
  const give = (): void => {
    const given = givenMark(marks, reason, of);
    if (given.ok) onGive(given.mark);
    else refuse(given.message);
  };
  return { marks, setMarks, reason, setReason, trouble, first, why, give };
}
