import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../../src/cli/exercises.ts';
import { workRow } from '../../../src/exchange/grade-row.ts';
import type { HandIn } from '../../../src/exchange/hand-in.ts';
import { markHandIn } from '../../../src/exchange/mark-work.ts';
import { draftKey } from '../../../src/exchange/notes/draft-key.ts';
import { looseNotes, type NotedPiece } from '../../../src/exchange/notes/loose-notes.ts';
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
