import { distance, subtract } from '../../geometry/point.ts';
import type { PositionCheck } from '../exercise.ts';
import type { Take } from './reading.ts';

export const takePosition: Take<PositionCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'point' || right.kind !== 'point') return null;
  return {
    measured: distance(answer.point, right.point),
    expected: 0,
    unit: 'mm',
    displacement: subtract(answer.point, right.point),
    spot: null,
    arrow: { from: answer.point, to: right.point },
  };
};
