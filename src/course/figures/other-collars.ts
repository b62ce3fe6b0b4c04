import type { Step } from '../../drafting/step.ts';
import type { WornPlan } from '../../garment/collar/worn-plan.ts';
import {
  collarHelp,
  collarShape,
  edgeEase,
  frontHelp,
  gorge,
  longEdge,
  neckEdge,
  notch,
  swing,
  toRollLine,
} from './collar.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

/** The lapel's top edge raised from the line of the gorge to a peak. Needs the gorge. */
const peakedLapel: readonly Step[] = [
  { verb: 'parallel', name: 'lapel-reach', to: 'roll-line', distance: 'lapel-width', side: 'left' },
  { verb: 'cross', name: 'gorge-run', one: 'gorge', other: 'lapel-reach' },
  { verb: 'along', name: 'lapel-point', on: 'lapel-reach', from: 'gorge-run', distance: 'peak-rise', toward: 'up' },
  { verb: 'curve', name: 'lapel-edge', through: ['lapel-point', 'break-point'] },
  { verb: 'rule', name: 'peak-line', from: 'notch', to: 'lapel-point' },
  { verb: 'seam', name: 'top-edge-drawn', run: ['notch', 'lapel-point'] },
];

/** A double-breasted front with a peaked lapel: the peak dragged up and down, and seen worn. */
export const patternPeak: Scene = {
  id: 'pattern-peak',
  order: orderOf('tane', {
    ...usualStyle,
    overlap: '3 1/4 in',
    fall: '1 7/8 in',
    'gorge-depth': '2 1/8 in',
    'notch-width': '2 1/2 in',
    'lapel-width': '4 1/4 in',
    'peak-rise': '1 1/2 in',
    'collar-end': '1 5/8 in',
  }),
  steps: [
    ...toRollLine,
    ...notch,
    ...gorge,
    ...peakedLapel,
    ...edgeEase,
    ...swing,
    ...neckEdge,
    ...collarShape,
    { verb: 'seam', name: 'collar-end-edge', run: ['notch', 'collar-point'] },
    { verb: 'protractor', name: 'opening', from: 'end-line', to: 'peak-line' },
  ],
  handles: [{ drags: 'measure', measure: 'peak-rise', by: 'lapel-point', from: 10, to: 60 }],
  shows: ['shoulder-line', 'neck-point'],
  help: ['gorge', 'lapel-reach'],
  hides: [
    ...frontHelp.filter((name) => name !== 'gorge' && name !== 'lapel-reach'),
    ...collarHelp,
    ...['peak-line', 'gorge-corner', 'collar-back', 'outer-back', 'collar-point'],
  ],
  labels: ['notch', 'gorge-run', 'lapel-point', 'roll-line', 'outer-edge', 'lapel-reach'],
  box: { min: { x: -200, y: 215 }, max: { x: 140, y: 520 } },
  view: { shows: 'worn' },
};

const shawlPlan: WornPlan = {
  over: 'roll-line',
  turns: ['break-point', 'outer-edge'],
  until: 'neck-point',
  stays: ['gorge-corner', 'neck-point', 'shoulder-tip'],
  seam: ['neck-point', 'gorge-corner'],
};

/** The broadest place of a shawl, designed as worn a third of the way down to the break, and folded over. */
const broadest: readonly Step[] = [
  { verb: 'parallel', name: 'neck-line', to: 'roll-line', through: 'neck-point' },
  { verb: 'along', name: 'gorge-corner', on: 'neck-line', from: 'neck-point', distance: 'gorge-depth', toward: 'down' },
  { verb: 'parallel', name: 'lapel-reach', to: 'roll-line', distance: 'lapel-width', side: 'right' },
  { verb: 'foot', name: 'break-front', from: 'break-point', on: 'centre-front' },
  { verb: 'part', name: 'broad-mark', from: 'front-neck-point', to: 'break-front', fraction: '1/3' },
  { verb: 'parallel', name: 'broad-level', to: 'collarbone-level', through: 'broad-mark' },
  { verb: 'cross', name: 'lapel-point-worn', one: 'broad-level', other: 'lapel-reach' },
  { verb: 'fold', name: 'lapel-point', what: 'lapel-point-worn', over: 'roll-line' },
];

/** A shawl collar: its broadest place dragged, and the whole of it seen worn. */
export const patternShawl: Scene = {
  id: 'pattern-shawl',
  order: orderOf('amara', { ...usualStyle, fall: '1 7/8 in', 'gorge-depth': '2 1/8 in', overlap: '1 1/4 in' }),
  steps: [
    ...toRollLine,
    ...broadest,
    ...edgeEase,
    ...swing,
    ...longEdge,
    ...neckEdge.filter(({ name }) => name === 'collar-back' || name === 'collar-centre-back'),
    {
      verb: 'seam',
      name: 'collar-neck-edge',
      run: [{ along: 'back-edge', from: 'collar-back', to: 'neck-point' }, 'neck-point', 'gorge-corner'],
    },
    ...collarShape.filter(({ name }) => ['outer-back', 'neck-square', 'over-neck', 'over-shoulder'].includes(name)),
    {
      verb: 'curve',
      name: 'outer-edge',
      through: ['outer-back', 'over-shoulder', 'lapel-point', 'break-point'],
      leave: { square: 'collar-centre-back' },
      arrive: { along: 'overlap-edge' },
    },
    { verb: 'seam', name: 'back-cut', run: ['collar-back', 'outer-back'] },
  ],
  handles: [{ drags: 'measure', measure: 'lapel-width', by: 'lapel-point', from: 60, to: 110 }],
  shows: ['shoulder-line', 'neck-point'],
  hides: [
    ...['overlap-edge', 'break-level', 'stand-point', 'neck-line', 'lapel-reach', 'break-front', 'broad-mark'],
    ...['broad-level', 'lapel-point-worn', 'joined', 'back-line', 'past-back', 'mid-back', 'back-edge'],
    ...['collar-centre-back', 'neck-square', 'over-neck', 'over-shoulder', 'collar-back', 'outer-back', 'gorge-corner'],
  ],
  labels: ['lapel-point', 'roll-line', 'outer-edge', 'break-point', 'neck-point'],
  box: { min: { x: -140, y: 20 }, max: { x: 160, y: 560 } },
  view: { shows: 'worn', plan: shawlPlan },
};
