import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import type { Say } from '../say.ts';

interface NameBoxProps {
  readonly name: Name;
  readonly say: Say;
  readonly onName: (typed: string) => void;
}

/** What a step's object is called, changed where it stands. A name that cannot be given springs back, and the reason is said. */
export function NameBox({ name, say, onName }: NameBoxProps): VNode {
  const [typed, setTyped] = useState<string | null>(null);
  const words = say('table.label', { name: { named: name } });
  const take = (): void => {
    if (typed !== null && typed.trim() !== '' && typed !== words) onName(typed);
    setTyped(null);
  };
  return (
    <label class="name-box">
      <span aria-hidden="true">{say('table.called')}</span>
      <input
        type="text"
        aria-label={say('table.name-of', { name: { named: name } })}
        autocomplete="off"
        spellcheck={false}
        size={Math.max(6, (typed ?? words).length)}
        value={typed ?? words}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') {
            // What the focus is on by the time the key is let go must not be pressed by it.
            event.preventDefault();
            take();
          }
          if (event.key === 'Escape') setTyped(null);
        }}
        onBlur={take}
      />
    </label>
  );
}
