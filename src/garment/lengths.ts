import type { Shape } from '../drafting/shape.ts';
import type { Name } from '../drafting/step.ts';
import { lengthOf } from '../geometry/length.ts';

/** What a cutter reads off a block, mm. */
export interface BlockLengths {
  /** From the centre line to the neck point; front and back alike. */
  readonly neckWidth: number;
  /** The front neckline, from the neck point to the front neck point. */
  readonly frontNeck: number;
  /** The back neckline, from the neck point to the centre back: half of the whole back neck. */
  readonly backNeck: number;
}

/** The lengths of a block's necklines; null when the shapes are not those of a block. */
export function blockLengths(shapes: ReadonlyMap<Name, Shape>): BlockLengths | null {
  const neck = shapes.get('neck-point');
  const front = shapes.get('front-neckline');
  const back = shapes.get('back-neckline');
  if (neck?.kind !== 'point' || front?.kind !== 'curve' || back?.kind !== 'curve') return null;
  return { neckWidth: neck.point.x, frontNeck: lengthOf(front.path), backNeck: lengthOf(back.path) };
}
