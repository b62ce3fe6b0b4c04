import type { Givens, Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import { type Box, heightOf, widthOf, withAspect } from '../drawing/box.ts';
import { fitBox } from '../drawing/draw.ts';

/** Room kept free at the front edge for what will be drawn there, mm. */
const FRONT = 80;
/** And over the shoulder, mm. */
const ABOVE = 45;
/** A sheet is no wider than this to its height, as no frame is: so the frame is filled to its height at every width of the screen. */
const WIDEST = 0.84;

/** The part of the sheet that the table shows at first: the block, and room in front of it. */
export function sheetBox(block: Sheet, shown: (name: Name) => boolean): Box {
  const { min, max } = fitBox(block, shown, []);
  const box = { min: { x: min.x - FRONT, y: min.y }, max: { x: max.x, y: max.y + ABOVE } };
  const aspect = widthOf(box) / heightOf(box);
  return aspect > WIDEST ? withAspect(box, WIDEST) : box;
}

/** The least box that holds both. */
function bothBoxes(a: Box, b: Box): Box {
  return {
    min: { x: Math.min(a.min.x, b.min.x), y: Math.min(a.min.y, b.min.y) },
    max: { x: Math.max(a.max.x, b.max.x), y: Math.max(a.max.y, b.max.y) },
  };
}

/** The part of the sheet shown at first: the block, and whatever was drawn beyond it. */
export function homeOf(givens: Givens, sheet: Sheet, shown: (name: Name) => boolean): Box {
  const block = sheetBox({ ...givens, answers: new Map(), problems: [] }, shown);
  return sheet.shapes.size === givens.shapes.size ? block : bothBoxes(block, fitBox(sheet, shown, []));
}

/** Whether an object is shown: of the block only what an exercise lays on the table, and all that was drawn. */
export function shownOn(shows: readonly Name[], givens: Givens): (name: Name) => boolean {
  const laid = new Set(shows);
  return (name) => !givens.shapes.has(name) || laid.has(name);
}
