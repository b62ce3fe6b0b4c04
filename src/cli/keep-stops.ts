/** A word of the trade in running text, as `src/course/author/Term.astro` writes it, and the stop that follows it. */
const STOPPED = /(<button type="button" class="term"[^>]*>[^<]*<\/button>)([.,;:!?)’”]+)/g;

/**
 * Keeps the stop after a word of the trade on its line. The word is a button, and a line may end after a button, whatever
 * follows; no character that joins words helps against that.
 */
export function keepStops(html: string): string {
  return html.replace(STOPPED, '<span class="with-stop">$1$2</span>');
}
