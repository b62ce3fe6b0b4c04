import type { Path } from '../../geometry/cubic.ts';
import { turnBetween } from '../../geometry/direction.ts';
import { COINCIDENT } from '../../geometry/epsilon.ts';
import { lengthOf } from '../../geometry/length.ts';
import { type Point, subtract } from '../../geometry/point.ts';
import { breaksOf, turnOf } from '../../geometry/smooth.ts';
import { directionAtStation, pieceBetween, pointAtStation } from '../../geometry/station.ts';
import { shiftPath, turnPath } from '../../geometry/transform.ts';

/** A rigid motion: turned about `pin` by `turn` radians, and laid with the pin on `to`. */
export interface Placement {
  readonly pin: Point;
  readonly to: Point;
  readonly turn: number;
}

/** A moment of rolling: how far both have been walked, mm from the start, and where the rolled piece lies. */
export interface Moment {
  readonly walked: number;
  readonly placement: Placement;
}

/** A part of the way: rolled on from one station to another, or turned about a corner where the station stands still. */
interface Leg {
  readonly from: number;
  readonly to: number;
  /** Turned about the corner in this leg, radians. */
  readonly pivot: number;
  /** How long it takes, as mm of rolling. */
  readonly takes: number;
}

/** One path rolled along another, tangents together and no slipping, from start to start as far as the shorter goes. */
export interface Rolling {
  readonly still: Path;
  readonly rolled: Path;
  readonly legs: readonly Leg[];
  /** The turn that brings their directions together at the start, radians. */
  readonly start: number;
}

/** Turning about a corner takes as long as rolling on by this radius times the angle, mm. */
const PIVOT = 60;

/** Lays out the rolling of `rolled` along `still`. Corners of either are turned about where they come. */
export function rollingOf(still: Path, rolled: Path): Rolling {
  const end = Math.min(lengthOf(still), lengthOf(rolled));
  const corners = cornersOf(still, rolled).filter(({ at }) => at > COINCIDENT && at < end - COINCIDENT);
  const legs: Leg[] = [];
  let from = 0;
  for (const { at, pivot } of corners) {
    legs.push({ from, to: at, pivot: 0, takes: at - from });
    legs.push({ from: at, to: at, pivot, takes: Math.abs(pivot) * PIVOT });
    from = at;
  }
  legs.push({ from, to: end, pivot: 0, takes: end - from });
  const [one, other] = [directionAtStation(rolled, 0), directionAtStation(still, 0)];
  return { still, rolled, legs, start: one && other ? turnBetween(one, other) : 0 };
}

/** The moment a `fraction` (0 to 1) of the way through. */
export function momentAt(rolling: Rolling, fraction: number): Moment {
  const { legs } = rolling;
  let left = Math.min(1, Math.max(0, fraction)) * legs.reduce((sum, { takes }) => sum + takes, 0);
  let pivoted = 0;
  for (const leg of legs) {
    if (left <= leg.takes) {
      const part = leg.takes > 0 ? left / leg.takes : 1;
      return moment(rolling, leg.from + (leg.to - leg.from) * part, pivoted + leg.pivot * part);
    }
    left -= leg.takes;
    pivoted += leg.pivot;
  }
  return moment(rolling, legs.at(-1)?.to ?? 0, pivoted);
}

/** How far through it a station (mm walked) is reached, 0 to 1. */
export function fractionAt({ legs }: Rolling, station: number): number {
  const whole = legs.reduce((sum, { takes }) => sum + takes, 0);
  let before = 0;
  for (const { from, to, takes } of legs) {
    if (station <= to && to > from) return whole > 0 ? (before + Math.max(0, station - from)) / whole : 1;
    before += takes;
  }
  return 1;
}

/** A path of the rolled piece where a placement lays it. */
export function placed(path: Path, { pin, to, turn }: Placement): Path {
  return shiftPath(turnPath(path, pin, turn), subtract(to, pin));
}

function moment({ still, rolled, start }: Rolling, walked: number, pivoted: number): Moment {
  const pin = pointAtStation(rolled, walked) ?? { x: 0, y: 0 };
  const to = pointAtStation(still, walked) ?? pin;
  const turn = start + smoothTurn(still, walked) - smoothTurn(rolled, walked) + pivoted;
  return { walked, placement: { pin, to, turn } };
}

/** What a path turns through up to a station without its corners, radians. */
function smoothTurn(path: Path, station: number): number {
  const walked = pieceBetween(path, 0, station);
  if (!walked) return 0;
  return turnOf(walked) - breaksOf(walked).reduce((sum, { angle }) => sum + angle, 0);
}

interface Corner {
  readonly at: number;
  readonly pivot: number;
}

/** The corners of both in order; two at one station are one. A corner of the still path turns the piece, one of its own turns it back. */
function cornersOf(still: Path, rolled: Path): readonly Corner[] {
  const all = [
    ...breaksOf(still).map(({ station: at, angle: pivot }) => ({ at, pivot })),
    ...breaksOf(rolled).map(({ station: at, angle }) => ({ at, pivot: -angle })),
  ].toSorted((a, b) => a.at - b.at);
  const found: Corner[] = [];
  for (const corner of all) {
    const last = found.at(-1);
    if (!last || corner.at - last.at > TOGETHER) found.push(corner);
    else found[found.length - 1] = { at: last.at, pivot: last.pivot + corner.pivot };
  }
  return found;
}

/** Corners no further apart than this, mm, are turned about together: the eye sees one. */
const TOGETHER = 0.5;
