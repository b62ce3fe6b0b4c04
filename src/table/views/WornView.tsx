import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Sheet } from '../../drafting/sheet.ts';
import { wornOf } from '../../garment/collar/worn.ts';
import { usualWorn, type WornPlan } from '../../garment/collar/worn-plan.ts';
import { SheetDrawing } from '../drawing/SheetDrawing.tsx';
import type { Say } from '../say.ts';
import { StageKeys } from './StageKeys.tsx';
import { useStages } from './use-stages.ts';
import './views.css';
import { sayNotch, type WornNames, wornDrawing } from './worn-drawing.ts';

export interface ViewProps {
  readonly sheet: Sheet;
  /** Unique on the page. */
  readonly id: string;
  readonly say: Say;
  /** What turns over and what the collar is sewn to, where that is not the usual. */
  readonly plan?: WornPlan;
  /** Whether it moves once as it opens. */
  readonly begins?: boolean;
}

const SECONDS = 1.6;
const STOPS = [0, 0.25, 0.5, 0.75, 1] as const;

/** A draft as it is worn: the lapel folded over, the collar turned down, and where the notch will sit. Nothing while nothing turns over. */
export function WornView({ sheet, id, say, plan = usualWorn, begins = false }: ViewProps): VNode | null {
  const worn = useMemo(() => wornOf(sheet, plan), [sheet, plan]);
  const stages = useStages(SECONDS, begins);
  if (!worn) return null;
  const names = namesIn(plan);
  const { fraction } = stages;
  const notch = sayNotch(worn, names);
  return (
    <div class="view view--worn">
      <SheetDrawing
        drawing={wornDrawing(worn, fraction, names, say.reader.unit)}
        reader={say.reader}
        id={`${id}-worn`}
      />
      <StageKeys stages={stages} stops={STOPS} says={saysAt(fraction, say)} say={say} />
      {notch ? (
        <p class="view-says" aria-live="polite">
          {say.message(notch)}
        </p>
      ) : null}
      {worn.collar && plan.until !== undefined ? <p class="view-note">{say('views.worn-until')}</p> : null}
    </div>
  );
}

function namesIn({ over, level = 'collarbone-level' }: WornPlan): WornNames {
  return { over, level };
}

function saysAt(fraction: number, say: Say): string {
  if (fraction === 0) return say('views.worn-flat');
  return fraction === 1 ? say('views.worn-over') : say('views.worn-part', { angle: { radians: Math.PI * fraction } });
}
