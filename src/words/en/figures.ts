import { plain } from '../entry.ts';

/** What only the figures of the lessons say: names of their objects, where these are not just their words, and heads of their tables. */
export const figures = {
  'course.compare': plain('The same draft for several people'),
  'course.compare-person': plain('For'),

  'name.lapel-point-worn': plain('lapel point as worn'),
  'name.lapel-edge-worn': plain('lapel edge as worn'),
  'name.gorge-worn': plain('gorge as worn'),
  'name.lapel-reach': plain('line of the lapel width'),
  'name.notch-worn': plain('notch as worn'),
  'name.notch-reach': plain('line of the notch width'),
  'name.under-notch': plain('the foot under the notch'),
  'name.fold-foot': plain('the foot on the roll line'),
  'name.joined': plain('neck seam'),
  'name.fall-here': plain('fall'),
  'name.back-cut': plain('back'),
  'name.gorge-run': plain('the gorge run on'),
  'name.top-edge-drawn': plain('top edge of the lapel'),
  'name.over-shoulder': plain('mark over the shoulder'),
  'name.top-edge': plain('outer edge of the top collar'),
  'name.lower-side': plain('lower side of the tape'),
};
