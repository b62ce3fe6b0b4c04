import type { Shape } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Path } from '../../geometry/cubic.ts';
import type { Line } from '../../geometry/line.ts';
import type { Point } from '../../geometry/point.ts';

/** What is called so on a sheet: the answer to the target of that name, or else the object of that name. */
export function called(sheet: Sheet, name: Name): Shape | null {
  return sheet.shapes.get(sheet.answers.get(name) ?? name) ?? null;
}

/** The point called so; null when there is none, or it is something else. */
export function pointCalled(sheet: Sheet, name: Name): Point | null {
  const shape = called(sheet, name);
  return shape?.kind === 'point' ? shape.point : null;
}

/** The line called so; null when there is none, or it is something else. */
export function lineCalled(sheet: Sheet, name: Name): Line | null {
  const shape = called(sheet, name);
  return shape?.kind === 'line' ? shape.line : null;
}

/** The curve or seam called so; null when there is none, or it is something else. */
export function pathCalled(sheet: Sheet, name: Name): Path | null {
  const shape = called(sheet, name);
  return shape?.kind === 'curve' ? shape.path : null;
}

/** A length of the order or of the tape, mm; null when there is none of the name. */
export function lengthCalled(sheet: Sheet, name: Name): number | null {
  const quantity = sheet.measures.get(name);
  return quantity?.dimension === 'length' ? quantity.value : null;
}
