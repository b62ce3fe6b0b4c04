import type { VNode } from 'preact';
import type { Exercise } from '../grader/exercise.ts';
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

/** Under the order: hints, and what one may change and keep, or the set that decides it. */
export function TableAids({ table, exercise, inSet, wayBack }: TableAidsProps): VNode {
  const { bench, record, room, say } = table;
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
      {inSet ? (
        <InSet title={inSet.set.title} wayBack={wayBack} keeping={record.keeping} say={say} />
      ) : (
        <>
          <Setup
            exercise={exercise}
            setting={bench.about.setting}
            figure={room.order.figure}
            say={say}
            onSetting={table.setSetting}
            freshFigure={table.freshFigure}
          />
          <Files {...table.files} />
        </>
      )}
    </>
  );
}
