import type { Givens, Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import { type Line, signedDistance } from '../../geometry/line.ts';
import { add, quarterTurn, scale } from '../../geometry/point.ts';
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
  const block = blockBox(givens, shown);
  if (sheet.shapes.size === givens.shapes.size) return block;
  const drawn = [...sheet.shapes].filter(([name]) => !givens.shapes.has(name) && shown(name));
  const lines = drawn.flatMap(([, shape]) => (shape.kind === 'line' ? [shape.line] : []));
  return lines.reduce(withLine, bothBoxes(block, fitBox(sheet, shown, [])));
}

let lastBlock: { readonly givens: Givens; readonly shown: (name: Name) => boolean; readonly box: Box } | null = null;

/** That of the block, which lies still: looked up once, for whoever asks of one sheet over and over. */
function blockBox(givens: Givens, shown: (name: Name) => boolean): Box {
  if (lastBlock?.givens === givens && lastBlock.shown === shown) return lastBlock.box;
  const box = sheetBox({ ...givens, answers: new Map(), problems: [] }, shown);
  lastBlock = { givens, shown, box };
  return box;
}

/** Room beyond a line that alone lies so far out, mm. */
const BEYOND = 15;

/** The box, let out as far as a line that passes it by: a line has no ends, and would count for nothing otherwise. */
function withLine(box: Box, line: Line): Box {
  const corners = [box.min, box.max, { x: box.min.x, y: box.max.y }, { x: box.max.x, y: box.min.y }];
  const off = corners.map((corner) => signedDistance(line, corner));
  const [nearest, furthest] = [Math.min(...off), Math.max(...off)];
  if (nearest <= 0 && furthest >= 0) return box;
  const shift = nearest > 0 ? nearest + BEYOND : furthest - BEYOND;
  const corner = corners[off.indexOf(nearest > 0 ? nearest : furthest)] ?? box.min;
  const there = add(corner, scale(quarterTurn(line.direction), -shift));
  return bothBoxes(box, { min: there, max: there });
}

/** Whether an object is shown: of the block only what an exercise lays on the table, and all that was drawn. */
export function shownOn(shows: readonly Name[], givens: Givens): (name: Name) => boolean {
  const laid = new Set(shows);
  return (name) => !givens.shapes.has(name) || laid.has(name);
}
