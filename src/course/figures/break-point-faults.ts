import type { Name, Step } from '../../drafting/step.ts';
import { button, buttonHelp } from './closed.ts';
import type { Fault } from './fault.ts';
import { bodyCloth, bodyHelp, breakPoint, lapel, lapelHelp, overlapEdge, rollLine } from './front.ts';
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

const other = (name: Name): Name => `other-${name}`;

/** The other front with a break `higher`, drafted on this side and laid beside this front, turned over. */
const beside = (higher: string): readonly Step[] => [
  { verb: 'parallel', name: other('level'), to: 'break-level', distance: higher, side: 'up' },
  { verb: 'cross', name: other('break'), one: 'overlap-edge', other: other('level') },
  { verb: 'rule', name: other('line'), from: other('break'), to: 'stand-point' },
  { verb: 'cross', name: other('top'), one: 'gorge', other: other('line') },
  { verb: 'parallel', name: other('run'), to: other('line'), distance: 'lapel-width', side: 'left' },
  { verb: 'cross', name: other('point'), one: 'gorge', other: other('run') },
  { verb: 'seam', name: other('cut'), run: [other('break'), other('point'), other('top'), other('break')] },
  { verb: 'fold', name: other('turned'), what: other('cut'), over: other('line') },
  {
    verb: 'seam',
    name: other('cloth'),
    run: [
      other('break'),
      other('top'),
      'gorge-corner',
      'neck-point',
      'shoulder-tip',
      'foot-side',
      'foot-edge',
      other('break'),
    ],
  },
  { verb: 'seam', name: other('below'), run: [other('break'), 'foot-edge'] },
  { verb: 'parallel', name: 'between', to: 'centre-front', distance: 'overlap + 25 mm', side: 'left' },
  { verb: 'fold', name: other('body'), what: other('cloth'), over: 'between' },
  { verb: 'fold', name: other('lapel'), what: other('turned'), over: 'between' },
  { verb: 'fold', name: other('edge'), what: other('below'), over: 'between' },
  { verb: 'fold', name: other('neck'), what: 'neck-edge', over: 'between' },
];

/** Both fronts side by side, the other one drafted with a break `higher`, and the break level of each. */
function bothSides(id: string, higher: string): Scene {
  return {
    ...right,
    id,
    steps: [...right.steps, ...beside(higher)],
    shows: [],
    given: ['neck-edge', other('neck')],
    help: ['break-level', other('level')],
    hides: [
      ...lapelHelp,
      ...bodyHelp,
      'lapel',
      'overlap-edge',
      'roll-line',
      'stand-point',
      'between',
      'break-point',
      ...['break', 'line', 'top', 'run', 'point', 'cut', 'turned', 'cloth', 'below', 'body'].map(other),
    ],
    labels: [],
    cloth: [
      { outline: other('body'), side: 'right' },
      { outline: other('lapel'), side: 'other' },
      { outline: 'body', side: 'right' },
      { outline: 'lapel-worn', side: 'other' },
    ],
    box: { min: { x: -245, y: -80 }, max: { x: 145, y: 450 } },
  };
}

/** One lapel longer than the other. */
export const uneven: Fault = {
  id: 'fault-uneven',
  right: bothSides('fault-uneven-right', '0 mm'),
  wrong: bothSides('fault-uneven-wrong', '45 mm'),
};
