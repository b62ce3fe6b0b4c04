import { plain } from '../entry.ts';

/** Names whose words are not just the name with spaces for hyphens, and words shared by every room. */
export const names = {
  'name.left': plain('left, toward the front edge'),
  'name.right': plain('right, toward the side'),
  'name.up': plain('up, toward the shoulder'),
  'name.down': plain('down, toward the waist'),
};
