import type { VNode } from 'preact';
import { spelled } from '../../words/unseen.ts';
import type { Say } from '../say.ts';
import { isTrial } from '../store/own-storage.ts';
import type { Keeping } from '../use-kept.ts';
import { KeptNote } from './KeptNote.tsx';

interface InSetProps {
  readonly title: string;
  /** Where the set lies, from the page's own address. */
  readonly wayBack: string;
  readonly keeping: Keeping;
  readonly say: Say;
}

/** Which set the draft belongs to, and the way back to it. */
export function InSet({ title, wayBack, keeping, say }: InSetProps): VNode {
  return (
    <section class="files">
      <p>{spelled(say('table.in-set', { title }))}</p>
      <KeptNote keeping={keeping} say={say} kept={isTrial(window.location.hash) ? 'table.kept-trial' : 'table.kept'} />
      <a class="button button--first" href={wayBack}>
        {say('table.back-to-set')}
      </a>
    </section>
  );
}
