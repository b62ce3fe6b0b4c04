import type { Name, Step } from '../../drafting/step.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

/** Neck and back cut through at the centre back, drawn for the picture: nobody's body, and in one line so that lengths can be read off. */
const body: readonly Step[] = [
  { verb: 'pencil', name: 'neck-seam', at: [0, 0] },
  { verb: 'pencil', name: 'neck-top', at: [-13, 72] },
  { verb: 'pencil', name: 'back-low', at: [12, -66.46] },
  { verb: 'pencil', name: 'inside-low', at: [-60, -66.46] },
  { verb: 'pencil', name: 'inside-high', at: [-60, 72] },
  { verb: 'rule', name: 'up-the-neck', from: 'neck-seam', to: 'neck-top' },
  { verb: 'seam', name: 'neck-cut', run: ['neck-top', 'neck-seam'] },
  { verb: 'seam', name: 'back-cut', run: ['neck-seam', 'back-low'] },
  { verb: 'seam', name: 'wearer', run: ['neck-top', 'back-low', 'inside-low', 'inside-high', 'neck-top'] },
];

/** The collar up the neck, turned over, and down again outside. What the turn takes up is taken from the fall. */
const collar: readonly Step[] = [
  { verb: 'parallel', name: 'outside', to: 'up-the-neck', distance: 'cloth-turn', side: 'right' },
  { verb: 'along', name: 'stand-height', on: 'up-the-neck', from: 'neck-seam', distance: 'stand', toward: 'up' },
  { verb: 'foot', name: 'height-outside', from: 'stand-height', on: 'outside' },
  { verb: 'part', name: 'fold', from: 'stand-height', to: 'height-outside', fraction: '1/2' },
  {
    verb: 'along',
    name: 'stand-top',
    on: 'up-the-neck',
    from: 'neck-seam',
    distance: 'stand - cloth-turn / 2',
    toward: 'up',
  },
  { verb: 'foot', name: 'fall-top', from: 'stand-top', on: 'outside' },
  {
    verb: 'curve',
    name: 'turn-over',
    through: ['stand-top', 'fold', 'fall-top'],
    leave: { along: 'up-the-neck' },
    arrive: { along: 'outside' },
  },
  {
    verb: 'along',
    name: 'collar-edge',
    on: 'outside',
    from: 'height-outside',
    distance: 'fall-here - cloth-turn',
    toward: 'down',
  },
  { verb: 'foot', name: 'edge-foot', from: 'collar-edge', on: 'up-the-neck' },
  { verb: 'tape', name: 'passes', from: 'neck-seam', to: 'edge-foot' },
  { verb: 'tape', name: 'out', from: 'edge-foot', to: 'collar-edge' },
  { verb: 'tape', name: 'comes-down', length: 'fall-here - cloth-turn' },
  { verb: 'seam', name: 'collar-cut', run: ['neck-seam', 'stand-top', 'turn-over', 'fall-top', 'collar-edge'] },
];

const hides: readonly Name[] = [
  'neck-top',
  'back-low',
  'inside-low',
  'inside-high',
  'up-the-neck',
  'wearer',
  'outside',
  'stand-height',
  'height-outside',
  'stand-top',
  'fall-top',
  'turn-over',
  'edge-foot',
];

/** The collar cut through at the centre back; `fall` is what is cut for it. */
export function behind(id: string, fall: string, style: Readonly<Record<Name, string>> = {}): Scene {
  return {
    id,
    order: orderOf('kerttu', { ...usualStyle, 'cloth-turn': '1/4 in', ...style }),
    steps: [...body, { verb: 'tape', name: 'fall-here', length: fall }, ...collar],
    shows: [],
    given: ['neck-cut', 'back-cut', 'neck-seam'],
    hides,
    labels: ['neck-seam', 'fold', 'collar-edge', 'neck-cut', 'back-cut'],
    compares: { side: ['comes-down', 'stand'] },
    cloth: [{ outline: 'wearer', side: 'right' }],
    box: { min: { x: -44, y: -36 }, max: { x: 62, y: 52 } },
  };
}
