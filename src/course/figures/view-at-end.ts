import type { Sheet } from '../../drafting/sheet.ts';
import { rollReport } from '../../garment/collar/roll-report.ts';
import { momentAt, rollingOf } from '../../garment/collar/rolling.ts';
import { walkOf } from '../../garment/collar/walk.ts';
import { wornOf } from '../../garment/collar/worn.ts';
import { usualWorn, type WornPlan } from '../../garment/collar/worn-plan.ts';
import { toleranceOf } from '../../grader/tolerance.ts';
import type { Drawing } from '../../table/drawing/drawing.ts';
import type { LiveView } from '../../table/live/live-scene.ts';
import { rollDrawing } from '../../table/views/roll-drawing.ts';
import { walkDrawing } from '../../table/views/walk-drawing.ts';
import { wornDrawing } from '../../table/views/worn-drawing.ts';
import type { Unit } from '../../words/unit.ts';

/** A view's picture where it has come to its end: turned over, or walked to the last mark. Null while the draft lacks what it takes. */
export function viewAtEnd({ shows, plan = usualWorn }: LiveView, sheet: Sheet, unit: Unit): Drawing | null {
  if (shows === 'worn') return turnedOver(sheet, plan, unit);
  return shows === 'roll' ? rolled(sheet, plan, unit) : walked(sheet, plan, unit);
}

function turnedOver(sheet: Sheet, plan: WornPlan, unit: Unit): Drawing | null {
  const worn = wornOf(sheet, plan);
  return worn && wornDrawing(worn, 1, { over: plan.over, level: plan.level ?? 'collarbone-level' }, unit);
}

function rolled(sheet: Sheet, plan: WornPlan, unit: Unit): Drawing | null {
  const report = rollReport(sheet, toleranceOf('mark', 'workroom', 'mm'), plan);
  return report && rollDrawing(sheet, report, unit);
}

function walked(sheet: Sheet, plan: WornPlan, unit: Unit): Drawing | null {
  const walk = walkOf(sheet, plan);
  const rolling = walk && rollingOf(walk.seam, walk.collar);
  return walk && rolling && walkDrawing(sheet, walk, rolling, momentAt(rolling, 1), unit);
}
