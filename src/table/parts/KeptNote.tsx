import type { VNode } from 'preact';
import type { Say } from '../say.ts';
import type { Keeping } from '../use-kept.ts';

/** Whether the draft is being kept. When it is not, that stands out. */
export function KeptNote({ keeping, say }: { readonly keeping: Keeping; readonly say: Say }): VNode | null {
  if (keeping.state === 'full' || keeping.state === 'forbidden') {
    return (
      <p class="notice" role="alert">
        {say(`table.not-kept-${keeping.state}`)}
      </p>
    );
  }
  // The notice over the table says what stands in the way.
  if (keeping.state === 'damaged' || keeping.state === 'elsewhere') return null;
  return <p class="files-kept">{say('table.kept')}</p>;
}
