import type { VNode } from 'preact';
import type { Say } from '../say.ts';
import type { Keeping } from '../use-kept.ts';

interface KeptNoteProps {
  readonly keeping: Keeping;
  readonly say: Say;
  /** What is said where it is kept. */
  readonly kept?: 'table.kept' | 'table.kept-trial';
}

/** Whether the draft is being kept. When it is not, that stands out. */
export function KeptNote({ keeping, say, kept = 'table.kept' }: KeptNoteProps): VNode | null {
  if (keeping.state === 'full' || keeping.state === 'forbidden') {
    return (
      <p class="notice" role="alert">
        {say(`table.not-kept-${keeping.state}`)}
      </p>
    );
  }
  // The notice over the table says what stands in the way.
  if (keeping.state === 'damaged' || keeping.state === 'elsewhere') return null;
  return <p class="files-kept">{say(kept)}</p>;
}
