import { useMemo, useState } from 'preact/hooks';
import type { HandIn } from '../exchange/hand-in.ts';
import { filesOf } from './files-of.ts';
import type { Room, ToolId } from './model/bench.ts';
import { newFigure, type Setting, settingOf } from './model/setting.ts';
import { sayFor } from './say.ts';
import type { TableProps } from './Table.tsx';
import { undoKeys } from './undo-keys.ts';
import { useBench } from './use-bench.ts';
import { useMarking, wrongTargets } from './use-marking.ts';
import { useOrder } from './use-order.ts';
import { useReader } from './use-reader.ts';
import { useRecord } from './use-record.ts';
import { useSheet } from './use-sheet.ts';
import { useSpoken } from './use-spoken.ts';

/** Everything the table holds. What can be done to it comes from `actionsOn`. */
function useHoldings({ exercise, set = null, seed = 'first', language = 'en' }: TableProps) {
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  const order = useOrder(exercise, seed);
  const room = useMemo<Room>(() => ({ givens: order.givens, targets: exercise.targets }), [order.givens, exercise]);
  const [bench, dispatch] = useBench(room);
  const [spoken, speak] = useSpoken(bench, say);
  const marking = useMarking(exercise, order.order, order.setting.strictness);
  const [toFirst, setToFirst] = useState(0);
  const { setting } = order;
  const onTakeUp = (draft: HandIn, upTo: number | null): void => {
    order.setSetting(settingOf(draft.order, draft.strictness, exercise));
    dispatch(upTo === null ? { do: 'open', steps: draft.steps } : { do: 'lay', steps: draft.steps, upTo });
    marking.rubOut();
  };
  const record = useRecord({ exercise, set, setting, bench, unit: reader.unit, onTakeUp });
  const sheet = useSheet({ exercise, room, bench, dispatch, say, speak, marking, toFirst });
  return { exercise, say, order, room, bench, dispatch, spoken, speak, marking, record, sheet, toFirst, setToFirst };
}

type TableState = ReturnType<typeof useHoldings>;

/** Everything the table holds, and everything that can be done to it. */
export function useTable(props: TableProps) {
  const state = useHoldings(props);
  return { ...state, ...actionsOn(state) };
}

function actionsOn({ exercise, say, order, bench, dispatch, speak, marking, record, toFirst, setToFirst }: TableState) {
  const { marked } = marking;
  return {
    files: filesOf(exercise, record, say),
    stale: marked !== null && (marked.steps !== bench.steps || marked.order !== order.order),
    setSetting: (next: Setting): void => {
      const trouble = order.setSetting(next);
      if (trouble) speak(say.message(trouble));
      else marking.rubOut();
    },
    freshFigure: () => newFigure(exercise, freshSeed()),
    take: (tool: ToolId, byKeys: boolean): void => {
      dispatch({ do: 'take', tool });
      if (byKeys) setToFirst(toFirst + 1);
    },
    onKeyDown: (event: KeyboardEvent): void => undoKeys(event, dispatch),
    toggleRight: (): void => {
      marking.showRight(!marking.showsRight);
      if (marking.showsRight || !marked) return;
      record.noteShown(wrongTargets(marked.grade));
      speak(say('table.shown-right'));
    },
    bar: {
      canUndo: bench.past.length > 0,
      canRedo: bench.future.length > 0,
      onUndo: (): void => dispatch({ do: 'undo' }),
      onRedo: (): void => dispatch({ do: 'redo' }),
      onCheck: (): void => {
        dispatch({ do: 'put-down' });
        const { marks, of } = marking.check(bench.steps);
        speak(say('table.checked', { marks, of }));
      },
    },
  };
}

function freshSeed(): string {
  return Math.random().toString(36).slice(2, 8);
}
