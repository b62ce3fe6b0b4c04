import type { Sheet } from '../../drafting/sheet.ts';
import { rollReport } from '../../garment/collar/roll-report.ts';
import { walkOf } from '../../garment/collar/walk.ts';
import { wornOf } from '../../garment/collar/worn.ts';
import { usualWorn, type WornPlan } from '../../garment/collar/worn-plan.ts';

/** A view of a draft: as it is worn, how its collar will roll, its collar walked. */
export type ViewId = 'worn' | 'roll' | 'walk';

/** The views that a draft has what it takes for, in the order they are offered. */
export function viewsOf(sheet: Sheet, plan: WornPlan = usualWorn): readonly ViewId[] {
  return [
    ...(wornOf(sheet, plan) ? (['worn'] as const) : []),
    ...(rollReport(sheet, 1, plan) ? (['roll'] as const) : []),
    ...(walkOf(sheet, plan) ? (['walk'] as const) : []),
  ];
}
