import { type Box, heightOf, widthOf } from './box.ts';
import { figure } from './path-data.ts';

/** A box of the sheet as an SVG's, y down. */
export function viewBox(box: Box): string {
  return [box.min.x, -box.max.y, widthOf(box), heightOf(box)].map(figure).join(' ');
}
