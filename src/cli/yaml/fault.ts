import type { Message } from '../../words/message.ts';

/** What keeps a text from being read as YAML, said to somebody who has never heard the word, and where. */
export interface SyntaxFault {
  /** In characters from the start of the text. */
  readonly offset: number;
  readonly message: Message;
}
