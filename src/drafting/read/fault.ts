import type { Message } from '../../words/message.ts';

/** What does not fit in one step. `at` is where in it: `distance`, `through[1]`, `leave.along`; empty for the step itself. */
export interface Fault {
  readonly at: string;
  readonly message: Message;
}

/** Reads one value: adds what does not fit to `faults`, and returns a copy with its fields in the order of the language. */
export type Reader = (value: unknown, at: string, faults: Fault[]) => unknown;
