import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { endOf } from '../../geometry/path.ts';
import { pathCalled } from './called.ts';
import { fromBack } from './collar-edges.ts';
import { type NeckSeam, neckSeamOf, wholeSeam } from './neck-seam.ts';
import { upwardCalled } from './upward.ts';
import { usualWorn, type WornPlan } from './worn-plan.ts';

/** A match mark, by its stations from the centre back along the garment's seam and along the collar's neck edge, mm. */
export interface MatchMark {
  readonly name: Name;
  readonly seam: number;
  readonly collar: number;
}

/** What lies between two match marks: the lengths, mm, and what of the collar is left over; negative where it is short. */
export interface Stretch {
  readonly from: Name;
  readonly to: Name;
  readonly seam: number;
  readonly collar: number;
  readonly over: number;
}

/** The collar's neck edge laid along the garment's neck seam, both from the centre back. */
export interface Walk {
  readonly seam: Path;
  readonly collar: Path;
  readonly marks: readonly MatchMark[];
  readonly stretches: readonly Stretch[];
  /** What the collar's edge goes on past its last match mark, mm. */
  readonly past: number;
}

/**
 * Walks the collar of a draft. Match marks: the centre back, where both begin; the shoulder, at the neck point; and the
 * last mark of the front's neck seam, where the collar ends. On the collar a mark lies where its edge comes nearest to it,
 * for collar and front are drafted in place. Null while the draft lacks a roll line, that seam or the neck edge.
 */
export function walkOf(sheet: Sheet, plan: WornPlan = usualWorn): Walk | null {
  const roll = upwardCalled(sheet, plan.over);
  const drawn = pathCalled(sheet, 'collar-neck-edge');
  const neckSeam = neckSeamOf(sheet, plan.seam);
  const seam = neckSeam && wholeSeam(neckSeam);
  const end = plan.seam?.at(-1);
  if (!roll || !drawn || !seam || end === undefined) return null;
  const collar = fromBack(drawn, roll);
  const marks = marksOf(neckSeam, seam, collar, end);
  return { seam, collar, marks, stretches: stretchesOf(marks), past: lengthOf(collar) - (marks.at(-1)?.collar ?? 0) };
}

function marksOf({ back, shoulder }: NeckSeam, seam: Path, collar: Path, end: Name): readonly MatchMark[] {
  return [
    { name: 'centre-back', seam: 0, collar: 0 },
    { name: 'neck-point', seam: lengthOf(back), collar: nearestOn(collar, shoulder).station },
    { name: end, seam: lengthOf(seam), collar: nearestOn(collar, endOf(seam)).station },
  ];
}

function stretchesOf(marks: readonly MatchMark[]): readonly Stretch[] {
  return marks.flatMap((to, index): readonly Stretch[] => {
    const from = marks[index - 1];
    if (!from) return [];
    const [seam, collar] = [to.seam - from.seam, to.collar - from.collar];
    return [{ from: from.name, to: to.name, seam, collar, over: collar - seam }];
  });
}
