import type { Step } from '../../drafting/step.ts';
import { bodyCloth, bodyHelp, breakPoint, lapel, lapelHelp, overlapEdge, rollLine } from './front.ts';
import { orderOf, placeOf, type Scene } from './scene.ts';
import { liveSection } from './section.ts';
import { usualStyle } from './styles.ts';

/** Both ends of the roll line to take hold of, and the lapel as worn. */
export const rollDrag: Scene = {
  id: 'roll-drag',
  order: orderOf('ravi', usualStyle),
  steps: [...overlapEdge, ...breakPoint, ...rollLine, ...lapel, ...bodyCloth],
  handles: [
    { drags: 'measure', measure: 'break-rise', by: 'break-point', from: 0, to: 190 },
    { drags: 'measure', measure: 'stand', by: 'stand-point', from: 12, to: 50 },
  ],
  shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point', 'shoulder-tip'],
  given: ['neck-edge'],
  help: ['lapel', 'overlap-edge'],
  hides: [...lapelHelp, ...bodyHelp, 'break-level'],
  labels: ['centre-front', 'overlap-edge', 'break-point', 'roll-line', 'neck-point', 'stand-point'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box: { min: { x: -140, y: -60 }, max: { x: 225, y: 475 } },
};

const order = orderOf('ravi', usualStyle);
/** The stand point may come to the neck point and no further. */
const [neckAcross] = placeOf(
  order,
  [{ verb: 'part', name: 'here', from: 'neck-point', to: 'shoulder-tip', fraction: '0' }],
  'here',
);
const toBreak: readonly Step[] = [...overlapEdge, ...breakPoint];

/** The shoulder, enlarged: how far past the neck point the roll line passes. */
export const rollStand: Scene = {
  id: 'roll-stand',
  order,
  steps: [
    ...toBreak,
    { verb: 'pencil', name: 'stand-point', at: placeOf(order, [...toBreak, ...rollLine], 'stand-point') },
    { verb: 'rule', name: 'roll-line', from: 'break-point', to: 'stand-point' },
    { verb: 'tape', name: 'past', from: 'neck-point', to: 'stand-point' },
  ],
  handles: [
    {
      drags: 'mark',
      mark: 'stand-point',
      along: 'shoulder-line',
      within: { min: { x: 10, y: 300 }, max: { x: neckAcross, y: 600 } },
    },
  ],
  shows: ['shoulder-line', 'neck-point', 'front-neckline', 'back-neckline'],
  hides: ['break-level', 'overlap-edge', 'break-point'],
  labels: ['shoulder-line', 'front-neckline', 'back-neckline', 'neck-point', 'stand-point', 'roll-line'],
  box: { min: { x: -15, y: 355 }, max: { x: 165, y: 480 } },
};

/** The collar cut through at the side of the neck: stand, fold and fall. */
export const rollSection: Scene = liveSection('roll-section');
