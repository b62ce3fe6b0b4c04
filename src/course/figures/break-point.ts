import type { Step } from '../../drafting/step.ts';
import { bodyCloth, bodyHelp, breakPoint, lapel, lapelHelp, overlapEdge, rollLine } from './front.ts';
import { orderOf, placeOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const front = { min: { x: -140, y: -70 }, max: { x: 225, y: 475 } };

/** The whole front with its lapel, as cut and as worn: the break point opens and closes it. */
export const breakLapel: Scene = {
  id: 'break-lapel',
  order: orderOf('amara', usualStyle),
  steps: [
    ...overlapEdge,
    ...breakPoint,
    ...rollLine,
    ...lapel,
    ...bodyCloth,
    { verb: 'foot', name: 'break-on-centre', from: 'break-point', on: 'centre-front' },
    { verb: 'tape', name: 'opening', from: 'break-on-centre', to: 'front-neck-point' },
  ],
  handles: [{ drags: 'measure', measure: 'break-rise', by: 'break-point', from: 0, to: 190 }],
  shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point'],
  given: ['neck-edge'],
  help: ['break-level', 'lapel', 'overlap-edge'],
  hides: [...lapelHelp, ...bodyHelp, 'break-on-centre'],
  labels: ['centre-front', 'waist', 'overlap-edge', 'break-point', 'roll-line'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box: front,
};

const slipOrder = orderOf('amara', usualStyle);
const slipLine: readonly Step[] = [
  ...overlapEdge,
  ...breakPoint,
  { verb: 'along', name: 'stand-point', on: 'shoulder-line', from: 'neck-point', distance: 'stand', toward: 'left' },
  { verb: 'seam', name: 'right-line', run: ['break-point', 'stand-point'] },
];
const half: Step = {
  verb: 'along',
  name: 'half-way',
  on: 'break-level',
  from: 'break-point',
  distance: 'overlap / 2',
  toward: 'right',
};

/** The commonest slip: the break point taken in from the edge toward the centre front. */
export const breakEdge: Scene = {
  id: 'break-edge',
  order: slipOrder,
  steps: [
    ...slipLine,
    { verb: 'pencil', name: 'false-break', at: placeOf(slipOrder, [...slipLine, half], 'half-way') },
    { verb: 'seam', name: 'roll-line', run: ['false-break', 'stand-point'] },
    { verb: 'tape', name: 'slid', from: 'break-point', to: 'false-break' },
    { verb: 'parallel', name: 'high-level', to: 'break-level', distance: '200 mm', side: 'up' },
    { verb: 'cross', name: 'right-high', one: 'right-line', other: 'high-level' },
    { verb: 'cross', name: 'false-high', one: 'roll-line', other: 'high-level' },
    {
      verb: 'seam',
      name: 'lost-strip',
      run: ['break-point', 'false-break', 'false-high', 'right-high', 'break-point'],
    },
  ],
  handles: [
    {
      drags: 'mark',
      mark: 'false-break',
      along: 'break-level',
      within: { min: { x: -25.4, y: 0 }, max: { x: 0, y: 100 } },
    },
  ],
  shows: ['centre-front', 'waist'],
  help: ['break-level'],
  right: ['right-line'],
  hides: ['high-level', 'right-high', 'false-high', 'stand-point', 'lost-strip'],
  labels: ['centre-front', 'overlap-edge', 'break-level', 'break-point', 'false-break'],
  cloth: [{ outline: 'lost-strip', side: 'right' }],
  box: { min: { x: -70, y: -35 }, max: { x: 70, y: 115 } },
};
