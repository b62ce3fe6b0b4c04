import type { Sheet } from '../../drafting/sheet.ts';
import type { Path } from '../../geometry/cubic.ts';
import { footOn, type Line, signedDistance, stationOf } from '../../geometry/line.ts';
import { endOf, joinPaths, polyline, startOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { lineCalled, pointCalled } from './called.ts';
import { type Flap, flapOf } from './flap.ts';
import { foldPoint } from './fold-over.ts';
import { runAlong } from './run.ts';
import { upwardCalled } from './upward.ts';
import type { WornPlan } from './worn-plan.ts';

/** The notch, flat and worn. */
export interface WornNotch {
  readonly flat: Point;
  readonly worn: Point;
  /** How far below its level it sits when it is worn, mm; negative above it. */
  readonly below: number;
}

/** A front with what turns over on it. Everything lies flat here; `foldPath` with `fold` turns a flap over. */
export interface Worn {
  /** The fold line, directed up. */
  readonly fold: Line;
  readonly lapel: Flap | null;
  /** The collar as far as it lies flat with the front. */
  readonly collar: Flap | null;
  /** What stays between the fold line and the neck seam: the stand. Null without a collar. */
  readonly stand: Path | null;
  /** The front that stays where it is; open at its foot, which is the drawing's affair. */
  readonly front: Path | null;
  /** The seam along which it ends above: the gorge from the fold line, the neck seam, the shoulder. */
  readonly seam: Path | null;
  readonly level: Line | null;
  readonly notch: WornNotch | null;
}

/** What a draft looks like worn, as far as it is drawn. Null while there is no fold line or nothing to turn over it. */
export function wornOf(sheet: Sheet, plan: WornPlan): Worn | null {
  const fold = upwardCalled(sheet, plan.over);
  if (!fold) return null;
  const until = plan.until === undefined ? null : pointCalled(sheet, plan.until);
  const lapel = turned(sheet, plan.folds, fold, null);
  const collar = turned(sheet, plan.turns, fold, until);
  if (!lapel && !collar) return null;
  const stays = plan.stays ? runAlong(sheet, plan.stays) : null;
  const front = stays ? frontOf(lapel, collar, stays, fold) : null;
  const level = plan.level === undefined ? null : lineCalled(sheet, plan.level);
  return {
    fold,
    lapel,
    collar,
    stand: collar && stays && until && standOf(collar, stays, fold, until),
    front,
    // Without a lapel of its own there is no gorge.
    seam: front && (lapel ? front.slice(1) : stays),
    level,
    notch: notchOf(plan.notch === undefined ? null : pointCalled(sheet, plan.notch), fold, level),
  };
}

function turned(sheet: Sheet, names: WornPlan['folds'], fold: Line, until: Point | null): Flap | null {
  const run = names && runAlong(sheet, names);
  return run ? flapOf(run, fold, until) : null;
}

/** Between the fold line and the neck seam, from where the collar begins up to the square through `until`. */
function standOf(collar: Flap, stays: Path, fold: Line, until: Point): Path | null {
  const low = hinge(collar, fold)[0];
  return polyline([low, startOf(stays), until, footOn(fold, until), low]);
}

/** From where the fold begins up to the neck seam, and along the edge that stays. */
function frontOf(lapel: Flap | null, collar: Flap | null, stays: Path, fold: Line): Path | null {
  const flap = lapel ?? collar;
  if (!flap) return null;
  const [low, high] = hinge(flap, fold);
  // A collar cut in one with its lapel turns over further up than the front reaches.
  const up = polyline([low, lapel ? high : footOn(fold, startOf(stays)), startOf(stays)]);
  return up && joinPaths([up, stays]);
}

/** The ends of the stretch of the fold line on which a flap turns, the lower first. */
function hinge({ edge }: Flap, fold: Line): readonly [Point, Point] {
  const [start, end] = [footOn(fold, startOf(edge)), footOn(fold, endOf(edge))];
  return stationOf(fold, start) <= stationOf(fold, end) ? [start, end] : [end, start];
}

function notchOf(flat: Point | null, fold: Line, level: Line | null): WornNotch | null {
  if (!flat || !level) return null;
  // A mark on the body side of the fold line stays where it is.
  const worn = signedDistance(fold, flat) > 0 ? foldPoint(flat, fold, 1) : flat;
  return { flat, worn, below: footOn(level, worn).y - worn.y };
}
