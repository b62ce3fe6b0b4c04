/**
 * Characters that are not seen and change what is: control characters, the ones that turn the direction of writing, and
 * the separators that some programs take for the end of a line.
 */
const UNSEEN = /[\p{Cc}\p{Bidi_Control}\u2028\u2029]/gu;

/** A whole text that `hasUnseen` finds nothing in, as a JSON Schema states it. */
export const SEEN_PATTERN = '^[^\\p{Cc}\\p{Bidi_Control}\\u2028\\u2029]*$';

/** Whether there is anything in a text that is not seen and changes what is. */
export function hasUnseen(text: string): boolean {
  return text.search(UNSEEN) >= 0;
}

/** A text that somebody else wrote, safe to print: what is not seen is spelled, `\u001b`, as JSON would. */
export function spelled(text: string): string {
  return text.replace(UNSEEN, (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

/** The same of a text of several lines, which stay lines. */
export function spelledLines(text: string): string {
  return text.split('\n').map(spelled).join('\n');
}
