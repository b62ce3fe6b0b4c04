import type { Name } from '../../drafting/step.ts';
import type { Fault } from './fault.ts';
import { orderOf, type Scene } from './scene.ts';
import { stripsHide, swungStrip } from './strips.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('amara', { ...usualStyle, fall: '2 in' });
const round = { min: { x: -20, y: 360 }, max: { x: 182, y: 560 } };

/** A swung strip, as its edge will lie. */
function rolls(id: string, by: string, at = 'stand + fall'): Scene {
  return {
    id,
    order,
    steps: swungStrip(by, at),
    shows: [],
    labels: [],
    box: round,
    view: { shows: 'roll', alone: true },
  };
}

/** Not swung at all. */
export const notSwung: Fault = {
  id: 'fault-not-swung',
  right: rolls('fault-not-swung-right', 'edge-ease'),
  wrong: rolls('fault-not-swung-wrong', '0 mm'),
};

const wide = orderOf('amara', { ...usualStyle, stand: '1 1/2 in', fall: '4 in' });
const wideRound = { min: { x: -5, y: 360 }, max: { x: 240, y: 575 } };

/** The ease of a broad collar measured along its neck edge. */
export const atNeckEdge: Fault = {
  id: 'fault-at-neck-edge',
  right: { ...rolls('fault-at-neck-edge-right', 'edge-ease'), order: wide, box: wideRound },
  wrong: { ...rolls('fault-at-neck-edge-wrong', 'edge-ease', 'back-neck'), order: wide, box: wideRound },
};

const flat: Omit<Scene, 'id' | 'steps'> = {
  order,
  shows: ['shoulder-line', 'neck-point'],
  hides: stripsHide,
  labels: ['neck-point', 'roll-line', 'collar-back'],
  cloth: [
    { outline: 'front-strip', side: 'right' },
    { outline: 'back-strip', side: 'right' },
  ],
  box: { min: { x: -60, y: 345 }, max: { x: 165, y: 550 } },
};

/** Swung toward the front. */
export const wrongWay: Fault = {
  id: 'fault-wrong-way',
  right: { ...flat, id: 'fault-wrong-way-right', steps: swungStrip('edge-ease', 'stand + fall') },
  wrong: { ...flat, id: 'fault-wrong-way-wrong', steps: swungStrip('0 mm - edge-ease', 'stand + fall') },
};

/** The back of a swung strip with its centre back square to a line, and the other half folded over from it. */
function backSquaredTo(id: string, to: Name): Scene {
  return {
    id,
    order,
    steps: [
      ...swungStrip('edge-ease', 'stand + fall'),
      { verb: 'square', name: 'centre-line', to, through: 'collar-back' },
      { verb: 'parallel', name: 'outer-side', to: 'back-line', distance: 'stand + fall', side: 'left' },
      { verb: 'cross', name: 'outer-end', one: 'centre-line', other: 'outer-side' },
      { verb: 'seam', name: 'half', run: ['neck-point', 'collar-back', 'outer-end', 'back-out', 'neck-point'] },
      { verb: 'fold', name: 'other-half', what: 'half', over: 'centre-line' },
      { verb: 'seam', name: 'collar-centre-back', run: ['collar-back', 'outer-end'] },
      { verb: 'seam', name: 'neck-edge', run: ['neck-point', 'collar-back'] },
      { verb: 'seam', name: 'outer-edge', run: ['back-out', 'outer-end'] },
    ],
    shows: [],
    hides: [
      ...stripsHide,
      'roll-line',
      'stand-point',
      'front-strip',
      'back-strip',
      'centre-line',
      'outer-side',
      'outer-end',
      'neck-point',
      'collar-back',
    ],
    help: ['collar-centre-back'],
    labels: ['collar-centre-back', 'neck-edge', 'outer-edge'],
    cloth: [
      { outline: 'half', side: 'right' },
      { outline: 'other-half', side: 'right' },
    ],
    box: { min: { x: -25, y: 425 }, max: { x: 195, y: 625 } },
  };
}

/** The centre back squared to the line before the swing. */
export const backUnsquare: Fault = {
  id: 'fault-back-unsquare',
  right: backSquaredTo('fault-back-unsquare-right', 'back-line'),
  wrong: backSquaredTo('fault-back-unsquare-wrong', 'neck-line'),
};
