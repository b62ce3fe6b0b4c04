import type { VNode } from 'preact';
import type { Say } from '../../../table/say.ts';
import type { Message } from '../../../words/message.ts';
import { spelled } from '../../../words/unseen.ts';

interface RemarksProps {
  readonly remarks: readonly Message[];
  readonly say: Say;
}

/** What is out of the ordinary with a piece of work, one thing a line; nothing where all is as the set has it. */
export function Remarks({ remarks, say }: RemarksProps): VNode | null {
  if (remarks.length === 0) return null;
  const said = remarks.map((remark) => spelled(say.message(remark)));
  return (
    <div class="piece-remarks">
      <p>{say('mark.remarks')}</p>
      <ul>
        {said.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
    </div>
  );
}
