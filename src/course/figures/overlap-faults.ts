import type { Expression, Name, Step } from '../../drafting/step.ts';
import { button, buttonHelp, strip, stripHelp, underFront } from './closed.ts';
import type { Fault } from './fault.ts';
import { overlapEdge } from './front.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('tane', usualStyle);
const middle: Step = { verb: 'cross', name: 'button-middle', one: 'centre-front', other: 'waist' };
const hides: readonly Name[] = [
  ...stripHelp,
  ...buttonHelp('rim'),
  'button-middle',
  'under-front',
  'right-edge',
  'edge-mark',
];
const cloth = [
  { outline: 'under-front', side: 'right' },
  { outline: 'upper-front', side: 'right' },
] as const;

interface Closed {
  readonly id: string;
  readonly edge: readonly Step[];
  readonly down?: Expression;
}

/** Two fronts closed on the centre front, with this edge. */
function closed({ id, edge, down = '75 mm' }: Closed): Scene {
  return {
    id,
    order,
    steps: [...edge, ...strip('55 mm', down), ...underFront(), middle, ...button('rim', 'button-middle')],
    shows: [],
    given: ['middle-line'],
    help: ['under-edge'],
    hides,
    labels: ['overlap-edge', 'under-edge'],
    cloth,
    box: { min: { x: -105, y: down === '75 mm' ? -85 : -200 }, max: { x: 105, y: 60 } },
  };
}

/** The rim of the button reaches the edge. */
export const narrow: Fault = {
  id: 'fault-narrow',
  right: closed({ id: 'fault-narrow-right', edge: overlapEdge }),
  wrong: closed({
    id: 'fault-narrow-wrong',
    edge: [{ verb: 'parallel', name: 'overlap-edge', to: 'centre-front', distance: 'button / 2', side: 'left' }],
  }),
};

/** Measured at the waist, guessed at the foot. */
export const slanted: Fault = {
  id: 'fault-slanted',
  right: closed({ id: 'fault-slanted-right', edge: overlapEdge, down: '190 mm' }),
  wrong: closed({
    id: 'fault-slanted-wrong',
    edge: [
      { verb: 'parallel', name: 'right-edge', to: 'centre-front', distance: 'overlap', side: 'left' },
      { verb: 'cross', name: 'edge-mark', one: 'right-edge', other: 'waist' },
      {
        verb: 'slant',
        name: 'overlap-edge',
        to: 'centre-front',
        angle: '11 deg',
        turn: 'anticlockwise',
        through: 'edge-mark',
      },
    ],
    down: '190 mm',
  }),
};

/** A wider overlap, so that one sees what moved. */
const wide = orderOf('tane', { ...usualStyle, overlap: '1 1/2 in' });
const box = { min: { x: -215, y: -85 }, max: { x: 105, y: 60 } };

/** The buttons are moved toward the edge, and the centre fronts stand apart. */
export const buttonMoved: Fault = {
  id: 'fault-button',
  right: {
    ...closed({ id: 'fault-button-right', edge: overlapEdge }),
    order: wide,
    labels: ['middle-line'],
    box,
  },
  wrong: {
    id: 'fault-button-wrong',
    order: wide,
    steps: [
      ...overlapEdge,
      ...strip(),
      { verb: 'parallel', name: 'button-line', to: 'overlap-edge', distance: 'button / 2 + 6 mm', side: 'right' },
      ...underFront('button-line'),
      { verb: 'fold', name: 'under-middle', what: 'middle-line', over: 'button-line' },
      { verb: 'cross', name: 'button-middle', one: 'button-line', other: 'waist' },
      ...button('rim', 'button-middle'),
    ],
    shows: [],
    given: ['middle-line', 'under-middle'],
    help: ['under-edge'],
    hides: [...hides, 'button-line'],
    labels: ['middle-line', 'under-middle'],
    cloth,
    box,
  },
};
