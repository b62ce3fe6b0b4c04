import { bodyCloth, bodyHelp, breakPoint, lapel, lapelHelp, overlapEdge, rollLine } from './front.ts';
import type { Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

/** Both ends of the roll line to take hold of, and the lapel as worn. */
export const rollDrag: Scene = {
  id: 'roll-drag',
  order: { person: 'ravi', style: usualStyle },
  steps: [...overlapEdge, ...breakPoint, ...rollLine, ...lapel, ...bodyCloth],
  shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point', 'shoulder-tip'],
  help: ['lapel'],
  hides: [...lapelHelp, ...bodyHelp, 'break-level'],
  labels: ['centre-front', 'overlap-edge', 'break-point', 'roll-line', 'neck-point', 'stand-point'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box: { min: { x: -140, y: -60 }, max: { x: 225, y: 475 } },
};

/** The shoulder, enlarged: how far past the neck point the roll line passes. */
export const rollStand: Scene = {
  id: 'roll-stand',
  order: { person: 'ravi', style: usualStyle },
  steps: [
    ...overlapEdge,
    ...breakPoint,
    ...rollLine,
    { verb: 'tape', name: 'past', from: 'neck-point', to: 'stand-point' },
  ],
  shows: ['shoulder-line', 'neck-point', 'front-neckline', 'back-neckline'],
  hides: ['break-level', 'overlap-edge'],
  labels: ['shoulder-line', 'front-neckline', 'back-neckline', 'neck-point', 'stand-point', 'roll-line'],
  box: { min: { x: -15, y: 355 }, max: { x: 165, y: 480 } },
};

/** The collar cut through at the side of the neck: stand, fold and fall. */
export const rollSection: Scene = {
  id: 'roll-section',
  order: { person: 'ravi', style: usualStyle },
  steps: [
    { verb: 'pencil', name: 'neck-seam', at: [0, 0] },
    { verb: 'pencil', name: 'on-shoulder', at: [92, -38] },
    { verb: 'rule', name: 'shoulder-cut', from: 'neck-seam', to: 'on-shoulder' },
    { verb: 'pencil', name: 'under-ear', at: [-16, 60] },
    { verb: 'pencil', name: 'neck-foot', at: [-4, -2] },
    { verb: 'rule', name: 'neck-cut', from: 'neck-foot', to: 'under-ear' },
    { verb: 'parallel', name: 'collar-run', to: 'neck-cut', through: 'neck-seam' },
    { verb: 'along', name: 'fold', on: 'collar-run', from: 'neck-seam', distance: 'stand', toward: 'up' },
    { verb: 'compass', name: 'collar-edge', about: 'fold', radius: 'fall', on: 'shoulder-cut', near: 'right' },
    { verb: 'seam', name: 'stand-cut', run: ['neck-seam', 'fold'] },
    { verb: 'curve', name: 'fall-cut', through: ['fold', 'collar-edge'] },
  ],
  shows: [],
  hides: ['neck-foot', 'under-ear', 'on-shoulder', 'collar-run'],
  help: [],
  labels: ['neck-cut', 'shoulder-cut', 'neck-seam', 'fold', 'collar-edge'],
  box: { min: { x: -55, y: -45 }, max: { x: 95, y: 62 } },
};
