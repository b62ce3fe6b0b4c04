import { useMemo, useState } from 'preact/hooks';
import type { HandIn } from '../exchange/hand-in.ts';
import { filesOf } from './files-of.ts';
import { aboutOf } from './model/about.ts';
import type { ToolId } from './model/bench.ts';
import { newFigure, type Setting } from './model/setting.ts';
import { sayFor } from './say.ts';
import type { TableProps } from './Table.tsx';
import { undoKeys } from './undo-keys.ts';
import { useBench } from './use-bench.ts';
import { targetsBy, useMarking } from './use-marking.ts';
import { useReader } from './use-reader.ts';
import { useRecord } from './use-record.ts';
import { useReminder } from './use-reminder.ts';
import { useSheet } from './use-sheet.ts';
import { useSpoken } from './use-spoken.ts';

/** Everything the table holds. What can be done to it comes from `actionsOn`. */
function useHoldings({ exercise, set = null, seed = 'first', language = 'en' }: TableProps) {
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  const [bench, dispatch, orders] = useBench(exercise, seed);
  const { setting } = bench.about;
  const room = orders.of(setting);
  const [spoken, speak] = useSpoken(bench, say);
  const marking = useMarking(exercise, room.order, setting);
  const [toFirst, setToFirst] = useState(0);
  const takeUp = (draft: HandIn, upTo: number | null): void => {
    const taken = aboutOf(draft, exercise);
    // An order that cannot be laid is not taken with it.
    const about = orders.trouble(taken.setting) ? { ...taken, setting } : taken;
    const { steps } = draft;
    dispatch(upTo === null ? { do: 'open', steps, about } : { do: 'lay', steps, upTo, about });
    marking.rubOut();
  };
  const record = useRecord({ exercise, set, bench, dispatch, unit: reader.unit, takeUp });
  const sheet = useSheet({ exercise, room, bench, dispatch, say, speak, marking, toFirst });
  const reminder = useReminder(bench, room);
  return {
    exercise,
    say,
    orders,
    room,
    bench,
    dispatch,
    spoken,
    speak,
    marking,
    record,
    reminder,
    sheet,
    toFirst,
    setToFirst,
  };
}

type TableState = ReturnType<typeof useHoldings>;

/** Everything the table holds, and everything that can be done to it. */
export function useTable(props: TableProps) {
  const state = useHoldings(props);
  return { ...state, ...actionsOn(state) };
}

function actionsOn({
  exercise,
  say,
  orders,
  bench,
  dispatch,
  speak,
  marking,
  record,
  reminder,
  toFirst,
  setToFirst,
}: TableState) {
  const { marked } = marking;
  const checkNow = (): void => {
    const { steps, upTo } = bench;
    const back = upTo < steps.length ? ` ${say('table.checked-from-back', { of: steps.length })}` : '';
    dispatch({ do: 'whole' });
    reminder.drop();
    const { marks, of } = marking.check(steps);
    record.noteChecked();
    speak(`${say('table.checked', { marks, of })}${back}`);
  };
  return {
    checkNow,
    files: filesOf(exercise, record, say),
    stale: marked !== null && marked.steps !== bench.steps,
    setSetting: (next: Setting): void => {
      const trouble = orders.trouble(next);
      if (trouble) speak(say.message(trouble));
      else dispatch({ do: 'order', setting: next });
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
      record.noteShown(targetsBy(marked.grade, 'wrong'));
      speak(say('table.shown-right'));
    },
    bar: {
      canUndo: bench.past.length > 0,
      canRedo: bench.future.length > 0,
      onUndo: (): void => dispatch({ do: 'undo' }),
      onRedo: (): void => dispatch({ do: 'redo' }),
      onCheck: (): void => {
        dispatch({ do: 'put-down' });
        const targets = reminder.ask();
        if (targets.length === 0) checkNow();
        else speak(say('table.unanswered', { targets: { namedAll: targets }, count: targets.length }));
      },
    },
  };
}

function freshSeed(): string {
  return Math.random().toString(36).slice(2, 8);
}
