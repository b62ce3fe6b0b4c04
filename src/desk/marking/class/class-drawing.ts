import { isDrawn } from '../../../drafting/shape.ts';
import type { Name } from '../../../drafting/step.ts';
import type { Footing } from '../../../exchange/class/laid/footing.ts';
import { laidOver, type Stray } from '../../../exchange/class/laid/stray.ts';
import type { UnderSheet } from '../../../exchange/class/laid/under-sheet.ts';
import { wayWords } from '../../../exchange/class/ways.ts';
import { polyline } from '../../../geometry/path.ts';
import type { Point } from '../../../geometry/point.ts';
import { type Box, boxAbout, padded, widthOf, withAspect } from '../../../table/drawing/box.ts';
import { draw } from '../../../table/drawing/draw.ts';
import type { Drawing, Part } from '../../../table/drawing/drawing.ts';
import { shapeParts } from '../../../table/drawing/parts.ts';
import { message } from '../../../words/message.ts';
import type { Unit } from '../../../words/unit.ts';
import { type Bundle, labelOf } from './class-labels.ts';
import { type ClassTarget, straysOf } from './class-target.ts';
import { nameInPicture } from './name-in-picture.ts';
import { beside, type Lone } from './together.ts';

/** What is laid over one another for one target. */
export interface ClassLaid {
  readonly under: UnderSheet;
  readonly shows: readonly Name[];
  readonly footing: Footing;
  readonly answers: ClassTarget;
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

/** So many of those who lie by themselves are named on the sheet. */
const NAMED = 3;
/** Whoever lies nearer to another than a picture is wide, divided by this, is counted with that one: for two names there is no room. */
const BESIDE = 60;
/** The dots of the paper are so many times smaller than a picture is wide: never as large as marks. */
const DOTS = 500;
const DOT = 0.6;

/**
 * The answers of a class over the right one, true to the sheet's scale. What belongs together is named together, with how many
 * they are; of those who lie by themselves the furthest, whose lines are firmer.
 */
export function classDrawing({ under, shows, footing, answers, half, unit }: ClassLaid): Drawing {
  const box = boxOf(
    footing,
    straysOf(answers).flatMap((stray) => laidOver(stray, footing)),
  );
  const bundles = bundlesOf(answers, footing, widthOf(box) / BESIDE);
  const { givens } = under;
  const right = isDrawn(footing.right) ? footing.right : null;
  const drawn = draw(
    { ...givens, answers: new Map(), problems: [] },
    {
      given: new Set(givens.shapes.keys()),
      shows,
      unit,
      box,
      red: right === null || half === null ? [] : [{ arrow: null, band: { about: right, half } }],
      more: [
        ...bundles.flatMap((bundle) => bundleParts(bundle, footing)),
        ...(right === null ? [] : shapeParts(right, 'right', box, RIGHT)),
      ],
      notes: bundles.flatMap((bundle) => labelOf(bundle, footing)),
    },
  );
  return { ...drawn, dot: Math.min(DOT, widthOf(box) / DOTS) };
}

/** The right answer's own name, by which right answers are called too. */
const RIGHT = 'right';

/** The answers as they are named: what most did first. */
function bundlesOf(
  { right, gathered, together, alone }: ClassTarget,
  footing: Footing,
  near: number,
): readonly Bundle[] {
  const lay = (strays: readonly Stray[]): Bundle['laid'] => strays.map((stray) => laidOver(stray, footing));
  const layAll = (lone: readonly Lone[]): Bundle['laid'] => lay(lone.map(({ stray }) => stray));
  const unnamed = alone.slice(NAMED);
  return [
    { group: RIGHT, words: message('class.cluster-right', { count: right.length }), tone: 'class', laid: lay(right) },
    ...gathered.map(({ way, strays }): Bundle => {
      const words = message('class.cluster', { way: { said: wayWords(way) }, count: strays.length });
      return { group: `way-${way}`, words, tone: 'red', laid: lay(strays) };
    }),
    ...together.map((all, index): Bundle => {
      const words = message('class.cluster-together', { count: all.length });
      return { group: `together-${index}`, words, tone: 'class', laid: layAll(all) };
    }),
    ...beside(alone.slice(0, NAMED), near).map((all, index): Bundle => {
      const name = all.slice(0, 1).map(nameInPicture).join('');
      const words = message('class.cluster-lone', { name, more: all.length - 1 });
      return { group: `lone-${index}`, words, tone: 'made', laid: layAll(all) };
    }),
    { group: 'others', words: null, tone: 'class', laid: layAll(unnamed) },
  ];
}

function bundleParts({ group, tone, laid }: Bundle, footing: Footing): readonly Part[] {
  // The words of a misreading are the marker's; its answers are the class's.
  const line = tone === 'made' ? 'made' : 'class';
  return laid.flatMap((places, index) =>
    answerParts(footing, places, `${group}-${index}`, line).map((part): Part => ({ ...part, group })),
  );
}

function boxOf({ kind, spots }: Footing, laid: readonly Point[]): Box {
  const room = kind === 'point' ? LEAST - MARGIN : 0;
  const about = spots.map(({ at }) => padded({ min: at, max: at }, room));
  const all = boxAbout([...laid, ...about.flatMap(({ min, max }) => [min, max])]);
  return withAspect(padded(all ?? { min: { x: 0, y: 0 }, max: { x: 0, y: 0 } }, MARGIN), ASPECT);
}

function answerParts({ kind }: Footing, places: readonly Point[], name: string, tone: 'class' | 'made'): Part[] {
  const [first, last] = [places[0], places.at(-1)];
  if (!first || !last) return [];
  if (kind === 'point') return [{ kind: 'mark', name, tone, at: first }];
  if (kind === 'line') return [{ kind: 'line', name, tone, from: first, to: last, faint: false }];
  const path = polyline(places);
  return path ? [{ kind: 'curve', name, tone, path }] : [];
}
