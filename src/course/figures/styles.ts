import type { Expression, Name } from '../../drafting/step.ts';

type Style = Readonly<Record<Name, Expression>>;

/** The style the figures of the lessons are drawn in, unless they say otherwise. */
export const usualStyle: Style = {
  overlap: '1 in',
  button: '3/4 in',
  'break-rise': '1 1/2 in',
  stand: '1 1/4 in',
  fall: '1 3/4 in',
  'notch-drop': '1/2 in',
  'notch-width': '2 1/4 in',
  'gorge-depth': '2 in',
  'lapel-width': '3 1/4 in',
};
