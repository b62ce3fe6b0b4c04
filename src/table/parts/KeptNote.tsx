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
  return <p class="files-kept">{say('table.kept')}</p>;
}
