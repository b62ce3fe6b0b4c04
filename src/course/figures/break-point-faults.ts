import type { Name, Step } from '../../drafting/step.ts';
import { button, buttonHelp } from './closed.ts';
import type { Fault } from './fault.ts';
import { bodyCloth, bodyHelp, breakPoint, lapel, lapelHelp, overlapEdge, rollLine } from './front.ts';
import { otherLapel, otherLapelHelp } from './other-lapel.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('amara', usualStyle);
const hides: readonly Name[] = [...lapelHelp, ...bodyHelp, 'lapel', 'break-level'];
const foot = { min: { x: -75, y: -75 }, max: { x: 115, y: 165 } };

const right: Omit<Scene, 'id'> = {
  order,
  steps: [...overlapEdge, ...breakPoint, ...rollLine, ...lapel, ...bodyCloth],
  shows: ['centre-front'],
  given: ['neck-edge'],
  help: ['overlap-edge'],
  hides,
  labels: ['break-point', 'centre-front', 'overlap-edge'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box: foot,
};

/** The break point on the centre front: what lies beyond it is folded with the lapel and ends in a blunt foot. */
const onCentreFront: readonly Step[] = [
  ...overlapEdge,
  { verb: 'parallel', name: 'break-level', to: 'waist', distance: 'break-rise', side: 'up' },
  { verb: 'cross', name: 'edge-at-level', one: 'overlap-edge', other: 'break-level' },
  { verb: 'cross', name: 'break-point', one: 'centre-front', other: 'break-level' },
  ...rollLine,
  ...lapel.map((step): Step => {
    const run = ['break-point', 'edge-at-level', 'lapel-point', 'roll-top', 'break-point'];
    return step.name === 'lapel' && step.verb === 'seam' ? { ...step, run } : step;
  }),
  ...bodyCloth.map((step): Step => {
    if (step.verb !== 'seam') return step;
    if (step.name === 'front-edge') return { ...step, run: ['edge-at-level', 'foot-edge'] };
    return step.name === 'body' ? { ...step, run: [...step.run.slice(0, -1), 'edge-at-level', 'break-point'] } : step;
  }),
];

export const centreFront: Fault = {
  id: 'fault-centre-front',
  right: { ...right, id: 'fault-centre-front-right' },
  wrong: {
    ...right,
    id: 'fault-centre-front-wrong',
    steps: onCentreFront,
    hides: [...hides, 'edge-at-level'],
  },
};

/** The top button where the order puts it, and the break `rise` above the waist. */
function withButton(id: string, rise: string): Scene {
  return {
    ...right,
    id,
    order: { ...order, style: { ...usualStyle, 'break-rise': rise } },
    steps: [
      ...right.steps,
      { verb: 'cross', name: 'middle-at-waist', one: 'centre-front', other: 'waist' },
      {
        verb: 'along',
        name: 'button-middle',
        on: 'centre-front',
        from: 'middle-at-waist',
        distance: '1 in',
        toward: 'up',
      },
      ...button('rim', 'button-middle'),
    ],
    hides: [...hides, ...buttonHelp('rim'), 'middle-at-waist', 'button-middle'],
    labels: ['break-point', 'roll-line'],
  };
}

/** The break below the top button: the lapel opens over a button that holds it shut. */
export const belowButton: Fault = {
  id: 'fault-below-button',
  right: withButton('fault-below-button-right', '1 1/2 in'),
  wrong: withButton('fault-below-button-wrong', '0 in'),
};

/** Both fronts, the other one drafted with a break `higher` and laid on from the other side. */
function bothSides(id: string, higher: string): Scene {
  const other = (name: Name): Name => `other-${name}`;
  return {
    ...right,
    id,
    steps: [
      ...right.steps,
      { verb: 'parallel', name: other('level'), to: 'break-level', distance: higher, side: 'up' },
      { verb: 'cross', name: other('break'), one: 'overlap-edge', other: other('level') },
      { verb: 'rule', name: other('line'), from: other('break'), to: 'stand-point' },
      { verb: 'cross', name: other('end'), one: 'gorge', other: other('line') },
      { verb: 'parallel', name: other('run'), to: other('line'), distance: 'lapel-width', side: 'left' },
      { verb: 'cross', name: other('point'), one: 'gorge', other: other('run') },
      ...otherLapel({ roll: other('line'), breakPoint: other('break'), tip: other('point'), top: other('end') }),
      { verb: 'fold', name: 'other-neck', what: 'neck-edge', over: 'centre-front' },
    ],
    shows: [],
    given: ['neck-edge', 'other-neck'],
    hides: [
      ...hides,
      'overlap-edge',
      'roll-line',
      'stand-point',
      ...['level', 'break', 'line', 'end', 'run', 'point'].map(other),
      ...otherLapelHelp,
      'break-point',
    ],
    labels: [],
    cloth: [
      { outline: 'other-body', side: 'right' },
      { outline: 'other-lapel', side: 'other' },
      { outline: 'body', side: 'right' },
      { outline: 'lapel-worn', side: 'other' },
    ],
    box: { min: { x: -190, y: -80 }, max: { x: 190, y: 450 } },
  };
}

/** One lapel longer than the other. */
export const uneven: Fault = {
  id: 'fault-uneven',
  right: bothSides('fault-uneven-right', '0 mm'),
  wrong: bothSides('fault-uneven-wrong', '32 mm'),
};
