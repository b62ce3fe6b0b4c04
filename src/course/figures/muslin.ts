import type { Name, Step } from '../../drafting/step.ts';
import { wholeCollar } from './collar.ts';

/** The rough piece for half a collar, 5 by 10 in: laid 1 in past the centre back and 1 in below it, square to it. */
export const roughPiece: readonly Step[] = [
  ...wholeCollar,
  { verb: 'square', name: 'back-run', to: 'collar-centre-back', through: 'collar-back' },
  { verb: 'parallel', name: 'low-cut', to: 'back-run', distance: '1 in', side: 'right' },
  { verb: 'parallel', name: 'high-cut', to: 'low-cut', distance: '5 in', side: 'left' },
  { verb: 'parallel', name: 'past-back-cut', to: 'collar-centre-back', distance: '1 in', side: 'up' },
  { verb: 'parallel', name: 'front-cut', to: 'past-back-cut', distance: '10 in', side: 'down' },
  { verb: 'cross', name: 'low-back', one: 'low-cut', other: 'past-back-cut' },
  { verb: 'cross', name: 'high-back', one: 'high-cut', other: 'past-back-cut' },
  { verb: 'cross', name: 'high-front', one: 'high-cut', other: 'front-cut' },
  { verb: 'cross', name: 'low-front', one: 'low-cut', other: 'front-cut' },
  { verb: 'seam', name: 'rough-piece', run: ['low-back', 'high-back', 'high-front', 'low-front', 'low-back'] },
];

export const roughHide: readonly Name[] = [
  ...[
    'back-run',
    'low-cut',
    'high-cut',
    'past-back-cut',
    'front-cut',
    'low-back',
    'high-back',
    'high-front',
    'low-front',
  ],
];
