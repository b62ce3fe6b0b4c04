import type { VNode } from 'preact';
import type { Sheet } from '../../drafting/sheet.ts';
import type { WornPlan } from '../../garment/collar/worn-plan.ts';
import type { Strictness } from '../../grader/tolerance.ts';
import { type InMotion, useMotion } from '../in-motion.ts';
import type { Say } from '../say.ts';
import { AnyView } from './AnyView.tsx';
import type { ViewId } from './which.ts';

interface ViewPanelProps {
  readonly view: ViewId;
  readonly sheet: Sheet;
  readonly motion: InMotion;
  readonly plan: WornPlan;
  readonly strictness: Strictness;
  readonly id: string;
  readonly say: Say;
}

/** The view that is open, beside the sheet where there is room: it follows every change of the draft. */
export function ViewPanel({ view, sheet, motion, plan, strictness, id, say }: ViewPanelProps): VNode {
  const now = useMotion(motion)?.sheet ?? sheet;
  return (
    <section class="view-panel" id={id} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{say(`views.${view}`)}</h2>
      <AnyView key={view} view={view} sheet={now} plan={plan} strictness={strictness} id={id} say={say} begins />
    </section>
  );
}
