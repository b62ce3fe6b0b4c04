import type { Name, Step } from '../../drafting/step.ts';
import { collarHelp, frontHelp } from './collar.ts';

/** All round the collar, to lay its cloth, and its two short edges. Needs the whole collar. */
export const collarPiece: readonly Step[] = [
  {
    verb: 'seam',
    name: 'collar-piece',
    run: ['collar-back', 'collar-neck-edge', 'notch', 'collar-point', 'outer-edge', 'outer-back', 'collar-back'],
  },
  { verb: 'seam', name: 'collar-end-edge', run: ['notch', 'collar-point'] },
  { verb: 'seam', name: 'back-cut', run: ['collar-back', 'outer-back'] },
];

/** What of a whole collar is hidden where only its neck edge is looked at. */
export const pieceHides: readonly Name[] = [
  ...frontHelp,
  ...collarHelp,
  'break-point',
  'lapel-point',
  'lapel-edge',
  'roll-line',
  'collar-piece',
  'collar-point',
  'outer-back',
  'notch',
];

/** The shoulder and the neck edge beside it. */
export const besideShoulder = { min: { x: 5, y: 365 }, max: { x: 145, y: 520 } };
