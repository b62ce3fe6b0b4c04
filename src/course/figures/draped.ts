import type { Name, Step } from '../../drafting/step.ts';
import type { Order } from '../../grader/order.ts';
import { edgeEase, gorge, notch, swing, toRollLine } from './collar.ts';
import { orderOf, placeOf } from './scene.ts';
import { usualStyle } from './styles.ts';

/** A deep fall, so that the dip at the shoulder is plain to see. */
export const drapedOrder: Order = orderOf('mei', { ...usualStyle, 'gorge-depth': '2 1/8 in', fall: '2 3/4 in' });

/** The front as it was draped, its neck edge round at the gorge. */
export const drapedFront: readonly Step[] = [
  ...toRollLine,
  ...notch,
  ...gorge,
  {
    verb: 'curve',
    name: 'front-neck-edge',
    through: ['neck-point', 'notch'],
    leave: { along: 'neck-line' },
    arrive: { along: 'gorge' },
  },
];

/** Where the marks of the neck edge would lie if hands were steady. */
const steady: readonly Step[] = [
  ...drapedFront,
  ...edgeEase,
  ...swing,
  { verb: 'tape', name: 'front-length', along: 'front-neck-edge' },
  { verb: 'along', name: 'at-1', on: 'back-line', from: 'neck-point', distance: 'back-neck', toward: 'up' },
  { verb: 'along', name: 'at-2', on: 'back-line', from: 'neck-point', distance: 'back-neck / 2', toward: 'up' },
  { verb: 'along', name: 'at-3', on: 'back-line', from: 'neck-point', distance: '0 mm', toward: 'up' },
  ...(['0.3', '0.6', '1'] as const).map(
    (part, index): Step => ({
      verb: 'along',
      name: `at-${index + 4}`,
      on: 'front-neck-edge',
      from: 'neck-point',
      distance: `front-length * ${part}`,
      toward: 'notch',
    }),
  ),
];

/** Which way each of the six marks was shaken, in parts of the shake: fixed, so that the figure holds still. */
const shakes: readonly (readonly [number, number])[] = [
  [0.5, 0.8],
  [0.8, 0.1],
  [-0.3, -0.8],
  [0.7, 0.5],
  [-0.7, -0.5],
  [0, 0],
];

/** The marks of a draped neck edge, from the centre back to the notch, each up to `shake` mm from where it should be. */
export function drapedMarks(shake: number): readonly Step[] {
  return shakes.map(([x, y], index): Step => {
    const [atX, atY] = placeOf(drapedOrder, steady, `at-${index + 1}`);
    return { verb: 'pencil', name: `neck-mark-${index + 1}`, at: [atX + x * shake, atY + y * shake] };
  });
}

export const markNames: readonly Name[] = shakes.map((_, index) => `neck-mark-${index + 1}`);

/** A smooth edge by the marks, drawn long behind and cut where it has walked the neck seam. */
export const trued: readonly Step[] = [
  { verb: 'rule', name: 'back-rule', from: 'neck-mark-2', to: 'neck-mark-1' },
  { verb: 'along', name: 'past-mark', on: 'back-rule', from: 'neck-mark-1', distance: '1 in', toward: 'up' },
  { verb: 'curve', name: 'long-edge', through: ['past-mark', ...markNames.slice(1)] },
  { verb: 'tape', name: 'back-neck', along: 'back-neckline' },
  { verb: 'tape', name: 'front-neck', along: 'front-neck-edge' },
  {
    verb: 'along',
    name: 'walked-end',
    on: 'long-edge',
    from: 'neck-mark-6',
    distance: 'back-neck + front-neck',
    toward: 'past-mark',
  },
  {
    verb: 'seam',
    name: 'collar-neck-edge',
    run: [{ along: 'long-edge', from: 'walked-end', to: 'neck-mark-6' }],
  },
  { verb: 'square', name: 'collar-centre-back', to: 'collar-neck-edge', through: 'walked-end' },
];

export const drapedHide: readonly Name[] = [
  ...['overlap-edge', 'break-level', 'break-point', 'stand-point', 'notch-level', 'notch-reach', 'notch-worn', 'notch'],
  ...['neck-line', 'gorge-corner', 'gorge'],
];
