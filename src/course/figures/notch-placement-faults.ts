import type { Step } from '../../drafting/step.ts';
import { collarShape, cutLapel, edgeEase, front, gorge, neckEdge, swing, toRollLine } from './collar.ts';
import type { Fault } from './fault.ts';
import { lapelAlone } from './plans.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('amara', usualStyle);
const chest = { min: { x: -120, y: 190 }, max: { x: 160, y: 450 } };

/** A draft seen as it is worn. */
function worn(id: string, steps: readonly Step[]): Scene {
  return {
    id,
    order,
    steps,
    shows: [],
    labels: [],
    box: chest,
    view: { shows: 'worn', alone: true, plan: lapelAlone },
  };
}

/** Above the collarbones. */
export const notchHigh: Fault = {
  id: 'fault-notch-high',
  right: worn('fault-notch-high-right', front),
  wrong: worn(
    'fault-notch-high-wrong',
    front.map(
      (step): Step =>
        step.name === 'notch-level'
          ? { verb: 'parallel', name: 'notch-level', to: 'collarbone-level', distance: '1 in', side: 'up' }
          : step,
    ),
  ),
};

/** Measured below the collarbone level on the flat: turned back, it comes down. */
export const notchFlat: Fault = {
  id: 'fault-notch-flat',
  right: worn('fault-notch-flat-right', front),
  wrong: worn('fault-notch-flat-wrong', [
    ...toRollLine,
    { verb: 'parallel', name: 'notch-level', to: 'collarbone-level', distance: 'notch-drop', side: 'down' },
    { verb: 'parallel', name: 'notch-reach', to: 'roll-line', distance: 'notch-width', side: 'left' },
    { verb: 'cross', name: 'notch', one: 'notch-level', other: 'notch-reach' },
    ...gorge,
    ...cutLapel,
  ]),
};

const stepOrder = orderOf('amara', { ...usualStyle, 'lapel-width': '4 in', 'collar-end': '2 in' });
const whole = [...front, ...edgeEase, ...swing, ...neckEdge, ...collarShape];
const step: Omit<Scene, 'id' | 'steps'> = {
  order: stepOrder,
  shows: [],
  labels: [],
  box: chest,
  view: { shows: 'worn', alone: true },
};

/** The collar end leans over to the lapel and outruns it. */
export const stepClosed: Fault = {
  id: 'fault-step-closed',
  right: { ...step, id: 'fault-step-closed-right', steps: whole },
  wrong: {
    ...step,
    id: 'fault-step-closed-wrong',
    order: { ...stepOrder, style: { ...stepOrder.style, 'collar-end': '3 1/4 in' } },
    steps: whole.map(
      (one): Step =>
        one.name === 'end-line'
          ? { verb: 'slant', name: 'end-line', to: 'gorge', angle: '35 deg', turn: 'clockwise', through: 'notch' }
          : one,
    ),
  },
};
