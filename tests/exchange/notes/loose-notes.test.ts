import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../../src/cli/exercises.ts';
import { workRow } from '../../../src/exchange/grade-row.ts';
import type { HandIn } from '../../../src/exchange/hand-in.ts';
import { markHandIn } from '../../../src/exchange/mark-work.ts';
import { draftKey } from '../../../src/exchange/notes/draft-key.ts';
import { handedOn, looseNotes, type NotedPiece } from '../../../src/exchange/notes/loose-notes.ts';
import { NO_NOTES, withMark, withPiece } from '../../../src/exchange/notes/notes.ts';
import { rightOverlap } from '../hand-ins.ts';

const handIn: HandIn = { ...rightOverlap, order: { ...rightOverlap.order, style: {} } };
const later: HandIn = { ...handIn, steps: [], saved: '2026-02-20T09:30:00.000Z' };

function piece(one: HandIn): NotedPiece {
  const marked = markHandIn(one, { load: loadExercise, set: null, strictness: null });
  return { handIn: one, checks: marked.ok ? workRow('a.json', marked, null).checks : null };
}

const of = piece(handIn).checks?.reduce((sum, check) => sum + check.of, 0) ?? 0;
const mark = { marks: 1, of, reason: 'Two hints.' };
const given = withPiece(NO_NOTES, draftKey(handIn), (now) => ({
  ...withMark(now, 'overlap-edge', mark),
  comment: 'Look again.',
}));
const told = (pieces: readonly NotedPiece[], notes = given) =>
  looseNotes(pieces, notes).map(({ why, marks, comment }) => [why, marks.map(([target]) => target), comment]);

describe('what a teacher wrote', () => {
  test('belongs to the draft that counts, also when it was handed in again unchanged', () => {
    expect(told([piece(handIn)])).toEqual([]);
    expect(told([piece(handIn), piece({ ...handIn, saved: '2026-02-20T09:30:00.000Z' })])).toEqual([]);
  });

  test('is told where another draft was handed in later', () => {
    expect(told([piece(handIn), piece(later)])).toEqual([['earlier', ['overlap-edge'], 'Look again.']]);
  });

  test('counts where the draft does, also the better of two of which the worse came later', () => {
    const best = { ...given, counts: 'best' as const };
    // One mark by hand is more than the empty draft after it earned.
    expect(told([piece(handIn), piece(later)], best)).toEqual([]);
    const nothing = withPiece(NO_NOTES, draftKey(handIn), (now) =>
      withMark(now, 'overlap-edge', { ...mark, marks: 0 }),
    );
    expect(told([piece(handIn), piece(later)], { ...nothing, counts: 'best' })).toEqual([
      ['earlier', ['overlap-edge'], ''],
    ]);
  });

  test('is told where the exercise has no such target, or one that is worth something else', () => {
    const notes = withPiece(NO_NOTES, draftKey(handIn), (now) =>
      withMark(withMark(now, 'pocket', mark), 'overlap-edge', { ...mark, of: of + 1 }),
    );
    expect(told([piece(handIn)], notes)).toEqual([['target', ['pocket', 'overlap-edge'], '']]);
  });

  test('is told where the work could not be marked', () => {
    expect(told([{ handIn, checks: null }])).toEqual([['unmarked', ['overlap-edge'], 'Look again.']]);
  });
});

describe('what belongs to a draft that no longer counts', () => {
  const pieces = [piece(handIn), piece(later)];
  const [loose] = looseNotes(pieces, given);
  const to = piece(later);
  if (!loose) throw new Error('Nothing is loose.');

  test('can be handed on to the one that counts, and is loose no more', () => {
    const after = handedOn(given, loose, to);
    expect(after.pieces.get(draftKey(later))).toEqual(given.pieces.get(draftKey(handIn)));
    expect(told(pieces, after)).toEqual([]);
  });

  test('takes the place of nothing that was written there, and stays loose then', () => {
    const own = { marks: 2, of, reason: 'By hand.' };
    const both = withPiece(given, draftKey(later), (now) => ({
      ...withMark(now, 'overlap-edge', own),
      comment: 'Good.',
    }));
    expect(handedOn(both, loose, to)).toEqual(both);
  });

  test('stays where it does not fit', () => {
    const other = withPiece(given, draftKey(handIn), (now) => withMark(now, 'overlap-edge', { ...mark, of: of + 1 }));
    const [unfit] = looseNotes(pieces, other);
    if (!unfit) throw new Error('Nothing is loose.');
    expect(told(pieces, handedOn(other, unfit, to))).toEqual([['earlier', ['overlap-edge'], '']]);
  });
});
