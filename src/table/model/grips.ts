import type { Shape } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { CurveThrough, Step } from '../../drafting/step.ts';
import type { Point } from '../../geometry/point.ts';
import type { Bench } from './bench.ts';
import { bent, type Handle, handlesOf } from './handles.ts';
import type { Move } from './moved.ts';

/** Something on the sheet that can be dragged: a free mark, or a handle of a curve. */
export interface Held {
  readonly key: string;
  readonly name: string;
  readonly at: Point;
  readonly handle: (Pick<Handle, 'point' | 'side'> & { readonly number: number; readonly root: Point }) | null;
}

/** Everything that can be dragged in the draft as far as it is carried out. */
export function gripsOf({ steps, upTo }: Pick<Bench, 'steps' | 'upTo'>, sheet: Sheet): Held[] {
  return steps.slice(0, upTo).flatMap((step) => heldIn(step, sheet));
}

const kept = new WeakMap<Shape, { readonly step: Step; readonly held: readonly Held[] }>();

/** The very ones of the last time, where neither the step nor what it made has changed. */
function heldIn(step: Step, sheet: Sheet): readonly Held[] {
  const shape = sheet.shapes.get(step.name);
  if (shape === undefined) return [];
  const last = kept.get(shape);
  if (last?.step === step) return last.held;
  const held = heldOf(step, shape);
  kept.set(shape, { step, held });
  return held;
}

function heldOf(step: Step, shape: Shape): Held[] {
  if (step.verb === 'pencil' && shape.kind === 'point')
    return [{ key: step.name, name: step.name, at: shape.point, handle: null }];
  if (step.verb !== 'curve' || shape.kind !== 'curve') return [];
  return handlesOf(shape.path).map(({ point, side, at, root }, index) => ({
    key: `${step.name}/${point}/${side}`,
    name: step.name,
    at,
    handle: { point, side, root, number: index + 1 },
  }));
}

/** What dragging something to a place does. */
export function dragged({ handle, name }: Held, to: Point, steps: readonly Step[], sheet: Sheet): Move | null {
  if (!handle) return { do: 'move', name, at: [round(to.x), round(to.y)] };
  const step = steps.find((one) => one.name === name);
  const shape = sheet.shapes.get(name);
  if (step?.verb !== 'curve' || shape?.kind !== 'curve') return null;
  return { do: 'bend', name, shape: bent(step as CurveThrough, shape.path, handle, to) };
}

/** A pencil mark is no finer than a tenth of a millimetre. */
function round(mm: number): number {
  return Math.round(mm * 10) / 10;
}
