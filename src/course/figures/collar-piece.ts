import type { Name, Step } from '../../drafting/step.ts';
import { collarHelp, frontHelp } from './collar.ts';
import { orderOf } from './scene.ts';
import { usualStyle } from './styles.ts';

/** A whole collar and its lapel, as the lesson on truing looks at them. */
export const pieceOrder = orderOf('amara', { ...usualStyle, 'lapel-width': '4 in', 'collar-end': '1 3/4 in' });

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
