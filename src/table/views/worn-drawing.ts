import type { Flap } from '../../garment/collar/flap.ts';
import { foldPath, foldPoint, sideSeen } from '../../garment/collar/fold-over.ts';
import type { Worn } from '../../garment/collar/worn.ts';
import type { Path } from '../../geometry/cubic.ts';
import { footOn, stationOf } from '../../geometry/line.ts';
import { endOf, startOf } from '../../geometry/path.ts';
import { add, type Point, scale } from '../../geometry/point.ts';
import { type Message, message } from '../../words/message.ts';
import type { Unit } from '../../words/unit.ts';
import type { Box } from '../drawing/box.ts';
import type { Drawing, Label, Part } from '../drawing/drawing.ts';
import { boxOf, closedBy, cloth, curve, dotsFor, mark, nameOf, run, runBeside, words } from './parts.ts';

/** How far below the lowest point that turns over the front is shown, mm. */
const FOOT = 45;
const MARGIN = 16;

/** A worn front as it looks from above with its flaps turned over by `fraction` of half a turn. The box holds still. */
export function wornDrawing(worn: Worn, fraction: number, names: WornNames, unit: Unit): Drawing {
  const box = wornBox(worn);
  const flaps = flapsOf(worn);
  return {
    box,
    dots: dotsFor(unit),
    parts: [
      ...clothUnder(worn, box),
      ...flaps.map(([name, { outline }]) => cloth(name, foldPath(outline, worn.fold, fraction), sideSeen(fraction))),
      ...linesUnder(worn, box, names),
      ...(fraction > 0 ? flaps.map(([name, { edge }]) => curve(`${name}-flat`, 'help', edge)) : []),
      ...flaps.map(([name, { edge }]) => curve(`${name}-edge`, 'made', foldPath(edge, worn.fold, fraction))),
      ...notchParts(worn, fraction),
    ],
    labels: labelsOf(worn, fraction, box, names),
    says: [sayWorn(worn, fraction, names)],
  };
}

/** What the objects are called, so that the picture speaks of the learner's own. */
export interface WornNames {
  readonly over: string;
  readonly level: string;
}

function flapsOf({ lapel, collar }: Worn): readonly (readonly ['lapel' | 'collar', Flap])[] {
  return [...(collar ? [['collar', collar] as const] : []), ...(lapel ? [['lapel', lapel] as const] : [])];
}

function wornBox(worn: Worn): Box {
  const flat = flapsOf(worn).map(([, { outline }]) => outline);
  const over = flat.map((path) => foldPath(path, worn.fold, 1));
  const rest = [worn.front, worn.stand].filter((path) => path !== null);
  const { min, max } = boxOf([...flat, ...over, ...rest], MARGIN);
  return { min: { x: min.x, y: min.y - FOOT }, max };
}

/** The cloth that stays: the front, carried down to the foot of the sheet, and the stand. */
function clothUnder({ front, stand }: Worn, { min }: Box): readonly Part[] {
  return [
    ...(front ? [cloth('front', closedBy(front, footOf(front, min.y)), 'right')] : []),
    ...(stand ? [cloth('stand', stand, 'right')] : []),
  ];
}

/** Where the front's two edges leave the sheet. */
function footOf(front: Path, y: number): readonly [Point, Point] {
  return [
    { x: endOf(front).x, y },
    { x: startOf(front).x, y },
  ];
}

function linesUnder(worn: Worn, box: Box, { over, level }: WornNames): readonly Part[] {
  const { front, seam } = worn;
  const [low, high] = foldEnds(worn);
  const above = seam ? [curve('neck-seam', 'given', seam)] : [];
  const edge = front ? [run('front-edge', 'given', startOf(front), { x: startOf(front).x, y: box.min.y })] : [];
  const levels = worn.level ? [run(level, 'given', ...acrossAt(worn.level.through.y, box))] : [];
  return [...above, ...edge, ...levels, run(over, 'roll', low, high)];
}

/** The ends of the fold line: as far as anything turns on it. */
function foldEnds({ fold, lapel, collar }: Worn): readonly [Point, Point] {
  const stations = [lapel, collar].flatMap((flap) =>
    flap ? flap.outline.map(({ p0 }) => stationOf(fold, footOn(fold, p0))) : [],
  );
  const at = (station: number): Point => add(fold.through, scale(fold.direction, station));
  return [at(Math.min(...stations)), at(Math.max(...stations))];
}

function acrossAt(y: number, { min, max }: Box): readonly [Point, Point] {
  return [
    { x: min.x, y },
    { x: max.x, y },
  ];
}

function notchParts({ notch, level, fold }: Worn, fraction: number): readonly Part[] {
  if (!notch) return [];
  // A mark that did not turn over stays where it is.
  const at = notch.flat === notch.worn ? notch.flat : foldPoint(notch.flat, fold, fraction);
  const there = mark('notch', 'made', at);
  if (fraction < 1 || !level || Math.abs(notch.below) < 0.5) return [there];
  return [{ kind: 'arrow', name: 'notch-drop', tone: 'given', from: footOn(level, notch.worn), to: notch.worn }, there];
}

function labelsOf(worn: Worn, fraction: number, box: Box, names: WornNames): readonly Label[] {
  const { notch, level, fold } = worn;
  const [low, high] = foldEnds(worn);
  const labels: Label[] = [nameOf([low, high], names.over, 'roll')];
  if (level) labels.push(nameOf(acrossAt(level.through.y, box), names.level, 'given'));
  if (fraction > 0 && fraction < 1) return labels;
  for (const [name, { edge }] of flapsOf(worn)) {
    labels.push(words(runBeside(foldPath(edge, fold, fraction), 0.2, 0.5), `views.${name}`, 'made'));
  }
  if (!notch) return labels;
  const at = fraction === 1 ? notch.worn : notch.flat;
  labels.push(nameOf(at, 'notch', 'made'));
  if (fraction === 1 && level && Math.abs(notch.below) >= 0.5) {
    const drop = [footOn(level, notch.worn), notch.worn] as const;
    labels.push({ by: drop, words: offWords(notch.below), tone: 'given', of: 'notch-drop' });
  }
  return labels;
}

function offWords(below: number): Message {
  return below > 0
    ? message('views.off-below', { off: { mm: below } })
    : message('views.off-above', { off: { mm: -below } });
}

function sayWorn(worn: Worn, fraction: number, names: WornNames): Message {
  const flaps = worn.lapel && worn.collar ? 'both' : worn.lapel ? 'lapel' : 'collar';
  const over = { named: names.over };
  if (fraction === 0) return message('views.worn-shows-flat', { flaps, over });
  if (fraction === 1) return message('views.worn-shows', { flaps, over });
  return message('views.worn-shows-part', { flaps, over, angle: { radians: Math.PI * fraction } });
}

/** Where the notch will sit, in a sentence; null without a notch. */
export function sayNotch({ notch }: Worn, names: WornNames): Message | null {
  if (!notch) return null;
  const [called, level] = [{ named: 'notch' }, { named: names.level }];
  if (Math.abs(notch.below) < 0.5) return message('views.notch-on', { notch: called, level });
  return notch.below > 0
    ? message('views.notch-below', { notch: called, level, off: { mm: notch.below } })
    : message('views.notch-above', { notch: called, level, off: { mm: -notch.below } });
}
