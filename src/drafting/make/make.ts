import type { StepOf } from '../form.ts';
import type { Outcome } from '../outcome.ts';
import type { Shape } from '../shape.ts';
import type { Given } from '../taken.ts';
import type { FormId } from '../verbs.ts';
import { makeAlong } from './along.ts';
import { makeCurve } from './curve.ts';
import { makeParallel, makeParallelThrough, makeRule, makeSlant, makeSquare } from './lines.ts';
import { makeFold, makeSwing, makeSwingAngle } from './moves.ts';
import { makeOffset } from './offset.ts';
import { makeCompass, makeCross, makeFoot, makePart, makePencil } from './points.ts';
import { makeProtractor, makeProtractorAlong } from './protractor.ts';
import { makeSeam } from './seam.ts';
import { makeTape, makeTapeBetween, makeTapeSet } from './tape.ts';

/** What carries out each form: from its blanks, taken, to the shape it makes. The step gives the names for messages. */
export const makers: { readonly [I in FormId]: (given: Given<I>, step: StepOf[I]) => Outcome<Shape> } = {
  pencil: makePencil,
  along: makeAlong,
  cross: makeCross,
  compass: makeCompass,
  foot: makeFoot,
  part: makePart,
  rule: makeRule,
  square: makeSquare,
  parallel: makeParallel,
  'parallel-through': makeParallelThrough,
  slant: makeSlant,
  curve: makeCurve,
  offset: makeOffset,
  seam: makeSeam,
  fold: makeFold,
  swing: makeSwing,
  'swing-angle': makeSwingAngle,
  tape: makeTape,
  'tape-between': makeTapeBetween,
  'tape-set': makeTapeSet,
  protractor: makeProtractor,
  'protractor-along': makeProtractorAlong,
};
