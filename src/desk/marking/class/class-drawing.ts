import { isDrawn } from '../../../drafting/shape.ts';
import type { Name } from '../../../drafting/step.ts';
import type { Footing } from '../../../exchange/class/laid/footing.ts';
import { laidOver, type Stray } from '../../../exchange/class/laid/stray.ts';
import type { UnderSheet } from '../../../exchange/class/laid/under-sheet.ts';
import { polyline } from '../../../geometry/path.ts';
import type { Point } from '../../../geometry/point.ts';
import { type Box, boxAbout, padded, withAspect } from '../../../table/drawing/box.ts';
import { draw } from '../../../table/drawing/draw.ts';
import type { Drawing, Label, Part } from '../../../table/drawing/drawing.ts';
import { shapeParts } from '../../../table/drawing/parts.ts';
import { message } from '../../../words/message.ts';
import type { Unit } from '../../../words/unit.ts';

/** Answers of a class that lie together because they went the same wrong way. */
export interface Gathered {
  readonly way: string;
  readonly strays: readonly Stray[];
}

/** What is laid over one another for one target. */
export interface ClassLaid {
  readonly under: UnderSheet;
  readonly shows: readonly Name[];
  readonly footing: Footing;
  readonly strays: readonly Stray[];
  readonly gathered: readonly Gathered[];
  /** Half the width of the chalk, mm; null for none. */
  readonly half: number | null;
  readonly unit: Unit;
}

/** Room about all that is laid, mm. */
const MARGIN = 14;
/** At least so much of the sheet is shown to each side of a mark, mm. */
const LEAST = 34;
/** Every picture is so many times as wide as high. */
export const ASPECT = 0.9;

/** The answers of a class over the right one, true to the sheet's scale. */
export function classDrawing({ under, shows, footing, strays, gathered, half, unit }: ClassLaid): Drawing {
  const laid = strays.map((stray) => laidOver(stray, footing));
  const box = boxOf(footing, laid.flat());
  const { givens } = under;
  const right = isDrawn(footing.right) ? footing.right : null;
  return draw(
    { ...givens, answers: new Map(), problems: [] },
    {
      given: new Set(givens.shapes.keys()),
      shows,
      unit,
      box,
      red: right === null || half === null ? [] : [{ arrow: null, band: { about: right, half } }],
      more: [
        ...laid.flatMap((places, index) => answerParts(footing, places, `draft-${index}`)),
        ...(right === null ? [] : shapeParts(right, 'right', box)),
      ],
      notes: gathered.map((one) => noteOf(one, footing)),
    },
  );
}

function boxOf({ kind, spots }: Footing, laid: readonly Point[]): Box {
  const room = kind === 'point' ? LEAST - MARGIN : 0;
  const about = spots.map(({ at }) => padded({ min: at, max: at }, room));
  const all = boxAbout([...laid, ...about.flatMap(({ min, max }) => [min, max])]);
  return withAspect(padded(all ?? { min: { x: 0, y: 0 }, max: { x: 0, y: 0 } }, MARGIN), ASPECT);
}

function answerParts({ kind }: Footing, places: readonly Point[], name: string): Part[] {
  const [first, last] = [places[0], places.at(-1)];
  if (!first || !last) return [];
  if (kind === 'point') return [{ kind: 'mark', name, tone: 'class', at: first }];
  if (kind === 'line') return [{ kind: 'line', name, tone: 'class', from: first, to: last, faint: false }];
  const path = polyline(places);
  return path ? [{ kind: 'curve', name, tone: 'class', path }] : [];
}

/** How many went a wrong way, written beside where their answers lie together. */
function noteOf({ way, strays }: Gathered, footing: Footing): Label {
  const laid = strays.map((stray) => laidOver(stray, footing));
  const middles = footing.spots.map((_, index): Point => {
    const places = laid.flatMap((one) => one[index] ?? []);
    return { x: meanOf(places.map(({ x }) => x)), y: meanOf(places.map(({ y }) => y)) };
  });
  const words = message('class.cluster', { way, count: strays.length });
  const [first] = middles;
  return { by: footing.kind === 'point' && first ? first : middles, words, tone: 'red' };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}
