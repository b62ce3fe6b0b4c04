import type { Step } from '../../drafting/step.ts';
import { collarHelp, frontHelp } from './collar.ts';
import { collarPiece } from './collar-piece.ts';
import { drapedFront, drapedHide, drapedMarks, drapedOrder, markNames, trued } from './draped.ts';
import { roughHide, roughPiece } from './muslin.ts';
import { orderOf, placeOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const person = orderOf('lucia', {});
const edges: readonly Step[] = [
  { verb: 'parallel', name: 'front-cut', to: 'centre-front', distance: '3 in', side: 'left' },
  { verb: 'parallel', name: 'tip-plumb', to: 'centre-front', through: 'shoulder-tip' },
  { verb: 'parallel', name: 'neck-level', to: 'waist', through: 'neck-point' },
  { verb: 'cross', name: 'under-tip', one: 'tip-plumb', other: 'waist' },
  { verb: 'cross', name: 'beside-neck', one: 'centre-front', other: 'neck-level' },
];
const planned: readonly Step[] = [
  ...edges,
  { verb: 'along', name: 'side-usual', on: 'waist', from: 'under-tip', distance: '3 1/2 in', toward: 'right' },
  { verb: 'along', name: 'top-usual', on: 'centre-front', from: 'beside-neck', distance: '1 1/4 in', toward: 'up' },
];
const [side] = placeOf(person, planned, 'side-usual');
const [, above] = placeOf(person, planned, 'top-usual');

/** The rough piece for a front, planned from the figure. */
export const formMuslin: Scene = {
  id: 'form-muslin',
  order: person,
  steps: [
    ...edges,
    { verb: 'pencil', name: 'side-mark', at: [side, 0] },
    { verb: 'pencil', name: 'top-mark', at: [0, above] },
    { verb: 'parallel', name: 'side-cut', to: 'centre-front', through: 'side-mark' },
    { verb: 'parallel', name: 'top-cut', to: 'waist', through: 'top-mark' },
    { verb: 'cross', name: 'front-foot', one: 'front-cut', other: 'waist' },
    { verb: 'cross', name: 'front-head', one: 'front-cut', other: 'top-cut' },
    { verb: 'cross', name: 'side-head', one: 'side-cut', other: 'top-cut' },
    { verb: 'cross', name: 'waist-point', one: 'centre-front', other: 'waist' },
    { verb: 'seam', name: 'muslin', run: ['front-foot', 'front-head', 'side-head', 'side-mark', 'front-foot'] },
    { verb: 'tape', name: 'side-ease', from: 'under-tip', to: 'side-mark' },
    { verb: 'tape', name: 'above-neck', from: 'beside-neck', to: 'top-mark' },
    { verb: 'tape', name: 'piece-width', from: 'front-foot', to: 'side-mark' },
    { verb: 'tape', name: 'piece-height', from: 'waist-point', to: 'top-mark' },
  ],
  handles: [
    {
      drags: 'mark',
      mark: 'side-mark',
      along: 'waist',
      within: { min: { x: side - 85, y: 0 }, max: { x: side + 35, y: 0 } },
    },
    {
      drags: 'mark',
      mark: 'top-mark',
      along: 'centre-front',
      within: { min: { x: 0, y: above - 28 }, max: { x: 0, y: above + 25 } },
    },
  ],
  shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point', 'shoulder-tip', 'front-neckline', 'front-neck-point'],
  help: ['tip-plumb', 'neck-level'],
  hides: ['under-tip', 'beside-neck', 'front-foot', 'front-head', 'side-head', 'waist-point', 'muslin'],
  labels: ['centre-front', 'waist', 'front-cut', 'side-cut', 'top-cut', 'neck-point', 'shoulder-tip'],
  cloth: [{ outline: 'muslin', side: 'right' }],
  box: { min: { x: -95, y: -35 }, max: { x: 315, y: 530 } },
};

/** A neckline marked with tape: its two sides are not as long as each other. */
export const formTape: Scene = {
  id: 'form-tape',
  order: orderOf('tane', {}),
  steps: [
    { verb: 'pencil', name: 'tape-side', at: [0, 388 - 25.4 / 8] },
    { verb: 'tape', name: 'tape-width', from: 'front-neck-point', to: 'tape-side' },
    { verb: 'offset', name: 'lower-side', of: 'front-neckline', distance: 'tape-width', side: 'tape-side' },
    {
      verb: 'along',
      name: 'tape-top',
      on: 'shoulder-line',
      from: 'neck-point',
      distance: 'tape-width',
      toward: 'right',
    },
    {
      verb: 'seam',
      name: 'marking-tape',
      run: [
        'front-neck-point',
        'front-neckline',
        'neck-point',
        'tape-top',
        'lower-side',
        'tape-side',
        'front-neck-point',
      ],
    },
    { verb: 'tape', name: 'upper-length', along: 'front-neckline' },
    { verb: 'tape', name: 'lower-length', along: 'lower-side' },
    { verb: 'tape', name: 'longer', length: 'lower-length - upper-length' },
    { verb: 'protractor', name: 'turn', along: 'front-neckline' },
  ],
  handles: [
    {
      drags: 'mark',
      mark: 'tape-side',
      along: 'centre-front',
      within: { min: { x: 0, y: 388 - 13 }, max: { x: 0, y: 388 - 2 } },
    },
  ],
  shows: ['centre-front', 'shoulder-line', 'front-neckline', 'neck-point'],
  hides: ['tape-top', 'marking-tape'],
  labels: ['centre-front', 'shoulder-line', 'front-neckline', 'lower-side', 'neck-point'],
  cloth: [{ outline: 'marking-tape', side: 'other' }],
  box: { min: { x: -25, y: 360 }, max: { x: 150, y: 495 } },
};

/** The rough piece of a collar, and the half collar that has to lie in it. */
export const formCollar: Scene = {
  id: 'form-collar',
  order: orderOf('amara', { ...usualStyle, 'gorge-depth': '2 1/8 in', 'collar-end': '1 5/8 in' }),
  steps: [
    ...roughPiece,
    ...collarPiece,
    { verb: 'foot', name: 'over-point', from: 'collar-point', on: 'high-cut' },
    { verb: 'tape', name: 'left-over', from: 'collar-point', to: 'over-point' },
  ],
  handles: [{ drags: 'measure', measure: 'collar-end', by: 'collar-point', from: 25, to: 46 }],
  shows: ['neck-point'],
  hides: [
    ...frontHelp,
    ...collarHelp,
    ...roughHide,
    ...['over-point', 'collar-piece', 'break-point', 'roll-line', 'lapel-point', 'lapel-edge', 'gorge-corner'],
  ],
  labels: ['rough-piece', 'collar-back', 'outer-back', 'neck-point', 'collar-point', 'notch', 'collar-neck-edge'],
  cloth: [{ outline: 'rough-piece', side: 'right' }],
  box: { min: { x: -125, y: 280 }, max: { x: 190, y: 585 } },
};

const around = { min: { x: -60, y: 300 }, max: { x: 135, y: 480 } };

/** An edge drawn through every mark: one of them dragged, and the whole edge follows it. */
export const formMarks: Scene = {
  id: 'form-marks',
  order: drapedOrder,
  steps: [
    ...drapedFront,
    ...drapedMarks(0.7),
    { verb: 'curve', name: 'through-all', through: markNames },
    { verb: 'tape', name: 'back-neck', along: 'back-neckline' },
    { verb: 'tape', name: 'front-neck', along: 'front-neck-edge' },
    { verb: 'tape', name: 'seam-length', length: 'back-neck + front-neck' },
    { verb: 'tape', name: 'drawn-length', along: 'through-all' },
  ],
  handles: [2, 4].map((index) => {
    const [x, y] = placeOf(drapedOrder, drapedMarks(0.7), `neck-mark-${index}`);
    return {
      drags: 'mark',
      mark: `neck-mark-${index}`,
      within: { min: { x: x - 9, y: y - 9 }, max: { x: x + 9, y: y + 9 } },
    };
  }),
  shows: ['back-neckline', 'shoulder-line'],
  given: ['front-neck-edge'],
  hides: [...drapedHide, 'roll-line'],
  labels: ['neck-mark-1', 'neck-mark-2', 'neck-mark-3', 'neck-mark-4', 'neck-mark-6', 'front-neck-edge'],
  box: around,
};

/** Mei's draped collar: the neck edge trued by its marks, and walked. */
export const workedDraped: Scene = {
  id: 'form-trued',
  order: drapedOrder,
  begins: 'back-rule',
  steps: [
    ...drapedFront,
    ...drapedMarks(1.3),
    { verb: 'seam', name: 'dot-to-dot', run: markNames },
    { verb: 'tape', name: 'dotted-length', along: 'dot-to-dot' },
    ...trued,
    { verb: 'tape', name: 'edge-length', along: 'collar-neck-edge' },
    { verb: 'tape', name: 'moved', from: 'neck-mark-1', to: 'walked-end' },
  ],
  shows: ['back-neckline', 'shoulder-line'],
  given: ['front-neck-edge'],
  help: ['back-rule', 'long-edge'],
  hides: [...drapedHide, 'roll-line', 'dot-to-dot', 'past-mark'],
  labels: [
    'neck-mark-2',
    'neck-mark-3',
    'neck-mark-4',
    'neck-mark-5',
    'neck-mark-6',
    'walked-end',
    'collar-centre-back',
  ],
  box: around,
};
