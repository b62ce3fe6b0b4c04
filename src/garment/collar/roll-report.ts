import type { Sheet } from '../../drafting/sheet.ts';
import type { Path } from '../../geometry/cubic.ts';
import { turnBetween } from '../../geometry/direction.ts';
import { lengthOf } from '../../geometry/length.ts';
import type { Line } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { type Point, scale, turnAbout } from '../../geometry/point.ts';
import { directionAtStation, pieceBetween } from '../../geometry/station.ts';
import { lengthCalled } from './called.ts';
import { collarEdgesOf, type FoundEdges } from './collar-edges.ts';
import { type Across, acrossAt } from './edge-gain.ts';
import { type NeckSeam, neckSeamOf } from './neck-seam.ts';
import { turningSeam, turnOfSeam } from './neck-turn.ts';
import { upwardCalled } from './upward.ts';
import { usualWorn, type WornPlan } from './worn-plan.ts';

/** What cloth will do: lie; pull, with stress lines across the shoulder; ripple at the edge and drop the stand. */
export type Roll = 'lies' | 'pulls' | 'ripples';

/** The outer edge needed and drawn from the centre back to a place round the half collar, as gains on the neck edge, mm. */
export interface RollStation {
  /** How far round from the centre back, as a part of the back neck: 1 at the shoulder. */
  readonly part: number;
  readonly needed: number;
  readonly drawn: number;
  readonly across: Across;
}

export interface RollReport {
  readonly stand: number;
  readonly fall: number;
  /** What the neck seam turns through from the centre back to where it runs beside the roll line, radians. */
  readonly turn: number;
  /** By how much the outer edge has to exceed the neck edge, mm, and by how much it does. */
  readonly needed: number;
  readonly drawn: number;
  readonly verdict: Roll;
  /** From the centre back to the shoulder. */
  readonly stations: readonly RollStation[];
  /** How far below the neck seam an edge of the drawn length lies, mm, and the stand that this leaves. */
  readonly settles: { readonly cover: number; readonly stand: number };
  /** Whether the order has the edge worked with the iron, so that the cloth is stretched as well as cut. */
  readonly ironed: boolean;
  readonly edges: FoundEdges;
  /** The seam it lies about, from the centre back to beside the roll line. */
  readonly seam: Path;
  readonly shoulder: Point;
}

/** Stations between the centre back and the shoulder, both included. */
const STATIONS = 5;

/**
 * Whether a collar will lie. The outer edge has to exceed the neck edge by (fall - stand) x turn of the neck seam, with
 * front and back joined at the shoulder: a parallel is longer than a curve by its distance times the turn (J. Steiner,
 * 1840). What was drawn is the outer edge from the centre back to the square to the roll line through the shoulder mark,
 * less the neck edge up to that mark. `within` is what they may differ by, mm. Null while the draft lacks a roll line,
 * stand and fall, or a collar that was swung, and where the outer edge does not reach the shoulder.
 */
export function rollReport(sheet: Sheet, within: number, plan: WornPlan = usualWorn): RollReport | null {
  const roll = upwardCalled(sheet, plan.over);
  const neckSeam = neckSeamOf(sheet, plan.seam);
  const [stand, fall] = [lengthCalled(sheet, 'stand'), lengthCalled(sheet, 'fall')];
  if (!roll || !neckSeam || stand === null || fall === null) return null;
  const edges = collarEdgesOf(sheet, neckSeam, roll);
  const seam = turningSeam(neckSeam, roll);
  const stations = edges && stationsRound({ neckSeam, edges, roll, seam, cover: fall - stand });
  const last = stations?.at(-1);
  if (!edges || !stations || !last) return null;
  const { needed, drawn } = last;
  const turn = turnOfSeam(seam);
  return {
    stand,
    fall,
    turn,
    needed,
    drawn,
    verdict: verdictOf(drawn - needed, within),
    stations,
    settles: settled(drawn, turn, stand + fall),
    ironed: sheet.measures.get('iron')?.value === 1,
    edges,
    seam,
    shoulder: neckSeam.shoulder,
  };
}

function verdictOf(over: number, within: number): Roll {
  if (Math.abs(over) <= within) return 'lies';
  return over < 0 ? 'pulls' : 'ripples';
}

/** Where an edge of this gain lies flat: Steiner's relation read the other way. The width stays stand and fall together. */
function settled(drawn: number, turn: number, width: number): RollReport['settles'] {
  // Round a seam that does not turn, an edge lies at any distance; keep it on the seam.
  const cover = turn > 1e-6 ? drawn / turn : 0;
  return { cover, stand: (width - cover) / 2 };
}

interface Round {
  readonly neckSeam: NeckSeam;
  readonly edges: FoundEdges;
  readonly roll: Line;
  readonly seam: Path;
  readonly cover: number;
}

/**
 * The stations round the half collar, each at the same part of the way to the shoulder on the collar and on the seam. The
 * squares across turn evenly from the one at the centre back to the one to the roll line: laid round the neck, cloth
 * shares out evenly what the swing has opened in one place.
 */
function stationsRound({ neckSeam, edges, roll, seam, cover }: Round): readonly RollStation[] | null {
  const mark = nearestOn(edges.neck, neckSeam.shoulder).station;
  const back = lengthOf(neckSeam.back);
  const down = scale(roll.direction, -1);
  const first = directionAtStation(edges.neck, 0) ?? down;
  const stations: RollStation[] = [];
  for (let i = 0; i < STATIONS; i++) {
    const part = i / (STATIONS - 1);
    const running = turnAbout(first, ORIGIN, turnBetween(first, down) * part);
    const across = acrossAt(edges, mark * part, running);
    if (!across) return null;
    // At the shoulder the corner of the joined seam counts too.
    const behind = part === 1 ? seam : pieceBetween(seam, 0, back * part);
    stations.push({ part, needed: cover * (behind ? turnOfSeam(behind) : 0), drawn: across.gain, across });
  }
  return stations;
}

const ORIGIN: Point = { x: 0, y: 0 };
