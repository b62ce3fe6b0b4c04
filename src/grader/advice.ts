import type { Givens } from '../drafting/sheet.ts';
import { type Message, written } from '../words/message.ts';
import { fillers } from './fillers.ts';
import type { JudgedTarget } from './judge.ts';

/** Of the first check of a target that is off: why it shows on the body, and what to do. */
export function advice({ checks }: Pick<JudgedTarget, 'checks'>, givens: Givens): readonly Message[] {
  const off = firstOff(checks);
  return off === undefined ? [] : [written(off.check.why, fillers(off, givens)), ...mending({ checks }, givens)];
}

/** What to do about it alone: where what was done is no fault of the cloth’s. */
export function mending({ checks }: Pick<JudgedTarget, 'checks'>, givens: Givens): readonly Message[] {
  const off = firstOff(checks);
  return off === undefined ? [] : [written(off.check.mend, fillers(off, givens))];
}

function firstOff(checks: JudgedTarget['checks']): JudgedTarget['checks'][number] | undefined {
  return checks.find(({ status }) => status !== 'within');
}
