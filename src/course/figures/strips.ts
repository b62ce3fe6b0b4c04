import type { Name, Step } from '../../drafting/step.ts';
import { edgeEase, toRollLine } from './collar.ts';

/** The line beside the roll line, and what the outer edge needs. */
export const beside: readonly Step[] = [
  ...toRollLine,
  { verb: 'parallel', name: 'neck-line', to: 'roll-line', through: 'neck-point' },
  { verb: 'along', name: 'gorge-corner', on: 'neck-line', from: 'neck-point', distance: 'gorge-depth', toward: 'down' },
  ...edgeEase,
];

/** The collar's line before it is swung, with the back neck laid off. */
export const unswung: readonly Step[] = [
  ...beside,
  { verb: 'along', name: 'back-end', on: 'neck-line', from: 'neck-point', distance: 'back-neck', toward: 'up' },
];

/** The strip in front of the neck point, and the strip behind it on the swung `back-line`. */
export const strips: readonly Step[] = [
  { verb: 'along', name: 'front-end', on: 'neck-line', from: 'neck-point', distance: '1 1/2 in', toward: 'down' },
  { verb: 'square', name: 'front-square', to: 'neck-line', through: 'neck-point' },
  { verb: 'square', name: 'end-square', to: 'neck-line', through: 'front-end' },
  {
    verb: 'along',
    name: 'front-out',
    on: 'front-square',
    from: 'neck-point',
    distance: 'stand + fall',
    toward: 'left',
  },
  { verb: 'along', name: 'end-out', on: 'end-square', from: 'front-end', distance: 'stand + fall', toward: 'left' },
  { verb: 'seam', name: 'front-strip', run: ['neck-point', 'front-out', 'end-out', 'front-end', 'neck-point'] },
  { verb: 'square', name: 'back-square', to: 'back-line', through: 'neck-point' },
  { verb: 'square', name: 'outer-square', to: 'back-line', through: 'collar-back' },
  { verb: 'along', name: 'back-out', on: 'back-square', from: 'neck-point', distance: 'stand + fall', toward: 'left' },
  {
    verb: 'along',
    name: 'outer-back',
    on: 'outer-square',
    from: 'collar-back',
    distance: 'stand + fall',
    toward: 'left',
  },
  { verb: 'seam', name: 'back-strip', run: ['neck-point', 'collar-back', 'outer-back', 'back-out', 'neck-point'] },
  { verb: 'protractor', name: 'swung-through', from: 'neck-line', to: 'back-line' },
  { verb: 'tape', name: 'opened', length: '(stand + fall) * swung-through' },
];

/** Helpers of the strips. */
export const stripsHide: readonly Name[] = [
  'overlap-edge',
  'break-level',
  'break-point',
  'joined',
  'gorge-corner',
  'neck-line',
  'back-line',
  'front-end',
  'front-square',
  'end-square',
  'front-out',
  'end-out',
  'back-square',
  'outer-square',
  'back-out',
  'outer-back',
];

/** A collar that has been swung by `by`, measured at `at`. */
export function swungStrip(by: string, at: string): readonly Step[] {
  return [
    ...beside,
    { verb: 'swing', name: 'back-line', what: 'neck-line', about: 'neck-point', by, at, turn: 'clockwise' },
    { verb: 'along', name: 'collar-back', on: 'back-line', from: 'neck-point', distance: 'back-neck', toward: 'up' },
    ...strips,
  ];
}
