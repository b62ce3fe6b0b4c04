import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FILE_LENGTH } from '../../src/exchange/json.ts';
import { type Piece, piecesIn } from '../../src/exchange/pieces.ts';

async function* chunked(text: string, size: number): AsyncGenerator<string> {
  for (let at = 0; at < text.length; at += size) yield await Promise.resolve(text.slice(at, at + size));
}

async function pieces(text: string, size = 7): Promise<readonly Piece[]> {
  const found: Piece[] = [];
  for await (const piece of piecesIn(chunked(text, size))) found.push(piece);
  return found;
}

const kinds = (found: readonly Piece[]) =>
  found.map((piece) => [piece.line, 'text' in piece ? piece.text : piece.refused]);

describe('a stream', () => {
  test('of one document on one line is one piece', async () => {
    expect(await pieces('{"a":1}')).toEqual([{ line: 1, text: '{"a":1}' }]);
  });

  test('of one document set out over many lines is one piece', async () => {
    const text = JSON.stringify({ a: 1, b: [{ c: 2 }] }, null, 2);
    expect(await pieces(`\n${text}\n`)).toEqual([{ line: null, text }]);
  });

  test('of one a line is as many pieces, numbered as an editor numbers lines', async () => {
    expect(kinds(await pieces('{"a":1}\n\n{"b":2}\r\n{"c":3}'))).toEqual([
      [1, '{"a":1}'],
      [3, '{"b":2}\r'],
      [4, '{"c":3}'],
    ]);
  });

  test('of one a line goes on after a line that is broken, even the first', async () => {
    expect(kinds(await pieces('{"a":\n{"b":2}\n{oops\n{"c":3}\n'))).toEqual([
      [1, '{"a":'],
      [2, '{"b":2}'],
      [3, '{oops'],
      [4, '{"c":3}'],
    ]);
  });

  test('with nothing in it is refused once', async () => {
    for (const text of ['', '\n \n']) {
      expect(kinds(await pieces(text))).toEqual([[null, { key: 'files.empty', values: {} }]]);
    }
  });

  test('with a line too long to keep refuses that line alone', async () => {
    const long = `{"a":"${'x'.repeat(FILE_LENGTH)}"}`;
    const found = await pieces(`{"a":1}\n${long}\n{"b":2}`, 65_536);
    expect(found.map((piece) => [piece.line, 'text' in piece])).toEqual([
      [1, true],
      [2, false],
      [3, true],
    ]);
  });

  test('that is no text of ours is refused once, however long', async () => {
    expect(await pieces('x'.repeat(2 * FILE_LENGTH), 65_536)).toHaveLength(1);
    const wordy = 'one word and another\n'.repeat(FILE_LENGTH / 8);
    const found = await pieces(wordy, 65_536);
    expect(found.map((piece) => [piece.line, 'text' in piece])).toEqual([[null, false]]);
  });

  test('gives the same pieces however it is cut into chunks', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.jsonValue().map((value) => JSON.stringify({ value })),
          { minLength: 1, maxLength: 6 },
        ),
        fc.integer({ min: 1, max: 40 }),
        async (lines, size) => {
          expect(await pieces(lines.join('\n'), size)).toEqual(lines.map((text, index) => ({ line: index + 1, text })));
        },
      ),
    );
  });

  test('without an end is read as far as it is asked for', async () => {
    let given = 0;
    async function* endless(): AsyncGenerator<string> {
      for (;;) {
        given += 1;
        yield await Promise.resolve('{"a":1}\n');
      }
    }
    const stream = piecesIn(endless());
    for (let taken = 0; taken < 1000; taken += 1) expect((await stream.next()).done).toBe(false);
    expect(given).toBeLessThanOrEqual(1003);
  });
});
