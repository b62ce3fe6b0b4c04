import type { RefObject, VNode } from 'preact';
import type { Say } from '../../table/say.ts';
import { isHereOnly } from './here-only.ts';

interface LinkFieldProps {
  readonly address: string;
  readonly field: RefObject<HTMLInputElement>;
  readonly say: Say;
}

/** The link of a set, to be copied by hand, and a word of warning where it leads nowhere else. */
export function LinkField({ address, field, say }: LinkFieldProps): VNode {
  return (
    <>
      <label class="field desk-link">
        <span>{say('desk.link')}</span>
        <input ref={field} type="text" readOnly name="link" value={address} />
      </label>
      {isHereOnly(address) ? <p class="desk-note">{say('desk.link-here')}</p> : null}
    </>
  );
}
