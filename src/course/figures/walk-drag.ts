import type { Step } from '../../drafting/step.ts';
import { collarHelp, collarShape, edgeEase, front, frontHelp, longEdge, neckEdge, swing } from './collar.ts';
import { pieceOrder } from './collar-piece.ts';
import { placeOf, type Scene } from './scene.ts';

/** Where the two ends of the neck edge may be brought, three eighths of an inch either way. */
const slides: readonly Step[] = [
  {
    verb: 'along',
    name: 'back-too-near',
    on: 'back-edge',
    from: 'neck-point',
    distance: 'back-neck - 3/8 in',
    toward: 'past-back',
  },
  {
    verb: 'along',
    name: 'back-too-far',
    on: 'back-edge',
    from: 'neck-point',
    distance: 'back-neck + 3/8 in',
    toward: 'past-back',
  },
  { verb: 'seam', name: 'back-slide', run: [{ along: 'back-edge', from: 'back-too-near', to: 'back-too-far' }] },
  { verb: 'along', name: 'front-too-near', on: 'gorge', from: 'notch', distance: '3/8 in', toward: 'right' },
  { verb: 'along', name: 'front-too-far', on: 'gorge', from: 'notch', distance: '3/8 in', toward: 'left' },
  { verb: 'seam', name: 'front-slide', run: ['front-too-near', 'front-too-far'] },
];

const toLongEdge: readonly Step[] = [...front, ...edgeEase, ...swing, ...longEdge];

/** A collar whose neck edge may be given any length, walked. */
export const walkDrag: Scene = {
  id: 'walk-drag',
  order: pieceOrder,
  steps: [
    ...toLongEdge,
    ...slides,
    {
      verb: 'pencil',
      name: 'collar-back',
      at: placeOf(pieceOrder, [...front, ...edgeEase, ...swing, ...neckEdge], 'collar-back'),
    },
    { verb: 'pencil', name: 'collar-front', at: placeOf(pieceOrder, front, 'notch') },
    { verb: 'square', name: 'collar-centre-back', to: 'back-edge', through: 'collar-back' },
    {
      verb: 'seam',
      name: 'collar-neck-edge',
      run: [
        { along: 'back-edge', from: 'collar-back', to: 'neck-point' },
        'neck-point',
        'gorge-corner',
        'collar-front',
      ],
    },
    ...collarShape.map((step): Step => {
      if (step.name === 'end-line') return { verb: 'square', name: 'end-line', to: 'gorge', through: 'collar-front' };
      if (step.name === 'collar-point')
        return {
          verb: 'along',
          name: 'collar-point',
          on: 'end-line',
          from: 'collar-front',
          distance: 'collar-end',
          toward: 'up',
        };
      return step;
    }),
    { verb: 'seam', name: 'front-seam', run: ['neck-point', 'gorge-corner', 'notch'] },
    { verb: 'tape', name: 'front-neck', along: 'front-seam' },
    { verb: 'tape', name: 'behind', along: 'collar-neck-edge', from: 'collar-back', to: 'neck-point' },
    { verb: 'tape', name: 'before', along: 'collar-neck-edge', from: 'neck-point', to: 'collar-front' },
    { verb: 'seam', name: 'collar-end-edge', run: ['collar-front', 'collar-point'] },
    { verb: 'seam', name: 'back-cut', run: ['collar-back', 'outer-back'] },
  ],
  handles: [
    { drags: 'mark', mark: 'collar-back', along: 'back-slide' },
    { drags: 'mark', mark: 'collar-front', along: 'front-slide' },
  ],
  shows: ['shoulder-line', 'neck-point'],
  help: ['back-slide', 'front-slide'],
  hides: [
    ...frontHelp,
    ...collarHelp,
    'break-point',
    'lapel-point',
    'lapel-edge',
    'roll-line',
    'back-too-near',
    'back-too-far',
    'front-too-near',
    'front-too-far',
    'front-seam',
    'gorge-corner',
    'outer-back',
    'collar-point',
    'notch',
  ],
  labels: ['neck-point', 'collar-back', 'collar-front', 'collar-neck-edge', 'outer-edge'],
  box: { min: { x: -95, y: 335 }, max: { x: 155, y: 560 } },
  view: { shows: 'walk' },
};
