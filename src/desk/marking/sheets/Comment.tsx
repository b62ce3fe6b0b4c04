import type { VNode } from 'preact';
import type { Say } from '../../../table/say.ts';
import { spelledLines } from '../../../words/unseen.ts';

/** What the teacher wrote, line by line as she wrote it; nothing where she wrote nothing. */
export function Comment({ comment, say }: { readonly comment: string; readonly say: Say }): VNode | null {
  if (comment === '') return null;
  return (
    <p class="feedback-hand">
      <strong>{say('feedback.comment')}:</strong> {spelledLines(comment)}
    </p>
  );
}
