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
  /** The table as it was when it last lay still: what need not follow every move of a drag shows that. */
  readonly calm: TableInHand;
  readonly exercise: Exercise;
}

/** Where one draws: the tools, the sheet with its views, and the sentence of the tool in hand. */
export function TableBench({ table, calm, exercise }: TableBenchProps): VNode {
  const { bench, say, sheet } = table;
  const plan = exercise.worn ?? usualWorn;
  const { views, open, onOpen } = useViews(calm.sheet.sheet, plan);
  const panel = `view-${exercise.id}`;
  const inHand = bench.hand?.tool ?? null;
  const { take } = table;
  const tools = useMemo(() => <Tools inHand={inHand} say={say} onTake={take} />, [inHand, say, take]);
  const below = useMemo(
    () => (
      <>
        <Reminder {...calm.reminder} say={calm.say} onCheck={calm.checkNow} />
        <ViewRow views={views} open={open} onOpen={onOpen} panel={panel} say={calm.say} />
      </>
    ),
    [calm, views, open, onOpen, panel],
  );
  const sentence = useMemo(() => <Sentence {...calm.sheet.sentenceProps} onLight={calm.sheet.light} />, [calm]);
  return (
    <div class="table-bench">
      {tools}
      <Sheet {...sheet.sheetProps} looks={calm.sheet.sheetProps.looks} bar={calm.bar} below={below} />
      {open ? (
        <ViewPanel
          view={open}
          sheet={sheet.sheet}
          motion={table.motion}
          plan={plan}
          strictness={bench.about.setting.strictness}
          id={panel}
          say={say}
        />
      ) : null}
      {sentence}
    </div>
  );
}
