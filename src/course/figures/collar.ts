import type { Name, Step } from '../../drafting/step.ts';
import { breakPoint, overlapEdge, rollLine } from './front.ts';

/** From the overlap edge to the roll line: what the first three lessons draft. */
export const toRollLine: readonly Step[] = [...overlapEdge, ...breakPoint, ...rollLine];

/** The notch, designed as it is worn and folded over. */
export const notch: readonly Step[] = [
  { verb: 'parallel', name: 'notch-level', to: 'collarbone-level', distance: 'notch-drop', side: 'down' },
  { verb: 'parallel', name: 'notch-reach', to: 'roll-line', distance: 'notch-width', side: 'right' },
  { verb: 'cross', name: 'notch-worn', one: 'notch-level', other: 'notch-reach' },
  { verb: 'fold', name: 'notch', what: 'notch-worn', over: 'roll-line' },
];

/** The neck seam of the front, beside the roll line, and the gorge. Needs the notch. */
export const gorge: readonly Step[] = [
  { verb: 'parallel', name: 'neck-line', to: 'roll-line', through: 'neck-point' },
  { verb: 'along', name: 'gorge-corner', on: 'neck-line', from: 'neck-point', distance: 'gorge-depth', toward: 'down' },
  { verb: 'rule', name: 'gorge', from: 'gorge-corner', to: 'notch' },
];

/** The lapel as it is cut, its edge straight. */
export const cutLapel: readonly Step[] = [
  { verb: 'parallel', name: 'lapel-reach', to: 'roll-line', distance: 'lapel-width', side: 'left' },
  { verb: 'cross', name: 'lapel-point', one: 'gorge', other: 'lapel-reach' },
  { verb: 'curve', name: 'lapel-edge', through: ['lapel-point', 'break-point'] },
];

/** The lapel's outline flat and turned over, and where the gorge meets the roll line. Needs `lapel-edge`. */
export const lapelCloth: readonly Step[] = [
  { verb: 'cross', name: 'roll-top', one: 'gorge', other: 'roll-line' },
  {
    verb: 'seam',
    name: 'lapel',
    run: ['break-point', 'lapel-edge', 'lapel-point', 'roll-top', 'break-point'],
  },
  { verb: 'fold', name: 'lapel-worn', what: 'lapel', over: 'roll-line' },
];

/** The lapel designed as it is worn, on the body side, and folded to where it is cut. */
export const lapelDesigned: readonly Step[] = [
  ...toRollLine,
  ...notch,
  ...gorge,
  { verb: 'fold', name: 'gorge-worn', what: 'gorge', over: 'roll-line' },
  { verb: 'parallel', name: 'lapel-reach', to: 'roll-line', distance: 'lapel-width', side: 'right' },
  { verb: 'cross', name: 'lapel-point-worn', one: 'gorge-worn', other: 'lapel-reach' },
];

/** The whole front up to its lapel. */
export const front: readonly Step[] = [...toRollLine, ...notch, ...gorge, ...cutLapel];

/** The neck seam with the back joined, what it turns through, and how much longer the outer edge has to be. */
export const edgeEase: readonly Step[] = [
  { verb: 'tape', name: 'back-neck', along: 'back-neckline' },
  { verb: 'seam', name: 'joined', run: ['back-neckline', 'neck-point', 'gorge-corner'] },
  { verb: 'protractor', name: 'neck-turn', along: 'joined' },
  { verb: 'tape', name: 'edge-ease', length: '(fall - stand) * neck-turn' },
];

/** The collar's line, swung about the neck point. */
export const swing: readonly Step[] = [
  {
    verb: 'swing',
    name: 'back-line',
    what: 'neck-line',
    about: 'neck-point',
    by: 'edge-ease',
    at: 'stand + fall',
    turn: 'clockwise',
  },
];

/** The back part of the neck edge, drawn on past the centre back. */
export const longEdge: readonly Step[] = [
  { verb: 'along', name: 'past-back', on: 'back-line', from: 'neck-point', distance: 'back-neck + 1 in', toward: 'up' },
  { verb: 'along', name: 'mid-back', on: 'back-line', from: 'neck-point', distance: 'back-neck / 2', toward: 'up' },
  {
    verb: 'curve',
    name: 'back-edge',
    through: ['past-back', 'mid-back', 'neck-point'],
    leave: { along: 'back-line' },
    arrive: { along: 'neck-line' },
  },
];

/** The neck edge trued: cut where the back neck ends. */
export const neckEdge: readonly Step[] = [
  ...longEdge,
  {
    verb: 'along',
    name: 'collar-back',
    on: 'back-edge',
    from: 'neck-point',
    distance: 'back-neck',
    toward: 'past-back',
  },
  { verb: 'square', name: 'collar-centre-back', to: 'back-edge', through: 'collar-back' },
  {
    verb: 'seam',
    name: 'collar-neck-edge',
    run: [{ along: 'back-edge', from: 'collar-back', to: 'neck-point' }, 'neck-point', 'gorge-corner', 'notch'],
  },
];

/** Collar end and outer edge. */
export const collarShape: readonly Step[] = [
  { verb: 'square', name: 'end-line', to: 'gorge', through: 'notch' },
  { verb: 'along', name: 'collar-point', on: 'end-line', from: 'notch', distance: 'collar-end', toward: 'up' },
  {
    verb: 'along',
    name: 'outer-back',
    on: 'collar-centre-back',
    from: 'collar-back',
    distance: 'stand + fall',
    toward: 'left',
  },
  { verb: 'square', name: 'neck-square', to: 'neck-line', through: 'neck-point' },
  { verb: 'along', name: 'over-neck', on: 'neck-square', from: 'neck-point', distance: 'stand + fall', toward: 'left' },
  {
    verb: 'swing',
    name: 'over-shoulder',
    what: 'over-neck',
    about: 'neck-point',
    by: 'edge-ease / 2',
    at: 'stand + fall',
    turn: 'clockwise',
  },
  {
    verb: 'curve',
    name: 'outer-edge',
    through: ['outer-back', 'over-shoulder', 'collar-point'],
    leave: { square: 'collar-centre-back' },
  },
];

/** The whole collar, on its front. */
export const wholeCollar: readonly Step[] = [...front, ...edgeEase, ...swing, ...neckEdge, ...collarShape];

/** What of all this a figure has seldom need to show. */
export const frontHelp: readonly Name[] = [
  'overlap-edge',
  'break-level',
  'stand-point',
  'notch-level',
  'notch-reach',
  'notch-worn',
  'neck-line',
  'gorge',
  'lapel-reach',
];

/** The same of the collar. */
export const collarHelp: readonly Name[] = [
  'joined',
  'back-line',
  'past-back',
  'mid-back',
  'back-edge',
  'collar-centre-back',
  'end-line',
  'neck-square',
  'over-neck',
  'over-shoulder',
];
