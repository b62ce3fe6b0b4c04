const INSIDE = /(\d) (?=(?:\d+\/\d+|mm|cm|in|inch|inches)\b)/g;

/** A text for a page, in which no line ends inside a length: `1 1/4 in` keeps together. */
export function unbroken(text: string): string {
  return text.replace(INSIDE, '$1\u00a0');
}
