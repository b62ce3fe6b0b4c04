import { plain } from '../entry.ts';

/** Objects that only the figures of the lessons have, where their name is not just its words. */
export const figures = {
  'name.lapel-point-worn': plain('lapel point as worn'),
  'name.lapel-edge-worn': plain('lapel edge as worn'),
  'name.gorge-worn': plain('gorge as worn'),
  'name.lapel-reach': plain('lapel width'),
  'name.notch-worn': plain('notch as worn'),
  'name.notch-reach': plain('notch width'),
  'name.under-notch': plain('the foot under the notch'),
  'name.fold-foot': plain('the foot on the roll line'),
  'name.fall-here': plain('fall'),
  'name.back-cut': plain('back'),
};
