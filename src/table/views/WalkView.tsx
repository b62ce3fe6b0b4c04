import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { fractionAt, momentAt, rollingOf } from '../../garment/collar/rolling.ts';
import { type Walk, walkOf } from '../../garment/collar/walk.ts';
import { usualWorn } from '../../garment/collar/worn-plan.ts';
import { SheetDrawing } from '../drawing/SheetDrawing.tsx';
import type { Say } from '../say.ts';
import { StageKeys } from './StageKeys.tsx';
import { useStages } from './use-stages.ts';
import { walkDrawing } from './walk-drawing.ts';
import { sayReached, sayWalk } from './walk-words.ts';
import './views.css';
import type { ViewProps } from './WornView.tsx';

interface WalkViewProps extends ViewProps {
  /** What may be left over between two match marks, mm. */
  readonly within: number;
}

const SECONDS = 4;

/** The collar's neck edge laid along the garment's neck seam, and what is left over. Nothing before there is a neck edge. */
export function WalkView({ sheet, id, say, within, plan = usualWorn, begins = false }: WalkViewProps): VNode | null {
  const walk = useMemo(() => walkOf(sheet, plan), [sheet, plan]);
  const rolling = useMemo(() => walk && rollingOf(walk.seam, walk.collar), [walk]);
  const stages = useStages(SECONDS, begins);
  if (!walk || !rolling) return null;
  const moment = momentAt(rolling, stages.fraction);
  const stops = walk.marks.map(({ seam }, index) => (index === walk.marks.length - 1 ? 1 : fractionAt(rolling, seam)));
  return (
    <div class="view view--walk">
      <SheetDrawing
        drawing={walkDrawing(sheet, walk, rolling, moment, say.reader.unit)}
        reader={say.reader}
        id={`${id}-walk`}
      />
      <StageKeys stages={stages} stops={stops} says={say.message(sayReached(walk, stops, stages.fraction))} say={say} />
      <p class="view-says" aria-live="polite">
        {sayWalk(walk, within).map(say.message).join(' ')}
      </p>
      <Stretches walk={walk} say={say} />
    </div>
  );
}

/** The two seams between match marks, and what is left over. */
function Stretches({ walk, say }: { readonly walk: Walk; readonly say: Say }): VNode {
  const length = (mm: number): string => say('views.length', { length: { mm } });
  return (
    <table class="view-table">
      <caption>{say('views.walk-table')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('views.walk-stretch')}</th>
          <th scope="col">{say('views.walk-seam')}</th>
          <th scope="col">{say('views.walk-collar')}</th>
          <th scope="col">{say('views.walk-left')}</th>
        </tr>
      </thead>
      <tbody>
        {walk.stretches.map(({ from, to, seam, collar, over }) => (
          <tr key={to}>
            <th scope="row">{say('views.walk-between', { from: { named: from }, to: { named: to } })}</th>
            <td>{length(seam)}</td>
            <td>{length(collar)}</td>
            <td>{length(over)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
