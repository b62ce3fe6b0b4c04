import type { VNode } from 'preact';
import { useRef } from 'preact/hooks';

interface OpenFileProps {
  readonly says: string;
  /** What the chooser offers: endings and media types. */
  readonly accept: string;
  readonly class: string;
  /** What tests and styles know the button by. */
  readonly does: string;
  readonly onText: (text: string) => void;
  /** The file was moved or taken away meanwhile, or the browser may not read it. */
  readonly onUnread: () => void;
}

/** A button that lets one file be chosen, and gives its text. */
export function OpenFile({ says, accept, class: looks, does, onText, onUnread }: OpenFileProps): VNode {
  const chooser = useRef<HTMLInputElement>(null);
  const open = async ({ currentTarget }: Event & { readonly currentTarget: HTMLInputElement }): Promise<void> => {
    const text = await currentTarget.files?.[0]?.text().catch(() => null);
    if (text === null) onUnread();
    else if (text !== undefined) onText(text);
    // The same file can be chosen again.
    currentTarget.value = '';
  };
  return (
    <>
      <button type="button" class={looks} data-do={does} onClick={() => chooser.current?.click()}>
        {says}
      </button>
      <input ref={chooser} class="unseen" type="file" accept={accept} aria-label={says} tabIndex={-1} onChange={open} />
    </>
  );
}
