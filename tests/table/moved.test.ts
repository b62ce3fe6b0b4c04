import { expect, test } from 'vitest';
import type { Step } from '../../src/drafting/step.ts';
import { moved } from '../../src/table/model/moved.ts';

const steps: readonly Step[] = [
  { verb: 'pencil', name: 'one', at: [0, 0] },
  { verb: 'pencil', name: 'two', at: [50, 80] },
  { verb: 'curve', name: 'edge', through: ['one', 'two'] },
];

test('a free mark is put elsewhere, a curve is bent, and the other steps are the very ones of before', () => {
  const draft = { steps, upTo: 3 };
  const shape = [{ turn: 0.5, before: 0.3, after: 0.3 }, null];
  const put = moved(draft, { do: 'move', name: 'two', at: [60, 80] });
  expect(put).toEqual({ steps: [steps[0], { verb: 'pencil', name: 'two', at: [60, 80] }, steps[2]], upTo: 3 });
  expect(put?.steps[0]).toBe(steps[0]);
  expect(moved(draft, { do: 'bend', name: 'edge', shape })?.steps[2]).toEqual({ ...steps[2], shape });
});

test('what is not there, or is nothing that goes so, is not moved', () => {
  const draft = { steps, upTo: 3 };
  expect(moved(draft, { do: 'move', name: 'three', at: [0, 0] })).toBeNull();
  expect(moved(draft, { do: 'move', name: 'edge', at: [0, 0] })).toBeNull();
  expect(moved(draft, { do: 'bend', name: 'one', shape: [] })).toBeNull();
});

test('of many moves of one thing the last alone leaves the draft as all of them do', () => {
  const draft = { steps, upTo: 2 };
  const first = moved(draft, { do: 'move', name: 'one', at: [9, 9] });
  const last = { do: 'move', name: 'one', at: [3, 4] } as const;
  expect(first && moved(first, last)).toEqual(moved(draft, last));
});
