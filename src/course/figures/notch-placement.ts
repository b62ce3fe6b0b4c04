import type { Name, Step } from '../../drafting/step.ts';
import { collarHelp, cutLapel, front, frontHelp, gorge, lapelCloth, notch, toRollLine, wholeCollar } from './collar.ts';
import { bodyCloth, bodyHelp } from './front.ts';
import { lapelAlone } from './plans.ts';
import { orderOf, placeOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('amara', usualStyle);
const chest = { min: { x: -130, y: 200 }, max: { x: 170, y: 450 } };

const notchAt = placeOf(order, [...toRollLine, ...notch], 'notch');

/** The notch dragged where it is cut, and seen where it is worn. */
export const notchDrag: Scene = {
  id: 'notch-drag',
  order,
  steps: [
    ...toRollLine,
    { verb: 'pencil', name: 'notch', at: notchAt },
    ...gorge,
    ...cutLapel,
    { verb: 'foot', name: 'fold-foot', from: 'notch', on: 'roll-line' },
    { verb: 'tape', name: 'notch-off', from: 'fold-foot', to: 'notch' },
    { verb: 'seam', name: 'neck-edge', run: ['neck-point', 'gorge-corner', 'notch', 'lapel-point'] },
  ],
  handles: [
    {
      drags: 'mark',
      mark: 'notch',
      within: {
        min: { x: notchAt[0] - 26, y: notchAt[1] - 34 },
        max: { x: notchAt[0] + 26, y: notchAt[1] + 26 },
      },
    },
  ],
  shows: ['collarbone-level', 'shoulder-line', 'neck-point', 'centre-front'],
  hides: ['overlap-edge', 'break-level', 'neck-line', 'gorge', 'lapel-reach', 'fold-foot', 'gorge-corner'],
  labels: ['collarbone-level', 'roll-line', 'notch', 'lapel-point', 'neck-point'],
  box: chest,
  view: { shows: 'worn', plan: lapelAlone },
};

const slanted: readonly Step[] = [
  ...front,
  ...lapelCloth,
  ...bodyCloth,
  { verb: 'fold', name: 'gorge-worn', what: 'gorge', over: 'roll-line' },
  { verb: 'tape', name: 'gorge-length', from: 'gorge-corner', to: 'notch' },
  { verb: 'protractor', name: 'slant', from: 'notch-level', to: 'gorge-worn' },
];
const slantHides: readonly Name[] = [
  ...bodyHelp,
  'overlap-edge',
  'break-level',
  'neck-line',
  'notch-reach',
  'lapel-reach',
  'lapel-edge',
  'lapel-point',
  'gorge',
  'gorge-worn',
  'roll-top',
];

/** The gorge corner slid down and up the neck seam: the gorge turns about the notch. */
export const gorgeSlant: Scene = {
  id: 'gorge-slant',
  order,
  steps: slanted,
  handles: [{ drags: 'measure', measure: 'gorge-depth', by: 'gorge-corner', from: 25, to: 75 }],
  shows: ['collarbone-level', 'shoulder-line', 'neck-point'],
  given: ['neck-edge'],
  help: ['lapel', 'notch-level'],
  hides: slantHides,
  labels: ['neck-point', 'gorge-corner', 'notch', 'notch-worn', 'notch-level', 'roll-line'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box: chest,
};

/** The level holds as worn; on the flat the notch climbs as the roll line leans. */
export const notchLean: Scene = {
  id: 'notch-lean',
  order,
  steps: [
    ...slanted,
    { verb: 'foot', name: 'under-notch', from: 'notch', on: 'notch-level' },
    { verb: 'tape', name: 'higher', from: 'under-notch', to: 'notch' },
    { verb: 'protractor', name: 'lean', from: 'centre-front', to: 'roll-line' },
  ],
  handles: [{ drags: 'measure', measure: 'break-rise', by: 'break-point', from: 0, to: 190 }],
  shows: ['collarbone-level', 'shoulder-line', 'neck-point', 'centre-front'],
  given: ['neck-edge'],
  help: ['lapel', 'notch-level'],
  hides: [...slantHides, 'under-notch', 'gorge-corner'],
  labels: ['notch', 'notch-worn', 'notch-level', 'roll-line', 'break-point'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box: { min: { x: -140, y: -40 }, max: { x: 215, y: 460 } },
};

const stepOrder = orderOf('amara', { ...usualStyle, 'lapel-width': '4 in', 'collar-end': '2 in' });

/** The two edges of the step: collar end, and top edge of the lapel. */
export const notchStep: Scene = {
  id: 'notch-step',
  order: stepOrder,
  steps: [
    ...wholeCollar,
    { verb: 'tape', name: 'top-edge', from: 'notch', to: 'lapel-point' },
    { verb: 'seam', name: 'front-edge', run: ['neck-point', 'gorge-corner', 'notch', 'lapel-point', 'lapel-edge'] },
    { verb: 'seam', name: 'collar-end-edge', run: ['notch', 'collar-point'] },
  ],
  handles: [{ drags: 'measure', measure: 'collar-end', by: 'collar-point', from: 20, to: 80 }],
  shows: ['shoulder-line', 'neck-point'],
  hides: [
    ...frontHelp.filter((name) => name !== 'stand-point'),
    ...collarHelp,
    'lapel-edge',
    'gorge-corner',
    'collar-back',
    'outer-back',
  ],
  labels: ['notch', 'collar-point', 'lapel-point', 'roll-line', 'outer-edge'],
  box: { min: { x: -160, y: 220 }, max: { x: 140, y: 470 } },
  view: { shows: 'worn' },
};

/** The notch and the gorge for a figure whose back is rounder than most. */
export const workedNotch: Scene = {
  id: 'worked-notch',
  order: orderOf('mateo', { ...usualStyle, 'lapel-width': '4 in' }),
  begins: 'notch-level',
  steps: [
    ...front,
    { verb: 'tape', name: 'gorge-length', from: 'gorge-corner', to: 'notch' },
    { verb: 'tape', name: 'top-edge', from: 'notch', to: 'lapel-point' },
    { verb: 'foot', name: 'under-notch', from: 'notch', on: 'notch-level' },
    { verb: 'tape', name: 'higher', from: 'under-notch', to: 'notch' },
  ],
  shows: ['centre-front', 'collarbone-level', 'shoulder-line', 'neck-point', 'front-neck-point', 'front-neckline'],
  help: ['notch-level', 'notch-reach', 'neck-line', 'lapel-reach'],
  hides: ['overlap-edge', 'break-level', 'under-notch'],
  labels: [
    'collarbone-level',
    'notch-level',
    'notch-worn',
    'notch',
    'neck-point',
    'gorge-corner',
    'gorge',
    'lapel-point',
    'roll-line',
  ],
  box: { min: { x: -140, y: -10 }, max: { x: 190, y: 470 } },
};
