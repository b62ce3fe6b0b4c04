import { expect, test } from 'vitest';
import { gistOf } from '../../src/drafting/gist.ts';
import { planOn } from '../../src/drafting/plan.ts';
import { planDraft, plannedSteps } from '../../src/drafting/planned.ts';
import type { Step } from '../../src/drafting/step.ts';

const draft = [
  { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' },
  { verb: 'tape', name: 'width', length: 'overlap * 2' },
  { verb: 'along', name: 'mark', on: 'edge', from: 'neck-point', distance: 'width', toward: 'down', answers: 'top' },
] as const satisfies readonly Step[];
const [edge, width, mark] = draft;

/** The gist of a draft on a plan where the reference of these steps lies. */
function gistOn(reference: readonly unknown[], steps: readonly unknown[]): string | null {
  const base = planOn(null);
  planDraft(base, plannedSteps(reference as readonly Step[]) ?? []);
  const plan = planOn(base);
  const planned = plannedSteps(steps as readonly Step[]);
  return planned && gistOf(plan, planDraft(plan, planned));
}

const references: readonly (readonly unknown[])[] = [[], [edge], [{ ...edge, side: 'right' }, width], draft];

test('drafts that differ in names alone have one gist', () => {
  const others = [
    { ...edge, name: 'line-1' },
    { ...width, name: 'length-1' },
    { ...mark, name: 'point-1', on: 'line-1', distance: 'length-1' },
  ];
  for (const reference of references) {
    expect(gistOn(reference, draft)).not.toBeNull();
    expect(gistOn(reference, others)).toBe(gistOn(reference, draft));
  }
});

test('drafts that do different things have different ones', () => {
  const different = [
    draft,
    [edge, width],
    [width, edge, mark],
    [edge, width, { ...mark, answers: undefined }],
    [edge, width, { ...mark, answers: 'other' }],
    [edge, width, { ...mark, on: 'centre-front' }],
    [edge, width, { ...mark, from: 'waist-point' }],
    [edge, width, { ...mark, distance: 'overlap' }],
    [edge, { ...width, length: 'overlap * 3' }, mark],
    [edge, { ...edge, name: 'again' }, width, mark],
    [{ ...edge, answers: 'top' }, width, { ...mark, answers: undefined }],
  ];
  for (const reference of references) {
    const gists = different.map((steps) => gistOn(reference, steps));
    expect(gists).not.toContain(null);
    expect(new Set(gists).size).toBe(different.length);
  }
});

test('a draft that uses what no table can have has none', () => {
  expect(gistOn([], [{ ...edge, to: '0 1' }])).toBeNull();
  expect(gistOn(draft, [edge, width, { ...mark, from: '0 1' }])).toBeNull();
});
