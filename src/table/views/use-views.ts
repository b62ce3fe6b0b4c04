import { useMemo, useState } from 'preact/hooks';
import type { Sheet } from '../../drafting/sheet.ts';
import type { WornPlan } from '../../garment/collar/worn-plan.ts';
import { type ViewId, viewsOf } from './which.ts';

export interface Views {
  readonly views: readonly ViewId[];
  /** The open one, while the draft has what it takes. */
  readonly open: ViewId | null;
  readonly onOpen: (view: ViewId | null) => void;
}

/** Which views a draft offers, and which is open. One that the draft no longer has waits until it has it again. */
export function useViews(sheet: Sheet, plan: WornPlan): Views {
  const views = useMemo(() => viewsOf(sheet, plan), [sheet, plan]);
  const [wanted, setWanted] = useState<ViewId | null>(null);
  return { views, open: wanted !== null && views.includes(wanted) ? wanted : null, onOpen: setWanted };
}
