import type { Shape } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import type { Line } from '../../geometry/line.ts';
import { type Point, quarterTurn, scale } from '../../geometry/point.ts';

/** A sheet, as far as things are looked up on it by name. */
export interface Named {
  readonly shapes: Pick<ReadonlyMap<Name, Shape>, 'get'>;
  readonly answers: Pick<ReadonlyMap<Name, Name>, 'get'>;
}

/** The shape a check's name stands for: an object of the reference's sheet, or what answers a target of that name. */
export function shapeNamed(sheet: Named, name: Name): Shape | null {
  const answered = sheet.answers.get(name);
  return sheet.shapes.get(name) ?? (answered === undefined ? null : (sheet.shapes.get(answered) ?? null));
}

export function pointNamed(sheet: Named, name: Name): Point | null {
  const shape = shapeNamed(sheet, name);
  return shape?.kind === 'point' ? shape.point : null;
}

export function lineNamed(sheet: Named, name: Name): Line | null {
  const shape = shapeNamed(sheet, name);
  return shape?.kind === 'line' ? shape.line : null;
}

/** The line's normal that looks right across the sheet, or up for a level line, so that signs do not hang on how a line was drawn. */
export function outwardNormal(line: Line): Point {
  const normal = quarterTurn(line.direction);
  const looksRight = Math.abs(normal.x) > 1e-9 ? normal.x > 0 : normal.y > 0;
  return looksRight ? normal : scale(normal, -1);
}
