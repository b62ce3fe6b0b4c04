import type { Message } from '../words/message.ts';

/** What comes after an exercise: another, a lesson, or the set it was done for. */
export interface Onward {
  /** From the page's own address. */
  readonly href: string;
  readonly says: Message;
}
