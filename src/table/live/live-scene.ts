import type { Name, Step } from '../../drafting/step.ts';
import type { WornPlan } from '../../garment/collar/worn-plan.ts';
import type { Order } from '../../grader/order.ts';
import type { Box } from '../drawing/box.ts';
import type { ViewId } from '../views/which.ts';

/** A style measure that is dragged by the mark which shows it, between two values in mm. */
export interface MeasureHandle {
  readonly drags: 'measure';
  readonly measure: Name;
  readonly by: Name;
  readonly from: number;
  readonly to: number;
}

/** A pencil mark that is dragged freely, or kept in a box or on a line or curve. */
export interface MarkHandle {
  readonly drags: 'mark';
  readonly mark: Name;
  readonly within?: Box;
  readonly along?: Name;
}

export type LiveHandle = MeasureHandle | MarkHandle;

/** A figure that can be dragged: a draft for an order, how much of it is shown, and what may be moved. Plain data: it goes into the page. */
export interface LiveScene {
  readonly order: Order;
  readonly steps: readonly Step[];
  readonly shows: readonly Name[];
  /** Made objects drawn as if they had been given. */
  readonly given?: readonly Name[];
  /** Made objects drawn as what should have been, beside what is. */
  readonly right?: readonly Name[];
  readonly help?: readonly Name[];
  readonly hides?: readonly Name[];
  readonly labels: readonly Name[];
  readonly cloth?: readonly { readonly outline: Name; readonly side: 'right' | 'other' }[];
  /** Fixed, so that the sheet holds still while the draft moves. */
  readonly box: Box;
  readonly handles: readonly LiveHandle[];
  /** A view of the draft under its sheet, or in place of it: it follows every move. */
  readonly view?: LiveView;
  /** What the picture shows at rest, for those who hear it; without it, the names of what is drawn. */
  readonly pictures?: string;
  /** Spoken and written under the figure: an ICU message that may use any measure or taped length of the sheet in braces. */
  readonly says?: string;
  /**
   * What it may choose its words by: of two lengths of the sheet, whether the first is shown as `more` than the second, `less`,
   * or the `same`. `{ side: ['hangs', 'stand'] }` is chosen by with `{side, select, more {…} less {…} other {…}}`.
   */
  readonly compares?: Readonly<Record<Name, readonly [Name, Name]>>;
}

/** A view of a figure's draft. */
export interface LiveView {
  readonly shows: ViewId;
  /** What turns over, where that is not the usual lapel and collar. */
  readonly plan?: WornPlan;
  /** Whether it stands in place of the sheet. */
  readonly alone?: boolean;
}

/** Where a live figure stands: style measures in mm, and places of free marks. */
export interface LiveState {
  readonly measures: Readonly<Record<Name, number>>;
  readonly marks: Readonly<Record<Name, readonly [number, number]>>;
}

export const atRest: LiveState = { measures: {}, marks: {} };

/** The name of the mark that a handle is held by. */
export function heldBy(handle: LiveHandle): Name {
  return handle.drags === 'measure' ? handle.by : handle.mark;
}
