import type { Expression, Name, Step } from '../../drafting/step.ts';
import { collarHelp, frontHelp } from './collar.ts';
import type { Fault } from './fault.ts';
import { roughHide, roughPiece } from './muslin.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

/** How far a rough piece reaches past centre front, shoulder tip and neck point. */
interface Reach {
  readonly front: Expression;
  readonly side: Expression;
  readonly top: Expression;
}

/** A front, and the rough piece torn for it. */
function torn(id: string, { front, side, top }: Reach): Scene {
  return {
    id,
    order: orderOf('lucia', {}),
    steps: [
      { verb: 'parallel', name: 'front-cut', to: 'centre-front', distance: front, side: 'left' },
      { verb: 'parallel', name: 'tip-plumb', to: 'centre-front', through: 'shoulder-tip' },
      { verb: 'parallel', name: 'side-cut', to: 'tip-plumb', distance: side, side: 'right' },
      { verb: 'parallel', name: 'neck-level', to: 'waist', through: 'neck-point' },
      { verb: 'parallel', name: 'top-cut', to: 'neck-level', distance: top, side: 'up' },
      { verb: 'cross', name: 'front-foot', one: 'front-cut', other: 'waist' },
      { verb: 'cross', name: 'front-head', one: 'front-cut', other: 'top-cut' },
      { verb: 'cross', name: 'side-head', one: 'side-cut', other: 'top-cut' },
      { verb: 'cross', name: 'side-foot', one: 'side-cut', other: 'waist' },
      { verb: 'seam', name: 'muslin', run: ['front-foot', 'front-head', 'side-head', 'side-foot', 'front-foot'] },
    ],
    shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point', 'shoulder-tip', 'front-neckline'],
    hides: [
      ...['front-cut', 'tip-plumb', 'side-cut', 'neck-level', 'top-cut'],
      ...['front-foot', 'front-head', 'side-head', 'side-foot'],
    ],
    labels: ['centre-front', 'neck-point', 'shoulder-tip', 'waist'],
    cloth: [{ outline: 'muslin', side: 'right' }],
    box: { min: { x: -95, y: -35 }, max: { x: 315, y: 530 } },
  };
}

/** The rough piece torn with room to move it, and without. */
export const noRoom: Fault = {
  id: 'fault-no-room',
  right: torn('fault-no-room-right', { front: '3 in', side: '3 1/2 in', top: '1 1/4 in' }),
  wrong: torn('fault-no-room-wrong', { front: '0 mm', side: '0 mm', top: '0 mm' }),
};

/** Clips from the rough edge toward the neck edge, at these places along it; each ends `short` of the edge, or past it when below zero. */
function clips(places: readonly { readonly at: string; readonly short: string }[]): readonly Step[] {
  return places.flatMap(({ at, short }, index): readonly Step[] => {
    const named = (what: string): Name => `${what}-${index + 1}`;
    return [
      {
        verb: 'along',
        name: named('place'),
        on: 'collar-neck-edge',
        from: 'collar-back',
        distance: at,
        toward: 'notch',
      },
      { verb: 'square', name: named('way'), to: 'collar-neck-edge', through: named('place') },
      { verb: 'cross', name: named('begun'), one: named('way'), other: 'low-cut' },
      { verb: 'along', name: named('ended'), on: named('way'), from: named('place'), distance: short, toward: 'right' },
      { verb: 'seam', name: named('clip'), run: [named('begun'), named('ended')] },
    ];
  });
}

const places = ['back-neck * 0.3', 'back-neck * 0.65', 'back-neck', 'back-neck + 3/4 in', 'back-neck + 1 1/2 in'];

function clipped(id: string, at: (index: number) => string): Scene {
  return {
    id,
    order: orderOf('amara', { ...usualStyle, 'gorge-depth': '2 1/8 in', 'collar-end': '1 5/8 in' }),
    steps: [...roughPiece, ...clips(places.map((place, index) => ({ at: place, short: at(index) })))],
    shows: [],
    hides: [
      ...frontHelp,
      ...collarHelp,
      ...roughHide,
      ...['break-point', 'roll-line', 'lapel-point', 'lapel-edge', 'gorge-corner', 'outer-back', 'outer-edge'],
      ...['collar-point', 'collar-back', 'notch', 'rough-piece'],
      ...places.flatMap((_, index) => ['place', 'way', 'begun', 'ended'].map((what) => `${what}-${index + 1}`)),
    ],
    labels: ['collar-neck-edge'],
    cloth: [{ outline: 'rough-piece', side: 'right' }],
    box: { min: { x: 10, y: 370 }, max: { x: 150, y: 515 } },
  };
}

/** Clipped up to the neck edge, and through it. */
export const clipThrough: Fault = {
  id: 'fault-clip-through',
  right: clipped('fault-clip-through-right', () => '1/16 in'),
  wrong: clipped('fault-clip-through-wrong', (index) => (index === 2 ? '0 mm - 3/8 in' : '1/16 in')),
};
