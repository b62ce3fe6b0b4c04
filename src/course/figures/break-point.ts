import type { Step } from '../../drafting/step.ts';
import { bodyCloth, bodyHelp, breakPoint, lapel, lapelHelp, overlapEdge, rollLine } from './front.ts';
import type { Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const front = { min: { x: -140, y: -70 }, max: { x: 225, y: 475 } };

/** The whole front with its lapel, as cut and as worn: the break point opens and closes it. */
export const breakLapel: Scene = {
  id: 'break-lapel',
  order: { person: 'amara', style: usualStyle },
  steps: [...overlapEdge, ...breakPoint, ...rollLine, ...lapel, ...bodyCloth],
  shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point'],
  help: ['break-level', 'lapel'],
  hides: [...lapelHelp, ...bodyHelp],
  labels: ['centre-front', 'waist', 'overlap-edge', 'break-point', 'roll-line'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box: front,
};

/** The break point slid in along its level, where it should not be. */
const slid: readonly Step[] = [
  { verb: 'cross', name: 'level-middle', one: 'break-level', other: 'centre-front' },
  { verb: 'along', name: 'false-break', on: 'break-level', from: 'break-point', distance: '15 mm', toward: 'right' },
  { verb: 'rule', name: 'false-roll', from: 'false-break', to: 'stand-point' },
  { verb: 'tape', name: 'slid', from: 'break-point', to: 'false-break' },
  { verb: 'parallel', name: 'false-run', to: 'centre-front', through: 'false-break' },
  { verb: 'parallel', name: 'strip-level', to: 'break-level', distance: '60 mm', side: 'up' },
  { verb: 'cross', name: 'strip-top-edge', one: 'overlap-edge', other: 'strip-level' },
  { verb: 'cross', name: 'strip-top-false', one: 'false-run', other: 'strip-level' },
  { verb: 'seam', name: 'lost-strip', run: ['break-point', 'strip-top-edge', 'false-break', 'break-point'] },
];

/** The commonest slip: the break point taken in from the edge toward the centre front. */
export const breakEdge: Scene = {
  id: 'break-edge',
  order: { person: 'amara', style: usualStyle },
  steps: [...overlapEdge, ...breakPoint, ...rollLine, ...slid],
  shows: ['centre-front', 'waist'],
  help: ['break-level'],
  hides: ['level-middle', 'false-run', 'strip-level', 'strip-top-edge', 'strip-top-false', 'stand-point', 'lost-strip'],
  labels: ['centre-front', 'overlap-edge', 'break-level', 'break-point', 'false-break'],
  cloth: [{ outline: 'lost-strip', side: 'other' }],
  box: { min: { x: -70, y: -35 }, max: { x: 70, y: 115 } },
};
