import type { Expression, Name, Step } from '../../drafting/step.ts';
import { collarPiece } from './collar-piece.ts';

/** The collar's outline on the draft, which is where it is sewn, and the back part of its neck edge by itself. Needs the whole collar. */
export const netCollar: readonly Step[] = [
  ...collarPiece,
  { verb: 'seam', name: 'back-part', run: [{ along: 'back-edge', from: 'collar-back', to: 'neck-point' }] },
];

/** The lines outside the sewing lines, each edge by itself, so that they meet in corners. */
function cutEdges(allowance: Expression): readonly Step[] {
  return [
    { verb: 'offset', name: 'back-cutting', of: 'back-part', distance: allowance, side: 'right' },
    { verb: 'parallel', name: 'neck-cut-line', to: 'neck-line', distance: allowance, side: 'right' },
    { verb: 'parallel', name: 'gorge-cut-line', to: 'gorge', distance: allowance, side: 'down' },
    { verb: 'parallel', name: 'end-cut-line', to: 'end-line', distance: allowance, side: 'left' },
    { verb: 'square', name: 'point-square', to: 'outer-edge', through: 'collar-point' },
    { verb: 'square', name: 'outer-run', to: 'point-square', through: 'collar-point' },
    { verb: 'parallel', name: 'outer-cut-line', to: 'outer-run', distance: allowance, side: 'left' },
    { verb: 'offset', name: 'outer-cut', of: 'outer-edge', distance: allowance, side: 'left' },
  ];
}

/** Corners that lie alike inside and outside the sewing lines. */
const cutCorners: readonly Step[] = [
  { verb: 'cross', name: 'neck-fold', one: 'collar-centre-back', other: 'back-cutting' },
  { verb: 'foot', name: 'shoulder-cut', from: 'neck-point', on: 'neck-cut-line' },
  { verb: 'cross', name: 'gorge-cut', one: 'neck-cut-line', other: 'gorge-cut-line' },
  { verb: 'cross', name: 'end-cut', one: 'gorge-cut-line', other: 'end-cut-line' },
  { verb: 'cross', name: 'edge-fold', one: 'collar-centre-back', other: 'outer-cut' },
];

/** The cut edge along the neck, from the fold at the back to where the gorge begins. */
const alongNeck = ['neck-fold', 'back-cutting', 'shoulder-cut', 'gorge-cut'] as const;

/** The same collar with a seam allowance all round but at the centre back, where a top collar lies on the fold of the cloth. */
export function cutCollar(allowance: Expression): readonly Step[] {
  return [
    ...cutEdges(allowance),
    ...cutCorners,
    { verb: 'foot', name: 'notch-cut', from: 'notch', on: 'gorge-cut-line' },
    { verb: 'cross', name: 'point-cut', one: 'end-cut-line', other: 'outer-cut-line' },
    { verb: 'foot', name: 'outer-cut-end', from: 'collar-point', on: 'outer-cut-line' },
    {
      verb: 'seam',
      name: 'cutting-line',
      run: [...alongNeck, 'end-cut', 'point-cut', 'outer-cut-end', 'outer-cut', 'edge-fold', 'neck-fold'],
    },
    { verb: 'seam', name: 'neck-cut', run: [...alongNeck, 'notch-cut'] },
  ];
}

/** What is left of the collar when it was cut on its sewing lines, and each seam then takes its allowance. */
export function sewnCollar(allowance: Expression): readonly Step[] {
  return [
    ...cutEdges(`0 mm - ${allowance}`),
    ...cutCorners,
    { verb: 'cross', name: 'point-cut', one: 'end-cut-line', other: 'outer-cut' },
    {
      verb: 'seam',
      name: 'sewn',
      run: [
        ...alongNeck,
        'end-cut',
        'point-cut',
        { along: 'outer-cut', from: 'point-cut', to: 'edge-fold' },
        'edge-fold',
        'neck-fold',
      ],
    },
  ];
}

/** The helpers of a piece that a figure has no need to show. */
export const cutHides: readonly Name[] = [
  ...['collar-piece', 'back-part', 'back-cutting', 'neck-cut-line', 'gorge-cut-line', 'end-cut-line', 'point-square'],
  ...['outer-run', 'outer-cut-line', 'outer-cut', 'neck-fold', 'shoulder-cut', 'gorge-cut', 'notch-cut', 'end-cut'],
  ...['point-cut', 'outer-cut-end', 'edge-fold', 'neck-cut'],
];
