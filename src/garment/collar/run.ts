import { makeSeam } from '../../drafting/make/seam.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { RunPiece } from '../../drafting/taken.ts';
import type { Path } from '../../geometry/cubic.ts';
import { called } from './called.ts';

/**
 * Points and curves of a sheet joined end to end, as the step `seam` joins them; names are targets or objects. Null when
 * one of them is not there yet, is neither point nor curve, or does not meet its neighbour.
 */
export function runAlong(sheet: Sheet, names: readonly Name[]): Path | null {
  const pieces: RunPiece[] = [];
  for (const name of names) {
    const shape = called(sheet, name);
    if (shape?.kind === 'point') pieces.push({ kind: 'point', name, point: shape.point });
    else if (shape?.kind === 'curve') pieces.push({ kind: 'path', name, path: shape.path });
    else return null;
  }
  const seam = makeSeam({ run: pieces });
  return seam.ok ? seam.value.path : null;
}
