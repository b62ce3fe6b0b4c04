import type { Name, Step } from '../../drafting/step.ts';
import { front, lapelCloth, lapelDesigned } from './collar.ts';
import { bodyCloth, bodyHelp } from './front.ts';
import { lapelOnly } from './plans.ts';
import { orderOf, placeOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('noor', usualStyle);
const box = { min: { x: -150, y: -60 }, max: { x: 225, y: 470 } };
const hides: readonly Name[] = [
  ...bodyHelp,
  'overlap-edge',
  'break-level',
  'notch-level',
  'notch-reach',
  'notch-worn',
  'notch',
  'neck-line',
  'gorge-corner',
  'gorge',
  'gorge-worn',
  'lapel-reach',
  'roll-top',
];

const bothSides: readonly Step[] = [
  { verb: 'fold', name: 'lapel-point', what: 'lapel-point-worn', over: 'roll-line' },
  { verb: 'fold', name: 'lapel-edge', what: 'lapel-edge-worn', over: 'roll-line' },
  ...lapelCloth,
  ...bodyCloth,
];

/** The lapel's point dragged on the body side; the cloth as it is cut answers across the roll line. */
export const lapelDesign: Scene = {
  id: 'lapel-design',
  order,
  steps: [
    ...lapelDesigned,
    { verb: 'curve', name: 'lapel-edge-worn', through: ['lapel-point-worn', 'break-point'] },
    ...bothSides,
    { verb: 'rule', name: 'fold-way', from: 'lapel-point-worn', to: 'lapel-point' },
    { verb: 'foot', name: 'fold-foot', from: 'lapel-point', on: 'roll-line' },
    { verb: 'tape', name: 'across', from: 'fold-foot', to: 'lapel-point' },
  ],
  handles: [{ drags: 'measure', measure: 'lapel-width', by: 'lapel-point-worn', from: 50, to: 125 }],
  shows: ['centre-front', 'shoulder-line', 'neck-point'],
  given: ['neck-edge'],
  help: ['fold-way', 'lapel'],
  hides: [...hides, 'lapel-edge', 'lapel-edge-worn'],
  labels: ['lapel-point-worn', 'lapel-point', 'roll-line', 'break-point'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box,
};

/** The same lapel, turning over. */
export const lapelTurns: Scene = {
  id: 'lapel-turns',
  order,
  steps: front,
  shows: [],
  labels: [],
  // Where its notch sits is the next lesson's.
  view: { shows: 'worn', alone: true, plan: lapelOnly },
  box,
};

/** The edge's middle, square to the straight edge, so that it can be bowed. */
const bowLine: readonly Step[] = [
  { verb: 'rule', name: 'straight-edge', from: 'lapel-point-worn', to: 'break-point' },
  { verb: 'part', name: 'edge-middle', from: 'lapel-point-worn', to: 'break-point', fraction: '1/2' },
  { verb: 'square', name: 'bow-line', to: 'straight-edge', through: 'edge-middle' },
];
const bowed: Step = {
  verb: 'along',
  name: 'bow-mark',
  on: 'bow-line',
  from: 'edge-middle',
  distance: '1/4 in',
  toward: 'right',
};
const bowAt = placeOf(order, [...lapelDesigned, ...bowLine, bowed], 'bow-mark');
const middleAt = placeOf(order, [...lapelDesigned, ...bowLine], 'edge-middle');

/** The lapel's edge, bowed by its middle. */
export const lapelBow: Scene = {
  id: 'lapel-bow',
  order,
  steps: [
    ...lapelDesigned,
    ...bowLine,
    { verb: 'pencil', name: 'bow-mark', at: bowAt },
    { verb: 'curve', name: 'lapel-edge-worn', through: ['lapel-point-worn', 'bow-mark', 'break-point'] },
    ...bothSides,
    { verb: 'tape', name: 'bow', from: 'edge-middle', to: 'bow-mark' },
    { verb: 'seam', name: 'edge-if-straight', run: ['lapel-point-worn', 'break-point'] },
  ],
  handles: [
    {
      drags: 'mark',
      mark: 'bow-mark',
      along: 'bow-line',
      within: { min: { x: middleAt[0] - 12, y: 0 }, max: { x: middleAt[0] + 18, y: 400 } },
    },
  ],
  shows: ['centre-front', 'shoulder-line', 'neck-point'],
  given: ['neck-edge'],
  help: ['lapel', 'edge-if-straight'],
  hides: [...hides, 'straight-edge', 'edge-middle', 'bow-line', 'lapel-point', 'lapel-point-worn', 'lapel-edge'],
  labels: ['break-point', 'roll-line'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box,
};

const workedOrder = orderOf('ingrid', { ...usualStyle, 'lapel-width': '3 1/2 in' });

/** A lapel designed as worn and folded over. */
export const workedLapel: Scene = {
  id: 'worked-lapel',
  order: workedOrder,
  begins: 'gorge-worn',
  steps: [
    ...lapelDesigned,
    { verb: 'curve', name: 'lapel-edge-worn', through: ['lapel-point-worn', 'break-point'] },
    { verb: 'fold', name: 'lapel-point', what: 'lapel-point-worn', over: 'roll-line' },
    { verb: 'fold', name: 'lapel-edge', what: 'lapel-edge-worn', over: 'roll-line' },
    { verb: 'foot', name: 'fold-foot', from: 'lapel-point', on: 'roll-line' },
    { verb: 'tape', name: 'across', from: 'fold-foot', to: 'lapel-point' },
    { verb: 'tape', name: 'edge-worn-length', along: 'lapel-edge-worn' },
    { verb: 'tape', name: 'edge-length', along: 'lapel-edge' },
  ],
  shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point'],
  help: ['gorge', 'lapel-reach', 'gorge-worn'],
  hides: ['overlap-edge', 'break-level', 'notch-level', 'notch-reach', 'notch-worn', 'neck-line', 'fold-foot'],
  labels: [
    'break-point',
    'roll-line',
    'gorge',
    'gorge-worn',
    'lapel-reach',
    'lapel-point-worn',
    'lapel-point',
    'notch',
  ],
  box: { min: { x: -130, y: -40 }, max: { x: 210, y: 525 } },
};
