import type { Page } from '@playwright/test';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { expect } from './fixture.ts';
import { act, openTable } from './table-hand.ts';

/** Opens a capstone with its reference on the table, some of its steps changed. */
export async function openDraft(
  page: Page,
  exercise: string,
  change: (step: Step) => Step | readonly Step[] = (step) => step,
): Promise<void> {
  await openTable(page, exercise);
  const draft = writeHandIn({
    student: '',
    number: '',
    set: null,
    exercise,
    order: { figure: { named: 'amara' }, style: {}, house: {} },
    strictness: 'workroom',
    unit: 'cm',
    steps: loadExercise(exercise).reference.flatMap(change),
    shown: [],
    hints: {},
    checks: 0,
    begun: null,
    saved: null,
  });
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'draft.json', mimeType: 'application/json', buffer: Buffer.from(draft) });
  await expect(act(page, 'view-worn')).toBeVisible();
}
