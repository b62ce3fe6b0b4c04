import type { VNode } from 'preact';
import type { Exercise } from '../grader/exercise.ts';
import { OnPaper } from './full-size/OnPaper.tsx';
import { Files } from './parts/Files.tsx';
import { Hints } from './parts/Hints.tsx';
import { InSet } from './parts/InSet.tsx';
import { Setup } from './parts/Setup.tsx';
import type { SetInHand } from './set-in-hand.ts';
import type { TableInHand } from './use-table.ts';

interface TableAidsProps {
  readonly table: TableInHand;
  readonly exercise: Exercise;
  readonly inSet: SetInHand | null;
  /** Where the set lies, from the page's own address. */
  readonly wayBack: string;
}

/** Under the order: hints, what one may change, the draft on paper, and what is kept; or the set that decides it. */
export function TableAids({ table, exercise, inSet, wayBack }: TableAidsProps): VNode {
  const { bench, record, room, say, sheet } = table;
  return (
    <>
      {inSet?.set.hints === false ? null : (
        <Hints
          targets={exercise.targets}
          measures={room.givens.measures}
          open={record.hints}
          say={say}
          onOpen={record.openHint}
        />
      )}
      {inSet ? null : (
        <Setup
          exercise={exercise}
          setting={bench.about.setting}
          figure={room.order.figure}
          say={say}
          onSetting={table.setSetting}
          freshFigure={table.freshFigure}
        />
      )}
      <OnPaper
        sheet={sheet.sheet}
        givens={room.givens}
        shows={exercise.shows}
        title={exercise.title}
        student={bench.about.student}
        say={say}
      />
      {inSet ? (
        <InSet title={inSet.set.title} wayBack={wayBack} keeping={record.keeping} say={say} />
      ) : (
        <Files {...table.files} />
      )}
    </>
  );
}
