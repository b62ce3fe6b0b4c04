import type { Step } from '../../drafting/step.ts';
import { behind } from './behind.ts';
import { toRollLine } from './collar.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

/** Stand and fall dragged at the centre back: does the edge cover the seam? */
export const fallSection: Scene = {
  // The stand, the turn, and the eighth of an inch that the edge should pass the seam by.
  ...behind('fall-section', 'fall', { fall: '1 5/8 in' }),
  handles: [
    { drags: 'measure', measure: 'fall', by: 'collar-edge', from: 26, to: 62 },
    { drags: 'measure', measure: 'stand', by: 'fold', from: 20, to: 48 },
  ],
};

/** The turn of the cloth dragged: by the house rule the fall makes up for it. */
export const turnSection: Scene = {
  ...behind('turn-section', 'stand + cover-by-rule'),
  handles: [{ drags: 'measure', measure: 'cloth-turn', by: 'fall-top', from: 2, to: 12 }],
};

const strip: readonly Step[] = [
  { verb: 'tape', name: 'back-neck', along: 'back-neckline' },
  { verb: 'parallel', name: 'neck-line', to: 'roll-line', through: 'neck-point' },
  { verb: 'along', name: 'back-end', on: 'neck-line', from: 'neck-point', distance: 'back-neck', toward: 'up' },
];

/** The back neck laid on beside the roll line, and the collar's width. */
export const backLaid: Scene = {
  id: 'back-laid',
  order: orderOf('amara', usualStyle),
  steps: [
    ...toRollLine,
    ...strip,
    { verb: 'square', name: 'across-back', to: 'neck-line', through: 'back-end' },
    {
      verb: 'along',
      name: 'outer-back',
      on: 'across-back',
      from: 'back-end',
      distance: 'stand + fall',
      toward: 'left',
    },
    { verb: 'square', name: 'across-neck', to: 'neck-line', through: 'neck-point' },
    {
      verb: 'along',
      name: 'outer-neck',
      on: 'across-neck',
      from: 'neck-point',
      distance: 'stand + fall',
      toward: 'left',
    },
    { verb: 'seam', name: 'strip', run: ['neck-point', 'back-end', 'outer-back', 'outer-neck', 'neck-point'] },
    { verb: 'cross', name: 'fold-back', one: 'across-back', other: 'roll-line' },
    { verb: 'tape', name: 'width', from: 'back-end', to: 'outer-back' },
  ],
  handles: [{ drags: 'measure', measure: 'fall', by: 'outer-back', from: 25, to: 75 }],
  shows: ['shoulder-line', 'neck-point', 'back-neckline', 'back-neck-point', 'centre-back'],
  help: ['neck-line'],
  hides: ['overlap-edge', 'break-level', 'break-point', 'across-back', 'across-neck', 'outer-neck', 'fold-back'],
  labels: ['neck-point', 'back-neckline', 'centre-back', 'back-end', 'outer-back', 'roll-line'],
  cloth: [{ outline: 'strip', side: 'right' }],
  box: { min: { x: -75, y: 345 }, max: { x: 190, y: 558 } },
};

/** Stand, fall and width by the house rule, and the back neck laid on. */
export const workedStandFall: Scene = {
  id: 'worked-stand-fall',
  order: orderOf(
    'kerttu',
    { ...usualStyle, stand: '1 1/2 in', fall: '2 in', 'cloth-turn': '3/8 in' },
    { 'cover-rule': 'eighth-inch-and-turn' },
  ),
  begins: 'crease-point',
  steps: [
    ...toRollLine,
    {
      verb: 'along',
      name: 'crease-point',
      on: 'centre-back',
      from: 'back-neck-point',
      distance: 'stand',
      toward: 'left',
    },
    { verb: 'tape', name: 'collar-fall', length: 'stand + cover-by-rule' },
    {
      verb: 'along',
      name: 'edge-point',
      on: 'centre-back',
      from: 'crease-point',
      distance: 'collar-fall',
      toward: 'right',
    },
    { verb: 'tape', name: 'collar-width', length: 'stand + collar-fall' },
    ...strip,
  ],
  shows: ['shoulder-line', 'neck-point', 'shoulder-tip', 'back-neckline', 'back-neck-point', 'centre-back'],
  help: ['neck-line'],
  hides: ['overlap-edge', 'break-level', 'break-point'],
  labels: ['neck-point', 'back-neck-point', 'crease-point', 'edge-point', 'back-end', 'roll-line', 'centre-back'],
  box: { min: { x: -40, y: 380 }, max: { x: 200, y: 580 } },
};
