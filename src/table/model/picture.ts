import type { Drawn } from '../../drafting/shape.ts';
import type { Givens, Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Unit } from '../../words/unit.ts';
import type { Box } from '../drawing/box.ts';
import { draw } from '../drawing/draw.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { shapeParts } from '../drawing/parts.ts';
import type { RedPencil } from './red-pencil.ts';

/** Everything that decides how the table's sheet looks. */
export interface Picture {
  readonly sheet: Sheet;
  /** What lay on the table before the first step. */
  readonly givens: Givens;
  readonly shows: readonly Name[];
  readonly box: Box;
  readonly unit: Unit;
  readonly red: RedPencil;
  /** Right places that the learner asked to be shown. */
  readonly right: readonly Drawn[];
}

/** How far lines go on past the sheet, mm, so that they can be pointed at anywhere. */
const REACH = 1500;

/** The picture on the table: what lasts. What shows only while one points is drawn over it. */
export function pictureOf({ sheet, givens, shows, box, unit, red, right }: Picture): Drawing {
  const given = new Set(givens.shapes.keys());
  const made = [...sheet.shapes.keys()].filter((name) => !given.has(name));
  const wide = {
    min: { x: box.min.x - REACH, y: box.min.y - REACH },
    max: { x: box.max.x + REACH, y: box.max.y + REACH },
  };
  return draw(sheet, {
    given,
    shows,
    help: new Set(made.filter((name) => ![...sheet.answers.values()].includes(name))),
    unit,
    box,
    reach: REACH,
    red: red.marks,
    notes: red.notes,
    more: right.flatMap((shape) => shapeParts(shape, 'right', wide)),
  });
}
