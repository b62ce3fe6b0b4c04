import { describe, expect, test } from 'vitest';
import { sheetOf } from '../../src/table/model/reduce.ts';
import { offered, type Piece, piecesOf } from '../../src/table/parts/sentence-pieces.ts';
import { sayFor } from '../../src/table/say.ts';
import { benchAfter, edge, level, room } from './room.ts';

const say = sayFor({ language: 'en', unit: 'cm' });
const sheet = sheetOf(benchAfter([...edge, ...level]), room);
const read = (pieces: readonly Piece[]): string =>
  pieces
    .map((piece) => (piece.kind === 'words' ? piece.text : `[${piece.text}]${piece.stop}`))
    .join('')
    .replaceAll('\u00a0', ' ');

describe('a sentence in pieces', () => {
  test('keeps a stop with the blank before it, where no line can end between them', () => {
    const pieces = piecesOf('parallel', { to: 'waist', distance: '4 cm', side: 'up' }, sheet, say);
    expect(read(pieces)).toBe('Line parallel to [waist], [4 cm], [above it].');
  });

  test('keeps the stop behind a part that has no blank', () => {
    // How a curve passes its marks is dragged, and stands in no blank.
    const pieces = piecesOf(
      'curve',
      { through: ['neck-point', 'shoulder-tip'], arrive: { along: 'line-1' } },
      sheet,
      say,
    );
    expect(read(offered(pieces, ({ optional }) => !optional))).toBe(
      'Curve through [neck point and shoulder tip], [arriving along line 1].',
    );
  });

  test('keeps its last stop where a blank is not offered', () => {
    const pieces = piecesOf('cross', { one: 'line-1', other: 'line-2' }, sheet, say);
    expect(read(pieces)).toMatchInlineSnapshot(`"Mark where [line 1] crosses [line 2][]."`);
    expect(read(offered(pieces, ({ optional }) => !optional))).toBe('Mark where [line 1] crosses [line 2].');
  });
});
