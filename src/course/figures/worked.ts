import type { Step } from '../../drafting/step.ts';
import { button, buttonHelp } from './closed.ts';
import { breakPoint, overlapEdge, rollLine } from './front.ts';
import { orderOf, type Scene } from './scene.ts';

/** The overlap from the button, by the house rule. The button lies there already. */
export const workedOverlap: Scene = {
  id: 'worked-overlap',
  order: orderOf('lucia', { button: '5/8 in' }, { 'overlap-rule': 'twice-the-button' }),
  steps: [
    { verb: 'cross', name: 'button-middle', one: 'centre-front', other: 'waist' },
    ...button('rim', 'button-middle'),
    { verb: 'parallel', name: 'overlap-edge', to: 'centre-front', distance: 'overlap-by-rule', side: 'left' },
    { verb: 'cross', name: 'edge-mark', one: 'overlap-edge', other: 'waist' },
    { verb: 'along', name: 'rim-mark', on: 'waist', from: 'button-middle', distance: 'button / 2', toward: 'left' },
    { verb: 'tape', name: 'rim-to-edge', from: 'rim-mark', to: 'edge-mark' },
  ],
  begins: 'overlap-edge',
  shows: ['centre-front', 'waist'],
  hides: buttonHelp('rim'),
  labels: ['centre-front', 'overlap-edge', 'rim-mark', 'edge-mark', 'button-middle'],
  box: { min: { x: -60, y: -45 }, max: { x: 60, y: 45 } },
};

const toBreak: readonly Step[] = [...overlapEdge, ...breakPoint];

/** Overlap edge, break level, break point. */
export const workedBreakPoint: Scene = {
  id: 'worked-break-point',
  order: orderOf('ravi', { overlap: '1 in', 'break-rise': '1 1/2 in' }),
  steps: [
    ...toBreak,
    { verb: 'foot', name: 'break-on-centre', from: 'break-point', on: 'centre-front' },
    { verb: 'foot', name: 'break-on-waist', from: 'break-point', on: 'waist' },
    { verb: 'tape', name: 'beyond', from: 'break-on-centre', to: 'break-point' },
    { verb: 'tape', name: 'above', from: 'break-on-waist', to: 'break-point' },
    { verb: 'tape', name: 'opening', from: 'break-on-centre', to: 'front-neck-point' },
  ],
  shows: [
    'centre-front',
    'waist',
    'collarbone-level',
    'front-neck-point',
    'front-neckline',
    'neck-point',
    'shoulder-line',
  ],
  help: ['break-level'],
  hides: ['break-on-centre', 'break-on-waist'],
  labels: ['centre-front', 'waist', 'overlap-edge', 'break-level', 'break-point', 'front-neck-point'],
  box: { min: { x: -90, y: -50 }, max: { x: 180, y: 460 } },
};

/** The whole draft up to the roll line. */
export const workedRollLine: Scene = {
  id: 'worked-roll-line',
  order: orderOf('ravi', { overlap: '1 in', 'break-rise': '1 1/2 in', stand: '1 1/4 in' }, { 'stand-rule': 'full' }),
  steps: [
    ...toBreak,
    ...rollLine,
    { verb: 'tape', name: 'past', from: 'neck-point', to: 'stand-point' },
    { verb: 'tape', name: 'roll-length', from: 'break-point', to: 'stand-point' },
  ],
  shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point', 'front-neckline', 'front-neck-point'],
  help: ['break-level'],
  labels: ['centre-front', 'waist', 'overlap-edge', 'break-point', 'roll-line', 'neck-point', 'stand-point'],
  box: { min: { x: -90, y: -50 }, max: { x: 180, y: 460 } },
};
