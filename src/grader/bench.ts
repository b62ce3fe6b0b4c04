import type { Message } from '../words/message.ts';
import type { JudgedTarget, Ruler } from './judge.ts';
import type { Order } from './order.ts';

/** What was done wrong, known for what it is: a word for it, and what is said of it. */
export interface Slip {
  readonly id: string;
  readonly says: readonly Message[];
}

/** A draft with every target judged. */
export interface Bench extends Ruler {
  readonly order: Order;
  readonly judged: readonly JudgedTarget[];
}
