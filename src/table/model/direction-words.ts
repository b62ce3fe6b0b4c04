import { directions } from '../../drafting/name.ts';
import type { Direction } from '../../drafting/step.ts';
import { type Message, message } from '../../words/message.ts';

/** Shorter words than this begin too much. */
const LEAST = 3;

/**
 * The direction that was meant by words as a sentence says it: “to the left”, “above it” or “above”, “upward”. Null where they
 * begin none, or more than one. `speak` says a message in the reader's words.
 */
export function directionSaid(text: string, speak: (words: Message) => string): Direction | null {
  const typed = text.trim().toLowerCase();
  if (typed.length < LEAST) return null;
  const meant = directions.filter((direction) =>
    [message(`fill.side-${direction}`), message(`way.${direction}`), message(`fill.${direction}`)].some((words) =>
      speak(words).toLowerCase().startsWith(typed),
    ),
  );
  return meant.length === 1 ? (meant[0] ?? null) : null;
}
