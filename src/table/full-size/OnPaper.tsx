import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import type { FullSizeProps } from './FullSize.tsx';

type Fetched = typeof import('./FullSize.tsx');

/** A fold of the table's side in which a draft is laid out on paper. What it needs is fetched when it is first opened. */
export function OnPaper(props: FullSizeProps): VNode {
  const { say } = props;
  const [open, setOpen] = useState(false);
  const [fetched, setFetched] = useState<Fetched | 'failed' | null>(null);
  const turn = (isOpen: boolean): void => {
    setOpen(isOpen);
    // Opened again after it failed, it is fetched again.
    if (!isOpen || (fetched !== null && fetched !== 'failed')) return;
    import('./FullSize.tsx').then(setFetched, () => setFetched('failed'));
  };
  return (
    <details class="on-paper" open={open} onToggle={({ currentTarget }) => turn(currentTarget.open)}>
      <summary>{say('paper.title')}</summary>
      {fetched === 'failed' ? <p class="trouble">{say('paper.failed')}</p> : null}
      {open && fetched !== null && fetched !== 'failed' ? <fetched.FullSize {...props} /> : null}
    </details>
  );
}
