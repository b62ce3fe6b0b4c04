import type { Givens } from '../drafting/sheet.ts';
import { type Message, written } from '../words/message.ts';
import { fillers } from './fillers.ts';
import type { JudgedTarget } from './judge.ts';

/** Of the first check of a target that is off: why it shows on the body, and what to do. */
export function advice({ checks }: JudgedTarget, givens: Givens): readonly Message[] {
  const off = checks.find(({ status }) => status !== 'within');
  if (off === undefined) return [];
  return [written(off.check.why, fillers(off, givens)), written(off.check.mend, fillers(off, givens))];
}
