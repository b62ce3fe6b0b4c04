import type { Step } from '../../drafting/step.ts';
import type { LiveHandle } from '../../table/live/live-scene.ts';
import { button, buttonHelp, strip, stripHelp, underFront } from './closed.ts';
import { overlapEdge } from './front.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const box = { min: { x: -125, y: -85 }, max: { x: 125, y: 65 } };
const near = { min: { x: -70, y: -45 }, max: { x: 70, y: 45 } };

const middle: Step = { verb: 'cross', name: 'button-middle', one: 'centre-front', other: 'waist' };
const grip: Step = { verb: 'cross', name: 'edge-mark', one: 'overlap-edge', other: 'waist' };

/** The overlap, dragged by the mark on the edge at the waist. */
const byEdge = (from: number, to: number): readonly LiveHandle[] => [
  { drags: 'measure', measure: 'overlap', by: 'edge-mark', from, to },
];

/** Two fronts, buttoned: the body stays as wide, however deep they lap. */
export const overlapClosed: Scene = {
  id: 'overlap-closed',
  order: orderOf('tane', usualStyle),
  steps: [...overlapEdge, grip, ...strip(), ...underFront(), middle, ...button('rim', 'button-middle')],
  handles: byEdge(10, 70),
  shows: [],
  given: ['middle-line'],
  help: ['under-edge'],
  hides: [...stripHelp, ...buttonHelp('rim'), 'button-middle', 'under-front'],
  labels: ['middle-line', 'overlap-edge', 'under-edge'],
  cloth: [
    { outline: 'under-front', side: 'right' },
    { outline: 'upper-front', side: 'right' },
  ],
  box,
};

/** A button on the centre front, and the cloth past its rim. */
export const overlapButton: Scene = {
  id: 'overlap-button',
  order: orderOf('tane', usualStyle),
  steps: [
    ...overlapEdge,
    grip,
    ...strip(),
    middle,
    ...button('rim', 'button-middle'),
    { verb: 'tape', name: 'rim-to-edge', from: 'rim-left', to: 'edge-mark' },
  ],
  handles: byEdge(10, 60),
  shows: [],
  given: ['middle-line'],
  hides: [...stripHelp, ...buttonHelp('rim'), 'button-middle'],
  labels: ['middle-line', 'overlap-edge'],
  cloth: [{ outline: 'upper-front', side: 'right' }],
  box: near,
};

/** Two rows of buttons at equal distances from the middle of the body. */
export const overlapDouble: Scene = {
  id: 'overlap-double',
  order: orderOf('tane', { ...usualStyle, overlap: '3 1/2 in', 'button-to-edge': '1 in' }),
  steps: [
    ...overlapEdge,
    grip,
    ...strip(),
    { verb: 'parallel', name: 'first-row', to: 'overlap-edge', distance: 'button-to-edge', side: 'right' },
    { verb: 'fold', name: 'second-row', what: 'first-row', over: 'centre-front' },
    { verb: 'cross', name: 'first-middle', one: 'first-row', other: 'waist' },
    { verb: 'cross', name: 'second-middle', one: 'second-row', other: 'waist' },
    ...button('first-rim', 'first-middle'),
    ...button('second-rim', 'second-middle'),
    middle,
    { verb: 'tape', name: 'before', from: 'first-middle', to: 'button-middle' },
  ],
  handles: byEdge(50, 120),
  shows: [],
  given: ['middle-line'],
  help: ['first-row', 'second-row'],
  hides: [
    ...stripHelp,
    ...buttonHelp('first-rim'),
    ...buttonHelp('second-rim'),
    'first-middle',
    'second-middle',
    'button-middle',
  ],
  labels: ['middle-line', 'overlap-edge', 'first-row', 'second-row'],
  cloth: [{ outline: 'upper-front', side: 'right' }],
  // As narrow as its marks allow: on a phone the names find no room beside lines that lie nearer.
  box: { min: { x: -128, y: -85 }, max: { x: 106, y: 85 } },
};
