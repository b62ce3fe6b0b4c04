/** What a reader takes for one letter, however many characters it is made of (Unicode Standard Annex 29). */
const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Letters that a terminal gives two columns: wide and full-width ones (Unicode Standard Annex 11), and pictures. */
const WIDE =
  /^(?:\p{Emoji_Presentation}|\p{Emoji}\uFE0F|[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uA960-\uA97F\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF01-\uFF60\uFFE0-\uFFE6\u{20000}-\u{3FFFD}])/u;

/** Letters that it gives none: what joins others and found nothing to join. */
const NONE = /^[\p{Mn}\p{Me}\p{Cf}]+$/u;

/** A text in so many columns of a terminal: filled up with spaces, or cut between two letters and ended with an ellipsis. */
export function inColumns(text: string, columns: number): string {
  const widths = [...letters.segment(text)].map(({ segment }) => ({ segment, width: widthOf(segment) }));
  const whole = widths.reduce((sum, { width }) => sum + width, 0);
  if (whole <= columns) return text + ' '.repeat(columns - whole);
  let room = columns - 1;
  let cut = '';
  for (const { segment, width } of widths) {
    if (width > room) break;
    cut += segment;
    room -= width;
  }
  return `${cut}…${' '.repeat(room)}`;
}

function widthOf(letter: string): number {
  if (NONE.test(letter)) return 0;
  return WIDE.test(letter) ? 2 : 1;
}
