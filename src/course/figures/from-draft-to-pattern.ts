import type { Name, Step } from '../../drafting/step.ts';
import { collarHelp, front, frontHelp, lapelCloth, wholeCollar } from './collar.ts';
import { collarPiece } from './collar-piece.ts';
import { bodyCloth, bodyHelp } from './front.ts';
import { layers, layersHide } from './layers.ts';
import { cutCollar, cutHides, netCollar } from './pattern-piece.ts';
import { orderOf, placeOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

/** Two layers turned over one fold: the outer one has the longer way. */
export const patternLayers: Scene = {
  id: 'pattern-layers',
  order: orderOf('yusuf', {}),
  steps: layers(2, 'under-length'),
  handles: [
    { drags: 'mark', mark: 'top-start', along: 'seam-level', within: { min: { x: -5, y: 0 }, max: { x: -1, y: 0 } } },
  ],
  shows: [],
  given: ['neck-seam'],
  hides: [...layersHide, 'under-end'],
  labels: ['neck-seam', 'under-collar', 'top-collar', 'top-end'],
  cloth: [{ outline: 'wearer', side: 'right' }],
  box: { min: { x: -24, y: -18 }, max: { x: 40, y: 44 } },
};

const facingStyle = { ...usualStyle, 'cloth-turn': '1/4 in' };

/** The facing's lapel opened along the roll line: nothing at the break, the turn of the cloth at the top. */
const openedFacing: readonly Step[] = [
  { verb: 'tape', name: 'roll-length', from: 'break-point', to: 'roll-top' },
  ...(['lapel-point', 'lapel-edge', 'roll-top'] as const).map(
    (what): Step => ({
      verb: 'swing',
      name: `facing-${what}`,
      what,
      about: 'break-point',
      by: 'cloth-turn',
      at: 'roll-length',
      turn: 'anticlockwise',
    }),
  ),
  { verb: 'along', name: 'inside-top', on: 'shoulder-line', from: 'neck-point', distance: '1 1/2 in', toward: 'right' },
  { verb: 'cross', name: 'edge-foot', one: 'overlap-edge', other: 'foot' },
  { verb: 'along', name: 'inside-foot', on: 'foot', from: 'edge-foot', distance: '3 1/2 in', toward: 'right' },
  {
    verb: 'curve',
    name: 'facing-inside',
    through: ['inside-top', 'inside-foot'],
    leave: { square: 'shoulder-line' },
    arrive: { along: 'centre-front' },
  },
  {
    verb: 'seam',
    name: 'facing',
    run: [
      'inside-top',
      'neck-point',
      'gorge-corner',
      'roll-top',
      'facing-roll-top',
      'facing-lapel-point',
      'facing-lapel-edge',
      'break-point',
      'edge-foot',
      'inside-foot',
      'facing-inside',
      'inside-top',
    ],
  },
  { verb: 'tape', name: 'beyond', from: 'lapel-point', to: 'facing-lapel-point' },
];

/** The facing over its front: larger by the turn along the lapel, and by nothing below the break. */
export const patternFacing: Scene = {
  id: 'pattern-facing',
  order: orderOf('ingrid', facingStyle),
  steps: [...front, ...lapelCloth, ...bodyCloth, ...openedFacing],
  handles: [{ drags: 'measure', measure: 'cloth-turn', by: 'facing-roll-top', from: 2, to: 12 }],
  shows: ['shoulder-line', 'neck-point'],
  given: ['lapel'],
  hides: [
    ...frontHelp,
    ...bodyHelp,
    ...['lapel-worn', 'lapel-edge', 'roll-top', 'gorge-corner', 'notch', 'inside-top', 'inside-foot', 'edge-foot'],
    ...['facing-lapel-edge', 'facing-inside', 'neck-edge', 'front-edge'],
  ],
  labels: ['lapel-point', 'break-point', 'roll-line', 'neck-point'],
  cloth: [{ outline: 'facing', side: 'right' }],
  box: { min: { x: -140, y: -60 }, max: { x: 190, y: 525 } },
};

const collarStyle = { ...usualStyle, fall: '1 7/8 in', 'gorge-depth': '2 1/8 in', 'collar-end': '1 5/8 in' };
const collarOrder = orderOf('tane', collarStyle);
const atSeam: readonly Step[] = [
  ...wholeCollar,
  {
    verb: 'along',
    name: 'least',
    on: 'collar-centre-back',
    from: 'outer-back',
    distance: '4 mm',
    toward: 'left',
  },
  {
    verb: 'along',
    name: 'most',
    on: 'collar-centre-back',
    from: 'outer-back',
    distance: '20 mm',
    toward: 'left',
  },
  { verb: 'along', name: 'usual', on: 'collar-centre-back', from: 'outer-back', distance: '3/8 in', toward: 'left' },
];
const draftHide: readonly Name[] = [
  ...frontHelp,
  ...collarHelp,
  ...['break-point', 'roll-line', 'lapel-point', 'lapel-edge', 'gorge-corner'],
];

/** A top collar with its seam allowance: the cut edge is not as long as the line that is sewn. */
export const patternAllowance: Scene = {
  id: 'pattern-allowance',
  order: collarOrder,
  steps: [
    ...atSeam,
    { verb: 'seam', name: 'allowance-way', run: ['least', 'most'] },
    { verb: 'pencil', name: 'cut-mark', at: placeOf(collarOrder, atSeam, 'usual') },
    { verb: 'tape', name: 'allowance', from: 'outer-back', to: 'cut-mark' },
    ...netCollar,
    ...cutCollar('allowance'),
    { verb: 'tape', name: 'sewn-length', along: 'collar-neck-edge' },
    { verb: 'tape', name: 'cut-length', along: 'neck-cut' },
  ],
  handles: [{ drags: 'mark', mark: 'cut-mark', along: 'allowance-way' }],
  shows: ['neck-point'],
  hides: [...draftHide, ...cutHides, 'least', 'most', 'usual', 'allowance-way', 'collar-point', 'outer-back'],
  labels: ['neck-point', 'collar-back', 'notch', 'cutting-line', 'collar-neck-edge', 'outer-edge'],
  cloth: [{ outline: 'cutting-line', side: 'right' }],
  box: { min: { x: -75, y: 350 }, max: { x: 160, y: 635 } },
};

/** One collar and its two grains: the top collar’s along the centre back, the under collar’s on the bias. */
export const patternGrain: Scene = {
  id: 'pattern-grain',
  order: collarOrder,
  steps: [
    ...wholeCollar,
    ...netCollar,
    { verb: 'part', name: 'middle-edge', from: 'neck-point', to: 'over-shoulder', fraction: '1/2' },
    { verb: 'part', name: 'middle-back', from: 'collar-back', to: 'outer-back', fraction: '1/2' },
    { verb: 'part', name: 'grain-place', from: 'middle-back', to: 'middle-edge', fraction: '1/3' },
    { verb: 'parallel', name: 'straight-way', to: 'collar-centre-back', through: 'grain-place' },
    {
      verb: 'slant',
      name: 'bias-way',
      to: 'collar-centre-back',
      angle: '45 deg',
      turn: 'clockwise',
      through: 'grain-place',
    },
    ...(['straight', 'bias'] as const).flatMap((way): readonly Step[] => [
      ...(['left', 'right'] as const).map(
        (toward): Step => ({
          verb: 'along',
          name: `${way}-${toward}`,
          on: `${way}-way`,
          from: 'grain-place',
          distance: '26 mm',
          toward,
        }),
      ),
      { verb: 'seam', name: `${way}-grain`, run: [`${way}-left`, `${way}-right`] },
    ]),
  ],
  shows: ['neck-point'],
  hides: [
    ...draftHide,
    ...['back-part', 'collar-piece', 'middle-edge', 'middle-back', 'grain-place', 'straight-way', 'bias-way'],
    ...['straight-left', 'straight-right', 'bias-left', 'bias-right', 'collar-point', 'outer-back', 'notch'],
  ],
  labels: ['collar-back', 'straight-grain', 'bias-grain', 'collar-neck-edge'],
  cloth: [{ outline: 'collar-piece', side: 'right' }],
  box: { min: { x: -75, y: 350 }, max: { x: 160, y: 635 } },
};

/** The top collar from the under collar: what lies beyond the fold is moved out, square to it, by the turn of the cloth. */
const opened: readonly Step[] = [
  moved('top-back', 'outer-back', 'collar-centre-back'),
  { verb: 'square', name: 'shoulder-square', to: 'outer-edge', through: 'over-shoulder' },
  moved('top-shoulder', 'over-shoulder', 'shoulder-square'),
  { verb: 'square', name: 'point-square', to: 'roll-line', through: 'collar-point' },
  moved('top-point', 'collar-point', 'point-square'),
  {
    verb: 'curve',
    name: 'top-edge',
    through: ['top-back', 'top-shoulder', 'top-point'],
    leave: { square: 'collar-centre-back' },
  },
];

function moved(name: Name, from: Name, on: Name): Step {
  return { verb: 'along', name, on, from, distance: 'cloth-turn', toward: 'left' };
}

/** From one draft the under collar, and the top collar by the turn of the cloth; then the allowance. */
export const workedPattern: Scene = {
  id: 'worked-pattern',
  order: orderOf('yusuf', { ...collarStyle, fall: '2 1/16 in', 'cloth-turn': '1/4 in' }),
  begins: 'under-width',
  steps: [
    ...wholeCollar,
    ...collarPiece,
    { verb: 'tape', name: 'under-width', from: 'collar-back', to: 'outer-back' },
    ...opened,
    { verb: 'tape', name: 'top-width', from: 'collar-back', to: 'top-back' },
    { verb: 'tape', name: 'under-edge-length', along: 'outer-edge' },
    { verb: 'tape', name: 'top-edge-length', along: 'top-edge' },
    { verb: 'tape', name: 'allowance', length: '3/8 in' },
    { verb: 'offset', name: 'edge-cut', of: 'top-edge', distance: 'allowance', side: 'left' },
  ],
  shows: ['neck-point'],
  help: ['edge-cut', 'collar-centre-back', 'shoulder-square', 'point-square'],
  hides: [
    'collar-piece',
    ...draftHide.filter((name) => !['collar-centre-back', 'roll-line', 'over-shoulder'].includes(name)),
  ],
  labels: ['outer-back', 'over-shoulder', 'collar-point', 'top-back', 'top-point', 'top-edge', 'notch', 'roll-line'],
  box: { min: { x: -75, y: 395 }, max: { x: 150, y: 650 } },
};
