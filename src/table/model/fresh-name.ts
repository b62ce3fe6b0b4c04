import type { ShapeKind } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';

const STEMS: Readonly<Record<ShapeKind, string>> = {
  point: 'mark',
  line: 'line',
  curve: 'curve',
  length: 'length',
  angle: 'angle',
};

/** The first of `mark-1`, `mark-2` … (or `line-`, `curve-`, `length-`, `angle-`) that nothing on the table is called. */
export function freshName(kind: ShapeKind, taken: (name: Name) => boolean): Name {
  for (let number = 1; ; number++) {
    const name = `${STEMS[kind]}-${number}`;
    if (!taken(name)) return name;
  }
}
