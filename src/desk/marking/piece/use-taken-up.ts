import { useEffect, useRef, useState } from 'preact/hooks';
import { tidied } from '../../../exchange/notes/given-mark.ts';
import { useLeaving } from '../use-leaving.ts';

/** So long after the last letter a comment is taken up, ms: not at every one, for the whole gradebook is told of it. */
const PAUSE = 300;

/** A comment while it is written. */
export interface WritingInHand {
  readonly text: string;
  readonly setText: (text: string) => void;
  /** Takes it up at once, where it is another. */
  readonly takeUp: () => void;
}

/** A comment that is taken up a while after the last letter, and when the work or the page is left. */
export function useTakenUp(comment: string, onWrite: (comment: string) => void): WritingInHand {
  const [text, setText] = useState(comment);
  const latest = useRef({ text, onWrite });
  latest.current = { text, onWrite };
  /** The comment as it was taken up here, or came from elsewhere, last. */
  const known = useRef(comment);
  const written = (): string => tidied(latest.current.text).trim();
  const takeUp = (): void => {
    const next = written();
    if (next === known.current) return;
    known.current = next;
    latest.current.onWrite(next);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: looks only when another comment comes from elsewhere.
  useEffect(() => {
    if (comment === known.current) return;
    // Where nothing new was written here, the other one is shown; where something was, it will be taken up.
    if (written() === known.current) setText(comment);
    known.current = comment;
  }, [comment]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a pause is counted from the last letter.
  useEffect(() => {
    const pause = setTimeout(takeUp, PAUSE);
    return () => clearTimeout(pause);
  }, [text]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was written last is taken up as the work is closed.
  useEffect(() => takeUp, []);
  useLeaving(takeUp);
  return { text, setText, takeUp };
}
