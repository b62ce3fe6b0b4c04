import type { Step } from '../../drafting/step.ts';
import type { Fault } from './fault.ts';
import { breakPoint, overlapEdge, rollLine } from './front.ts';
import { orderOf, type Scene } from './scene.ts';
import { section } from './section.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('ravi', usualStyle);
const line: readonly Step[] = [...overlapEdge, ...breakPoint, ...rollLine];

/** The same, its roll line to be seen beside a false one: from the break point up, and not below it. */
const beside: readonly Step[] = line.map((step) =>
  step.name === 'roll-line' ? { verb: 'seam', name: 'right-line', run: ['break-point', 'stand-point'] } : step,
);

/** The roll line through the neck point leaves the collar no stand at the shoulder. */
export const neckPoint: Fault = {
  id: 'fault-neck-point',
  right: section('fault-neck-point-right', 'stand'),
  wrong: section('fault-neck-point-wrong', '0 mm'),
};

const shoulder: Omit<Scene, 'id'> = {
  order,
  steps: line,
  shows: ['shoulder-line', 'neck-point', 'front-neckline', 'back-neckline'],
  hides: ['break-level', 'overlap-edge', 'break-point'],
  labels: ['neck-point', 'stand-point', 'roll-line'],
  box: { min: { x: -10, y: 355 }, max: { x: 150, y: 480 } },
};

/** The fall laid off in place of the stand. */
export const fallForStand: Fault = {
  id: 'fault-fall',
  right: { ...shoulder, id: 'fault-fall-right' },
  wrong: {
    ...shoulder,
    id: 'fault-fall-wrong',
    steps: [
      ...beside,
      { verb: 'along', name: 'false-mark', on: 'shoulder-line', from: 'neck-point', distance: 'fall', toward: 'left' },
      { verb: 'rule', name: 'roll-line', from: 'break-point', to: 'false-mark' },
    ],
    right: ['right-line'],
    hides: [...(shoulder.hides ?? []), 'stand-point'],
    labels: ['neck-point', 'roll-line'],
  },
};

/** Ruled from the centre front: right at the top, wrong all the way down. */
export const fromCentreFront: Fault = {
  id: 'fault-roll-centre-front',
  right: {
    id: 'fault-roll-centre-front-right',
    order,
    steps: line,
    shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point'],
    help: ['break-level'],
    labels: ['break-point', 'stand-point', 'centre-front'],
    box: { min: { x: -75, y: -50 }, max: { x: 190, y: 460 } },
  },
  wrong: {
    id: 'fault-roll-centre-front-wrong',
    order,
    steps: [
      ...beside,
      { verb: 'cross', name: 'false-break', one: 'centre-front', other: 'break-level' },
      { verb: 'rule', name: 'roll-line', from: 'false-break', to: 'stand-point' },
    ],
    shows: ['centre-front', 'waist', 'shoulder-line', 'neck-point'],
    help: ['break-level'],
    right: ['right-line'],
    hides: ['break-point'],
    labels: ['stand-point', 'false-break', 'centre-front'],
    box: { min: { x: -75, y: -50 }, max: { x: 190, y: 460 } },
  },
};
