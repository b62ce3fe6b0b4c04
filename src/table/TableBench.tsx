import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { usualWorn } from '../garment/collar/worn-plan.ts';
import type { Exercise } from '../grader/exercise.ts';
import { Reminder } from './parts/Reminder.tsx';
import { Sentence } from './parts/Sentence.tsx';
import { Sheet } from './parts/Sheet.tsx';
import { Tools } from './parts/Tools.tsx';
import type { TableInHand } from './use-table.ts';
import { useViews } from './views/use-views.ts';
import { ViewPanel } from './views/ViewPanel.tsx';
import { ViewRow } from './views/ViewRow.tsx';

interface TableBenchProps {
  readonly table: TableInHand;
  readonly exercise: Exercise;
}

/** Where one draws: the tools, the sheet with its views, and the sentence of the tool in hand. */
export function TableBench({ table, exercise }: TableBenchProps): VNode {
  const { bench, say, sheet } = table;
  const plan = exercise.worn ?? usualWorn;
  const looks = useViews(sheet.sheet, plan);
  const panel = `view-${exercise.id}`;
  const inHand = bench.hand?.tool ?? null;
  const { take } = table;
  const tools = useMemo(() => <Tools inHand={inHand} say={say} onTake={take} />, [inHand, say, take]);
  const below = (
    <>
      <Reminder {...table.reminder} say={say} onCheck={table.checkNow} />
      <ViewRow {...looks} panel={panel} say={say} />
    </>
  );
  return (
    <div class="table-bench">
      {tools}
      <Sheet {...sheet.sheetProps} bar={table.bar} below={below} />
      {looks.open ? (
        <ViewPanel
          view={looks.open}
          sheet={sheet.sheet}
          plan={plan}
          strictness={bench.about.setting.strictness}
          id={panel}
          say={say}
        />
      ) : null}
      <Sentence {...sheet.sentenceProps} onLight={sheet.light} />
    </div>
  );
}
