import { plain } from '../entry.ts';

/** Names whose words are not just the name with spaces for hyphens, and words shared by every room. */
export const names = {
  'name.left': plain('left, toward the front edge'),
  'name.right': plain('right, toward the shoulder tip'),
  'name.up': plain('up, toward the shoulder'),
  'name.roll-line-high': plain('high roll line'),
  'name.break-point-high': plain('high break point'),
  'name.break-level-high': plain('high break level'),
  'name.collarbone': plain('collarbone level'),
  'name.button-line': plain('first row of buttons'),
  'name.second-button-line': plain('second row of buttons'),
  'name.neck-line': plain('line of the neck seam'),
  'name.front-neck-edge': plain('front neck seam'),
  'name.waist-point': plain('corner of centre front and waist'),
  'name.tip-plumb': plain('upright through the shoulder tip'),
  'name.collar-back': plain('neck edge mark'),
  'name.outer-back': plain('width mark'),
  'name.folded-level': plain('notch level as folded over'),
  'name.end-line': plain('line of the collar end'),
  'name.below-back': plain('place beyond the seam, behind'),
  'name.below-front': plain('place beyond the seam, in front'),
  'name.edge-run': plain('run of the neck edge'),
  'name.edge-start': plain('back end of the neck edge'),
  'name.outer-start': plain('back end of the outer edge'),
  'name.back-end': plain('end of the back neck'),
  'name.down': plain('down, toward the waist'),
};
