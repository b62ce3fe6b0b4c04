import { expect, test } from 'vitest';
import { NOTHING } from '../../../../src/desk/marking/intake/piles.ts';
import { workOf } from '../../../../src/desk/marking/keeping/work-of.ts';
import { rightOverlap } from '../../../exchange/hand-ins.ts';

test('what is kept is told by what counts, as in the gradebook, and all of it is kept', () => {
  const again = { ...rightOverlap, saved: '2026-02-15T09:30:00.000Z', checks: 3 };
  const other = { ...rightOverlap, exercise: 'swing' };
  const waiting = [rightOverlap, again, other].map((handIn, at) => ({ found: `${at}.json`, handIn }));
  const work = workOf({ ...NOTHING, waiting }, '2026-02-16T08:00:00.000Z');
  expect(work?.summary).toMatchObject({ students: 1, pieces: 2 });
  expect(JSON.parse(work?.text ?? '{}').work).toHaveLength(3);
});
