import type { ShapeKind } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';

const STEMS: Readonly<Record<ShapeKind | 'seam', string>> = {
  point: 'mark',
  line: 'line',
  curve: 'curve',
  length: 'length',
  angle: 'angle',
  seam: 'seam',
};

/** The first of `mark-1`, `mark-2` … (or `line-`, `curve-`, `length-`, `angle-`; `seam-` for what was joined) that nothing on the table is called. */
export function freshName(made: ShapeKind | 'seam', taken: (name: Name) => boolean): Name {
  for (let number = 1; ; number++) {
    const name = `${STEMS[made]}-${number}`;
    if (!taken(name)) return name;
  }
}
