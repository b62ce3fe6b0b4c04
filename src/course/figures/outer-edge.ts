import type { Name, Step } from '../../drafting/step.ts';
import { swing } from './collar.ts';
import { orderOf, placeOf, type Scene } from './scene.ts';
import { beside, strips, stripsHide, unswung } from './strips.ts';
import { usualStyle } from './styles.ts';

/** The two tracks of a bend, drawn for the picture: a straight run, a quarter turn, a straight run. */
const track: readonly Step[] = [
  { verb: 'pencil', name: 'start', at: [-75, 0] },
  { verb: 'pencil', name: 'bend-in', at: [-15, 0] },
  { verb: 'pencil', name: 'bend-out', at: [30, -45] },
  { verb: 'rule', name: 'first-run', from: 'start', to: 'bend-in' },
  { verb: 'square', name: 'second-run', to: 'first-run', through: 'bend-out' },
  { verb: 'square', name: 'start-line', to: 'first-run', through: 'start' },
  {
    verb: 'curve',
    name: 'bend',
    through: ['bend-in', 'bend-out'],
    leave: { along: 'first-run' },
    arrive: { along: 'second-run' },
  },
];

/** A line outside a bend: it is longer by its distance times the turn, and by nothing else. */
export const edgeLanes: Scene = {
  id: 'edge-lanes',
  order: orderOf('amara', {}),
  steps: [
    ...track,
    { verb: 'pencil', name: 'finish', at: [30, -65] },
    { verb: 'pencil', name: 'outside', at: [-75, 20] },
    { verb: 'seam', name: 'inner-line', run: ['start', 'bend-in', 'bend', 'bend-out', 'finish'] },
    { verb: 'tape', name: 'apart', from: 'start', to: 'outside' },
    { verb: 'offset', name: 'outer-line', of: 'inner-line', distance: 'apart', side: 'outside' },
    { verb: 'tape', name: 'inner-length', along: 'inner-line' },
    { verb: 'tape', name: 'outer-length', along: 'outer-line' },
    { verb: 'tape', name: 'longer', length: 'outer-length - inner-length' },
    { verb: 'protractor', name: 'turn', along: 'inner-line' },
  ],
  handles: [
    {
      drags: 'mark',
      mark: 'outside',
      along: 'start-line',
      within: { min: { x: -75, y: 3 }, max: { x: -75, y: 45 } },
    },
    {
      drags: 'mark',
      mark: 'finish',
      along: 'second-run',
      within: { min: { x: 30, y: -95 }, max: { x: 30, y: -50 } },
    },
  ],
  shows: [],
  given: ['inner-line'],
  hides: ['start', 'bend-in', 'bend-out', 'first-run', 'second-run', 'start-line', 'bend'],
  labels: ['inner-line', 'outer-line'],
  box: { min: { x: -90, y: -100 }, max: { x: 95, y: 60 } },
};

const order = orderOf('amara', { ...usualStyle, fall: '2 in' });
const behindNeck = { min: { x: -45, y: 362 }, max: { x: 190, y: 572 } };

/** The neck seam, and where the collar's edge comes to lie outside it. */
export const edgeNeeded: Scene = {
  id: 'edge-needed',
  order,
  steps: [
    ...beside,
    { verb: 'offset', name: 'fall-line', of: 'joined', distance: 'fall - stand', side: 'right' },
    {
      verb: 'along',
      name: 'below-back',
      on: 'centre-back',
      from: 'back-neck-point',
      distance: 'fall - stand',
      toward: 'right',
    },
    { verb: 'tape', name: 'seam-length', along: 'joined' },
    { verb: 'tape', name: 'fall-length', along: 'fall-line' },
    { verb: 'tape', name: 'over', length: 'fall - stand' },
    { verb: 'tape', name: 'longer', length: 'fall-length - seam-length' },
  ],
  handles: [{ drags: 'measure', measure: 'fall', by: 'below-back', from: 34, to: 82 }],
  shows: ['shoulder-line', 'neck-point', 'back-neck-point', 'centre-back'],
  given: ['joined'],
  hides: ['overlap-edge', 'break-level', 'break-point', 'neck-line'],
  labels: ['centre-back', 'neck-point', 'gorge-corner', 'roll-line', 'joined', 'fall-line'],
  box: { min: { x: -35, y: 350 }, max: { x: 190, y: 552 } },
};

const turned = (name: Name, angle: string): Step => ({
  verb: 'swing',
  name,
  what: 'back-end',
  about: 'neck-point',
  angle,
  turn: 'clockwise',
});

/** The swing by hand: the outer edge opens, and the report says what the cloth will do. */
export const swingDrag: Scene = {
  id: 'swing-drag',
  order,
  steps: [
    ...unswung,
    turned('arc-middle', '14 deg'),
    turned('arc-end', '28 deg'),
    { verb: 'curve', name: 'swing-arc', through: ['back-end', 'arc-middle', 'arc-end'] },
    { verb: 'pencil', name: 'collar-back', at: placeOf(order, unswung, 'back-end') },
    { verb: 'rule', name: 'back-line', from: 'neck-point', to: 'collar-back' },
    ...strips,
  ],
  handles: [{ drags: 'mark', mark: 'collar-back', along: 'swing-arc' }],
  shows: ['shoulder-line', 'neck-point'],
  help: ['swing-arc'],
  hides: [...stripsHide, 'back-end', 'arc-middle', 'arc-end'],
  labels: ['neck-point', 'roll-line', 'collar-back'],
  cloth: [
    { outline: 'front-strip', side: 'right' },
    { outline: 'back-strip', side: 'right' },
  ],
  box: behindNeck,
  view: { shows: 'roll' },
};

/** Vincent's stand and fall on Kerttu, swung for flat cloth; on her the rounded readings add up in either unit. */
export const workedSwing: Scene = {
  id: 'worked-swing',
  order: orderOf(
    'kerttu',
    { ...usualStyle, overlap: '1 1/4 in', 'gorge-depth': '2 1/8 in' },
    { 'stand-rule': 'quarter-inch-less' },
  ),
  begins: 'back-neck',
  steps: [
    ...unswung,
    ...swing,
    { verb: 'protractor', name: 'swing-angle', from: 'neck-line', to: 'back-line' },
    { verb: 'along', name: 'collar-back', on: 'back-line', from: 'neck-point', distance: 'back-neck', toward: 'up' },
    { verb: 'square', name: 'across-back', to: 'back-line', through: 'collar-back' },
    {
      verb: 'along',
      name: 'outer-back',
      on: 'across-back',
      from: 'collar-back',
      distance: 'stand + fall',
      toward: 'left',
    },
    {
      verb: 'swing',
      name: 'book-end',
      what: 'back-end',
      about: 'neck-point',
      by: 'fall - stand',
      at: 'back-neck + 1/2 in',
      turn: 'clockwise',
    },
    { verb: 'seam', name: 'line-by-the-book', run: ['neck-point', 'book-end'] },
  ],
  shows: ['shoulder-line', 'neck-point', 'back-neck-point', 'centre-back'],
  given: ['joined'],
  help: ['neck-line', 'across-back', 'line-by-the-book'],
  hides: ['overlap-edge', 'break-level', 'break-point'],
  labels: [
    'neck-point',
    'gorge-corner',
    'roll-line',
    'neck-line',
    'back-line',
    'line-by-the-book',
    'collar-back',
    'outer-back',
    'joined',
  ],
  box: { min: { x: -35, y: 390 }, max: { x: 165, y: 595 } },
};
