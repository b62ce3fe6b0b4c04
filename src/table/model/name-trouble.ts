import { whyNotName } from '../../drafting/head.ts';
import type { Givens } from '../../drafting/sheet.ts';
import type { Step } from '../../drafting/step.ts';
import type { Message } from '../../words/message.ts';

/** Why a name cannot be given to a step's object; null when it can. */
export function nameTrouble(name: string, steps: readonly Step[], givens: Givens): Message | null {
  return whyNotName(name, givens, new Map(steps.map((step, index) => [step.name, index])));
}

/** What was typed as a name would be spelt: `Break point` as `break-point`. */
export function spelt(typed: string): string {
  return typed
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-');
}
