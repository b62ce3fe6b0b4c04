/** A line of a stream, numbered from 1; `text` is null where the line was longer than may be kept. */
export interface StreamLine {
  readonly number: number;
  readonly text: string | null;
}

/** The lines of a stream that are not blank. Keeps one line at a time, and of one longer than `longest` nothing. */
export async function* linesOf(chunks: AsyncIterable<string>, longest: number): AsyncGenerator<StreamLine> {
  let number = 1;
  let kept: string | null = '';
  for await (const chunk of chunks) {
    const [rest = '', ...begun] = chunk.split('\n');
    kept = joined(kept, rest, longest);
    for (const text of begun) {
      yield* unlessBlank(number, kept);
      number += 1;
      kept = joined('', text, longest);
    }
  }
  yield* unlessBlank(number, kept);
}

function joined(kept: string | null, more: string, longest: number): string | null {
  return kept === null || kept.length + more.length > longest ? null : kept + more;
}

function unlessBlank(number: number, text: string | null): readonly StreamLine[] {
  return text !== null && text.trim() === '' ? [] : [{ number, text }];
}
