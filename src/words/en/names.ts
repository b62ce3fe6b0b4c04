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
  'name.tip-plumb': plain('upright through the shoulder tip'),
  'name.back-end': plain('end of the back neck'),
  'name.down': plain('down, toward the waist'),
};
