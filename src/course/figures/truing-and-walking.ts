import type { Step } from '../../drafting/step.ts';
import { collarHelp, collarShape, edgeEase, front, frontHelp, neckEdge, swing, wholeCollar } from './collar.ts';
import { besideShoulder, collarPiece, pieceHides, pieceOrder } from './collar-piece.ts';
import { orderOf, placeOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const deep = orderOf('amara', { ...usualStyle, fall: '2 in', 'lapel-width': '4 in', 'collar-end': '1 3/4 in' });

/** The neck edge with the dip dragged out of it, or deeper. */
export const dipDrag: Scene = {
  id: 'dip-drag',
  order: deep,
  steps: [
    ...front,
    ...edgeEase,
    ...swing,
    ...neckEdge.map(
      (step): Step => (step.name === 'collar-neck-edge' ? { ...step, name: 'edge-as-it-should-be' } : step),
    ),
    { verb: 'square', name: 'dip-line', to: 'neck-line', through: 'neck-point' },
    { verb: 'along', name: 'dip-deep', on: 'dip-line', from: 'neck-point', distance: '1/8 in', toward: 'left' },
    { verb: 'along', name: 'dip-full', on: 'dip-line', from: 'neck-point', distance: '3/16 in', toward: 'right' },
    { verb: 'seam', name: 'dip-slide', run: ['dip-deep', 'dip-full'] },
    { verb: 'pencil', name: 'edge-here', at: placeOf(deep, front, 'neck-point') },
    {
      verb: 'curve',
      name: 'long-drawn',
      through: ['past-back', 'mid-back', 'edge-here', 'gorge-corner'],
      leave: { along: 'back-line' },
      arrive: { along: 'neck-line' },
    },
    { verb: 'along', name: 'drawn-back', on: 'long-drawn', from: 'collar-back', distance: '0 mm', toward: 'mid-back' },
    {
      verb: 'seam',
      name: 'collar-neck-edge',
      run: [{ along: 'long-drawn', from: 'drawn-back', to: 'gorge-corner' }, 'gorge-corner', 'notch'],
    },
    ...collarShape,
    {
      verb: 'seam',
      name: 'collar-piece',
      run: ['drawn-back', 'collar-neck-edge', 'notch', 'collar-point', 'outer-edge', 'outer-back', 'drawn-back'],
    },
    { verb: 'tape', name: 'off', from: 'neck-point', to: 'edge-here' },
  ],
  handles: [{ drags: 'mark', mark: 'edge-here', along: 'dip-slide' }],
  shows: ['shoulder-line', 'neck-point'],
  right: ['edge-as-it-should-be'],
  help: ['dip-slide'],
  hides: [
    ...pieceHides,
    'dip-line',
    'dip-deep',
    'dip-full',
    'long-drawn',
    'drawn-back',
    'outer-edge',
    'collar-back',
    'gorge-corner',
  ],
  labels: ['neck-point', 'collar-neck-edge'],
  cloth: [{ outline: 'collar-piece', side: 'right' }],
  box: besideShoulder,
};

const overShoulder: readonly Step[] = wholeCollar.slice(0, -1);

/** The outer edge, narrower or fuller over the shoulder. */
export const shoulderDrag: Scene = {
  id: 'shoulder-drag',
  order: pieceOrder,
  steps: [
    ...overShoulder.map((step): Step => (step.name === 'over-shoulder' ? { ...step, name: 'full-width' } : step)),
    { verb: 'rule', name: 'across-shoulder', from: 'neck-point', to: 'full-width' },
    {
      verb: 'along',
      name: 'too-narrow',
      on: 'across-shoulder',
      from: 'full-width',
      distance: '3/4 in',
      toward: 'neck-point',
    },
    { verb: 'along', name: 'too-full', on: 'across-shoulder', from: 'full-width', distance: '3/4 in', toward: 'left' },
    { verb: 'seam', name: 'width-slide', run: ['too-narrow', 'too-full'] },
    { verb: 'pencil', name: 'over-shoulder', at: placeOf(pieceOrder, wholeCollar, 'over-shoulder') },
    ...wholeCollar.slice(-1),
    { verb: 'tape', name: 'across', from: 'neck-point', to: 'over-shoulder' },
    { verb: 'tape', name: 'width', length: 'stand + fall' },
    ...collarPiece,
  ],
  handles: [{ drags: 'mark', mark: 'over-shoulder', along: 'width-slide' }],
  shows: ['shoulder-line', 'neck-point'],
  help: ['width-slide'],
  hides: [
    ...pieceHides.filter((name) => !['over-shoulder', 'roll-line'].includes(name)),
    'across-shoulder',
    'full-width',
    'too-narrow',
    'too-full',
    'gorge-corner',
    'collar-back',
  ],
  labels: ['neck-point', 'outer-edge', 'collar-neck-edge', 'over-shoulder'],
  cloth: [{ outline: 'collar-piece', side: 'right' }],
  box: { min: { x: -95, y: 335 }, max: { x: 155, y: 560 } },
  view: { shows: 'worn' },
};

/** A neck edge trued and walked, on square shoulders. */
export const workedTruing: Scene = {
  id: 'worked-truing',
  order: orderOf('ingrid', { ...usualStyle, 'lapel-width': '4 in' }),
  begins: 'past-back',
  steps: [
    ...front,
    ...edgeEase,
    ...swing,
    ...neckEdge,
    { verb: 'tape', name: 'collar-behind', along: 'collar-neck-edge', from: 'collar-back', to: 'neck-point' },
    { verb: 'seam', name: 'front-seam', run: ['neck-point', 'gorge-corner', 'notch'] },
    { verb: 'tape', name: 'front-neck', along: 'front-seam' },
    { verb: 'tape', name: 'collar-before', along: 'collar-neck-edge', from: 'neck-point', to: 'notch' },
  ],
  shows: ['shoulder-line', 'neck-point', 'back-neckline', 'back-neck-point', 'centre-back'],
  help: ['back-line', 'back-edge', 'collar-centre-back'],
  hides: [
    ...frontHelp,
    ...collarHelp.filter(
      (name) => !['back-line', 'past-back', 'mid-back', 'back-edge', 'collar-centre-back'].includes(name),
    ),
    'break-point',
    'lapel-point',
    'lapel-edge',
    'front-seam',
  ],
  labels: [
    'neck-point',
    'gorge-corner',
    'notch',
    'collar-back',
    'past-back',
    'mid-back',
    'collar-neck-edge',
    'collar-centre-back',
  ],
  box: { min: { x: -80, y: 380 }, max: { x: 190, y: 625 } },
};
