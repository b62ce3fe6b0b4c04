import fc from 'fast-check';
import { expect, test } from 'vitest';
import { carryOut } from '../../src/drafting/carry-out.ts';
import type { HalfStep } from '../../src/drafting/form.ts';
import { inputNamed } from '../../src/drafting/input.ts';
import { knownStep } from '../../src/drafting/known-step.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Step } from '../../src/drafting/step.ts';
import { drafts, spoilt, wellFormed } from './arbitrary.ts';
import { block } from './block.ts';

test('a construction made ready makes what its step makes when it is carried out, and nothing where that fails', () => {
  let made = 0;
  fc.assert(
    fc.property(drafts(8), fc.oneof(wellFormed(), spoilt), (draft, last) => {
      const { shapes, measures } = replay(block, draft as unknown as readonly Step[]);
      if (typeof last !== 'object' || last === null || Array.isArray(last)) return;
      const step = last as HalfStep;
      const { construction, form } = knownStep(step);
      if (construction === null || form === null) return;
      const inputs = construction.uses.map((name) => inputNamed(name, { shapes, measures }));
      const carried = carryOut(step, form, { shapes, measures, absent: () => null });
      if (inputs.includes(undefined)) {
        expect(carried.ok).toBe(false);
        return;
      }
      if (carried.ok) made += 1;
      expect(construction.making.make(inputs as never)).toEqual(carried.ok ? carried.value : null);
    }),
    { numRuns: 2000 },
  );
  expect(made).toBeGreaterThan(100);
});
