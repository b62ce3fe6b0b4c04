import type { VNode } from 'preact';
import { COMMENT_LENGTH } from '../../../exchange/notes/notes.ts';
import { useTakenUp } from './use-taken-up.ts';

interface CommentBoxProps {
  readonly says: string;
  readonly name: string;
  readonly comment: string;
  readonly onWrite: (comment: string) => void;
}

/** A comment in plain text. It is taken up as it is written, and when the box or the page is left. */
export function CommentBox({ says, name, comment, onWrite }: CommentBoxProps): VNode {
  const { text, setText, takeUp } = useTakenUp(comment, onWrite);
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
