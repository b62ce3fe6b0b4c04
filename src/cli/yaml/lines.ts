/** A line of a text: what stands in it, and where it begins, in characters from the start of the text. */
export interface Line {
  readonly text: string;
  readonly start: number;
}

/** The lines of a text. */
export function linesOf(text: string): readonly Line[] {
  let start = 0;
  return text.split('\n').map((line) => {
    const one = { text: line.replace(/\r$/, ''), start };
    start += line.length + 1;
    return one;
  });
}

/** The position in the list of the line that holds a place of the text; the last for a place beyond the end. */
export function lineAt(lines: readonly Line[], offset: number): number {
  return Math.max(
    0,
    lines.findLastIndex(({ start }) => start <= offset),
  );
}

/** How far a line is indented, in characters; a hyphen that begins an entry counts with the spaces. */
export function indentOf({ text }: Line): number {
  return /^[\s-]*/.exec(text)?.[0].length ?? 0;
}
