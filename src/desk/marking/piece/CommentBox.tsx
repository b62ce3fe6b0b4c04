import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { tidied } from '../../../exchange/notes/given-mark.ts';
import { COMMENT_LENGTH } from '../../../exchange/notes/notes.ts';
import { useLeaving } from '../use-leaving.ts';

interface CommentBoxProps {
  readonly says: string;
  readonly name: string;
  readonly comment: string;
  readonly onWrite: (comment: string) => void;
}

/** So long after the last letter a comment is taken up, ms: not at every one, for the whole gradebook is told of it. */
const PAUSE = 300;

/** A comment in plain text. It is taken up as it is written, and when the box or the page is left. */
export function CommentBox({ says, name, comment, onWrite }: CommentBoxProps): VNode {
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
  return (
    <label class="field comment-box">
      <span>{says}</span>
      <textarea
        name={name}
        rows={3}
        maxLength={COMMENT_LENGTH}
        value={text}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
        onBlur={takeUp}
      />
    </label>
  );
}
