import type { Expression, Step } from '../../drafting/step.ts';
import { orderOf, placeOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('ravi', usualStyle);

/** Neck and shoulder, cut through: drawn for the picture, not anyone's body. */
const body: readonly Step[] = [
  { verb: 'pencil', name: 'neck-seam', at: [0, 0] },
  { verb: 'pencil', name: 'shoulder-end', at: [125, -51.25] },
  { verb: 'rule', name: 'shoulder-line-cut', from: 'neck-seam', to: 'shoulder-end' },
  { verb: 'pencil', name: 'neck-top', at: [-17.5, 75] },
  { verb: 'rule', name: 'neck-line-cut', from: 'neck-seam', to: 'neck-top' },
  { verb: 'seam', name: 'neck-cut', run: ['neck-top', 'neck-seam'] },
  { verb: 'seam', name: 'shoulder-cut', run: ['neck-seam', 'shoulder-end'] },
  { verb: 'pencil', name: 'inside-low', at: [-90, -90] },
  { verb: 'pencil', name: 'inside-high', at: [-90, 75] },
  { verb: 'pencil', name: 'inside-far', at: [125, -90] },
  {
    verb: 'seam',
    name: 'wearer',
    run: ['neck-top', 'neck-seam', 'shoulder-end', 'inside-far', 'inside-low', 'inside-high', 'neck-top'],
  },
];

const foldAt = (stand: Expression): Step => ({
  verb: 'along',
  name: 'fold',
  on: 'neck-line-cut',
  from: 'neck-seam',
  distance: stand,
  toward: 'up',
});

/** The collar at its true width: the stand up the neck to the fold, the rest down until it meets the shoulder. */
const collar: readonly Step[] = [
  { verb: 'tape', name: 'stand-here', from: 'neck-seam', to: 'fold' },
  {
    verb: 'compass',
    name: 'collar-edge',
    about: 'fold',
    radius: 'stand + fall - stand-here',
    on: 'shoulder-line-cut',
    near: 'right',
  },
  { verb: 'tape', name: 'fall-here', from: 'fold', to: 'collar-edge' },
  { verb: 'seam', name: 'collar-cut', run: ['neck-seam', 'fold', 'collar-edge'] },
];

const shown: Omit<Scene, 'id' | 'steps'> = {
  order,
  shows: [],
  given: ['neck-cut', 'shoulder-cut', 'neck-seam'],
  hides: [
    'shoulder-end',
    'neck-top',
    'shoulder-line-cut',
    'neck-line-cut',
    'inside-low',
    'inside-high',
    'inside-far',
    'wearer',
  ],
  cloth: [{ outline: 'wearer', side: 'right' }],
  labels: ['neck-seam', 'fold', 'collar-edge', 'neck-cut', 'shoulder-cut'],
  box: { min: { x: -45, y: -45 }, max: { x: 95, y: 65 } },
};

/** The collar cut through at the side of the neck, with a stand that is given. */
export function section(id: string, stand: Expression): Scene {
  return { ...shown, id, steps: [...body, foldAt(stand), ...collar] };
}

/** The same, its fold to be dragged up and down the neck. */
export function liveSection(id: string): Scene {
  const fold = placeOf(order, [...body, foldAt('stand')], 'fold');
  return {
    ...shown,
    id,
    steps: [...body, { verb: 'pencil', name: 'fold', at: fold }, ...collar],
    handles: [
      { drags: 'mark', mark: 'fold', along: 'neck-line-cut', within: { min: { x: -20, y: 0 }, max: { x: 0, y: 40 } } },
    ],
  };
}
