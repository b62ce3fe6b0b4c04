import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { type RollReport as Report, rollReport } from '../../garment/collar/roll-report.ts';
import { usualWorn } from '../../garment/collar/worn-plan.ts';
import { SheetDrawing } from '../drawing/SheetDrawing.tsx';
import type { Say } from '../say.ts';
import { rollDrawing } from './roll-drawing.ts';
import { isTrouble, saySum, sayVerdict, sayWhy } from './roll-words.ts';
import './views.css';
import type { ViewProps } from './WornView.tsx';

interface RollReportProps extends ViewProps {
  /** What needed and drawn may differ by and the collar still lie, mm. */
  readonly within: number;
}

/** Whether a collar will lie, pull or ripple, with a picture and the figures all round. Nothing before the collar is swung. */
export function RollReport({ sheet, id, say, within, plan = usualWorn }: RollReportProps): VNode | null {
  const report = useMemo(() => rollReport(sheet, within, plan), [sheet, within, plan]);
  if (!report) return null;
  return (
    <div class="view view--roll" data-verdict={report.verdict} data-trouble={isTrouble(report)}>
      <p class="view-says" aria-live="polite">
        {say.message(sayVerdict(report))}
      </p>
      <SheetDrawing drawing={rollDrawing(sheet, report, say.reader.unit)} reader={say.reader} id={`${id}-roll`} />
      <p class="view-why" aria-live="polite">
        {sayWhy(report).map(say.message).join(' ')}
      </p>
      <Gains report={report} say={say} />
      <p class="view-note">{say.message(saySum(report))}</p>
    </div>
  );
}

/** Needed and drawn round the half collar. */
function Gains({ report, say }: { readonly report: Report; readonly say: Say }): VNode {
  const length = (mm: number): string => say('views.length', { length: { mm } });
  return (
    <table class="view-table">
      <caption>{say('views.roll-table')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('views.roll-as-far')}</th>
          <th scope="col">{say('views.roll-needed')}</th>
          <th scope="col">{say('views.roll-drawn')}</th>
        </tr>
      </thead>
      <tbody>
        {report.stations.slice(1).map(({ part, needed, drawn }) => (
          <tr key={part}>
            <th scope="row">{say('views.roll-part', { part: String(part * 4) })}</th>
            <td>{length(needed)}</td>
            <td>{length(drawn)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
