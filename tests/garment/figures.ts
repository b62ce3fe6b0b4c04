import fc from 'fast-check';
import { type Figure, type FigureMeasure, measureRanges } from '../../src/garment/figure.ts';

const within = (measure: FigureMeasure) =>
  fc.double({ min: measureRanges[measure].least, max: measureRanges[measure].most, noNaN: true });

/** Any figure the reader accepts. */
export const anyFigure: fc.Arbitrary<Figure> = fc.record({
  'neck-base': within('neck-base'),
  shoulder: within('shoulder'),
  'shoulder-slope': within('shoulder-slope'),
  'front-waist': within('front-waist'),
  'back-waist': within('back-waist'),
});
