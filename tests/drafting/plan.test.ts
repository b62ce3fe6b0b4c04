import fc from 'fast-check';
import { expect, test } from 'vitest';
import { givenIn, planOn } from '../../src/drafting/plan.ts';
import { planDraft, plannedSteps } from '../../src/drafting/planned.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Step } from '../../src/drafting/step.ts';
import { thingOn } from '../../src/drafting/thing-on.ts';
import { drafts } from './arbitrary.ts';
import { block } from './block.ts';

test('what a planned draft makes on a table is what it makes when it is replayed there', () => {
  let made = 0;
  fc.assert(
    fc.property(drafts(12), (draft) => {
      const steps = draft as unknown as readonly Step[];
      const planned = plannedSteps(steps);
      if (planned === null) return;
      const sheet = replay(block, steps);
      const { things, answers } = planDraft(planOn(null), planned);
      const laying = { table: block, known: [], memory: null };
      for (const [name, thing] of things) {
        expect(thingOn(thing, laying)).toEqual(sheet.shapes.get(name) ?? null);
        made += sheet.shapes.has(name) ? 1 : 0;
      }
      expect(answers).toEqual(sheet.answers);
    }),
    { numRuns: 1000 },
  );
  expect(made).toBeGreaterThan(100);
});

const collar = (edge: string, mark: string): readonly Step[] => [
  { verb: 'parallel', name: edge, to: 'centre-front', distance: 'overlap', side: 'left' },
  { verb: 'cross', name: mark, one: edge, other: 'waist', answers: 'break-point' },
  { verb: 'square', name: 'upright', to: 'waist', through: mark },
];

const planned = (steps: readonly Step[]) => plannedSteps(steps) ?? [];

test('what is made alike from the same things is one thing, whatever it is called, and what is held changes what hangs on it alone', () => {
  const base = planOn(null);
  const one = planDraft(base, planned(collar('edge', 'mark')));
  const size = base.size;
  const plan = planOn(base);
  const other = planDraft(plan, planned(collar('line-1', 'mark-1')));
  expect(other.things.get('mark-1')).toBe(one.things.get('mark'));
  expect(plan.size).toBe(size);
  const held = planDraft(
    plan,
    planned(collar('edge', 'mark')),
    new Map([['break-point', givenIn(plan, 'neck-point')]]),
  );
  expect(held.things.get('edge')).toBe(one.things.get('edge'));
  expect(held.things.get('mark')).toBe(givenIn(plan, 'neck-point'));
  expect(held.things.get('upright')).not.toBe(one.things.get('upright'));
  expect(base.size).toBe(size);
});

test('a draft with a name given twice, or with a step that is not understood, has no plan', () => {
  expect(plannedSteps(collar('edge', 'edge'))).toBeNull();
  expect(plannedSteps([{ verb: 'guess', name: 'edge' } as never])).toBeNull();
});
