import type { Name, Step } from '../../drafting/step.ts';

/** An under collar cut through where it turns, drawn for the picture: up from the neck seam, half round, and down to its edge. */
const under: readonly Step[] = [
  { verb: 'pencil', name: 'neck-seam', at: [0, 0] },
  { verb: 'pencil', name: 'turn-in', at: [0, 30] },
  { verb: 'pencil', name: 'turn-top', at: [4, 34] },
  { verb: 'pencil', name: 'turn-out', at: [8, 30] },
  { verb: 'pencil', name: 'under-end', at: [8, -12] },
  { verb: 'rule', name: 'going-up', from: 'neck-seam', to: 'turn-in' },
  { verb: 'rule', name: 'going-down', from: 'turn-out', to: 'under-end' },
  { verb: 'square', name: 'seam-level', to: 'going-up', through: 'neck-seam' },
  {
    verb: 'curve',
    name: 'half-turn',
    through: ['turn-in', 'turn-top', 'turn-out'],
    leave: { along: 'going-up' },
    arrive: { along: 'going-down' },
  },
  { verb: 'seam', name: 'under-collar', run: ['neck-seam', 'turn-in', 'half-turn', 'turn-out', 'under-end'] },
  { verb: 'tape', name: 'under-length', along: 'under-collar' },
  { verb: 'protractor', name: 'half-circle', along: 'under-collar' },
];

/** The neck it stands against. */
const neck: readonly Step[] = [
  { verb: 'pencil', name: 'neck-low', at: [-7, -18] },
  { verb: 'pencil', name: 'neck-high', at: [-7, 48] },
  { verb: 'pencil', name: 'in-low', at: [-24, -18] },
  { verb: 'pencil', name: 'in-high', at: [-24, 48] },
  { verb: 'seam', name: 'wearer', run: ['neck-low', 'neck-high', 'in-high', 'in-low', 'neck-low'] },
];

/** The top collar laid over the under collar, begun at `top-start`, and cut as long as the expression `top-cut` says. */
function top(cut: string): readonly Step[] {
  return [
    { verb: 'tape', name: 'apart', from: 'neck-seam', to: 'top-start' },
    { verb: 'offset', name: 'top-way', of: 'under-collar', distance: 'apart', side: 'top-start' },
    { verb: 'tape', name: 'top-length', along: 'top-way' },
    { verb: 'tape', name: 'short', length: 'top-length - under-length' },
    { verb: 'along', name: 'top-end', on: 'top-way', from: 'top-start', distance: cut, toward: 'up' },
    { verb: 'seam', name: 'top-collar', run: [{ along: 'top-way', from: 'top-start', to: 'top-end' }] },
  ];
}

/** Two layers of a collar, their middles `apart` mm from each other, the top one cut as long as `cut`. */
export function layers(apart: number, cut: string): readonly Step[] {
  return [...neck, ...under, { verb: 'pencil', name: 'top-start', at: [-apart, 0] }, ...top(cut)];
}

export const layersHide: readonly Name[] = [
  ...['neck-low', 'neck-high', 'in-low', 'in-high', 'wearer', 'turn-in', 'turn-top', 'turn-out', 'half-turn'],
  ...['going-up', 'going-down', 'seam-level', 'top-way'],
];
