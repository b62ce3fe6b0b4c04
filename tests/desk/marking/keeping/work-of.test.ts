import { expect, test } from 'vitest';
import { NOTHING } from '../../../../src/desk/marking/intake/piles.ts';
import { isListAlone, workOf } from '../../../../src/desk/marking/keeping/work-of.ts';
import { NO_NOTES } from '../../../../src/exchange/notes/notes.ts';
import { rightOverlap } from '../../../exchange/hand-ins.ts';

test('what is kept is told by what counts, as in the gradebook, and all of it is kept', () => {
  const again = { ...rightOverlap, saved: '2026-02-15T09:30:00.000Z', checks: 3 };
  const other = { ...rightOverlap, exercise: 'swing' };
  const waiting = [rightOverlap, again, other].map((handIn, at) => ({ found: `${at}.json`, handIn }));
  const work = workOf({ ...NOTHING, waiting }, '2026-02-16T08:00:00.000Z');
  expect(work?.summary).toMatchObject({ students: 1, pieces: 2 });
  expect(JSON.parse(work?.text ?? '{}').work).toHaveLength(3);
});

test('a class list alone is kept, and nobody has to be asked whether to go on with it', () => {
  const saved = '2026-02-16T08:00:00.000Z';
  const list = workOf({ ...NOTHING, notes: { ...NO_NOTES, list: 'Ilse, 17' } }, saved);
  expect(JSON.parse(list?.text ?? '{}').list).toBe('Ilse, 17');
  expect(isListAlone(list?.summary ?? null)).toBe(true);
  const work = workOf({ ...NOTHING, waiting: [{ found: 'a.json', handIn: rightOverlap }] }, saved);
  expect([isListAlone(work?.summary ?? null), isListAlone(null)]).toEqual([false, false]);
});
