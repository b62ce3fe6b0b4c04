import { useCallback, useMemo, useState } from 'preact/hooks';
import type { Feedback } from '../exchange/set.ts';
import type { Grade } from '../grader/result.ts';
import { filesOf } from './files-of.ts';
import { aboutOf } from './model/about.ts';
import type { ToolId } from './model/bench.ts';
import { newFigure, type Setting } from './model/setting.ts';
import { type Say, sayFor } from './say.ts';
import { checksLeft, freshAbout } from './set-in-hand.ts';
import type { TableProps } from './table-props.ts';
import { undoKeys } from './undo-keys.ts';
import { useBench } from './use-bench.ts';
import { useCalm } from './use-calm.ts';
import { targetsBy, useMarking } from './use-marking.ts';
import { useReader } from './use-reader.ts';
import { type TakenUp, useRecord } from './use-record.ts';
import { useReminder } from './use-reminder.ts';
import { useSheet } from './use-sheet.ts';
import { useSpoken } from './use-spoken.ts';

/** Everything the table holds. What can be done to it comes from `actionsOn`. */
function useHoldings({ exercise, inSet = null, seed = 'first', language = 'en' }: TableProps) {
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  const { bench, dispatch, orders, motion } = useBench(exercise, () => freshAbout(exercise, inSet, seed));
  const { setting } = bench.about;
  const room = orders.of(setting);
  // While something is nudged by keys, what is said and kept of it waits for a calm moment, as all that lies about the sheet does.
  const calm = useCalm(bench, bench.dragging !== null && !motion.rests());
  const [spoken, speak] = useSpoken(calm, say);
  const marking = useMarking(exercise, { order: room.order, setting, drawn: bench.steps.length }, inSet);
  const [toFirst, setToFirst] = useState(0);
  const take = useCallback(
    (tool: ToolId, byKeys: boolean): void => {
      dispatch({ do: 'take', tool });
      if (byKeys) setToFirst((times) => times + 1);
    },
    [dispatch],
  );
  const takeUp = ({ handIn, upTo, checked }: TakenUp): void => {
    const taken = aboutOf(handIn, exercise);
    // An order that cannot be laid is not taken with it.
    const lost = orders.trouble(taken.setting) !== null;
    const about = lost ? { ...taken, setting } : taken;
    const { steps } = handIn;
    dispatch(upTo === null ? { do: 'open', steps, about } : { do: 'lay', steps, upTo, about });
    if (checked && !lost) marking.recall(steps, orders.of(about.setting).order, about.setting);
    else marking.rubOut();
  };
  const checked = marking.marked?.steps === calm.steps;
  const record = useRecord({ exercise, inSet, bench: calm, dispatch, unit: reader.unit, checked, takeUp });
  const sheet = useSheet({
    exercise,
    room,
    bench,
    moving: calm !== bench,
    motion,
    dispatch,
    say,
    speak,
    marking,
    toFirst,
  });
  const reminder = useReminder(bench, room);
  const left = checksLeft(inSet, bench.about.checks);
  return {
    exercise,
    left,
    say,
    orders,
    room,
    bench,
    moving: calm !== bench,
    motion,
    dispatch,
    spoken,
    speak,
    marking,
    record,
    reminder,
    sheet,
    take,
  };
}

type TableState = ReturnType<typeof useHoldings>;

/** Everything the table holds, and everything that can be done to it. */
export function useTable(props: TableProps) {
  const state = useHoldings(props);
  return { ...state, ...actionsOn(state) };
}

export type TableInHand = ReturnType<typeof useTable>;

function actionsOn({ exercise, left, say, orders, bench, dispatch, speak, marking, record, reminder }: TableState) {
  const { marked } = marking;
  const checkNow = (): void => {
    const { steps, upTo } = bench;
    const back = upTo < steps.length ? ` ${say('table.checked-from-back', { of: steps.length })}` : '';
    dispatch({ do: 'whole' });
    reminder.drop();
    const grade = marking.check(steps);
    record.noteChecked();
    speak(`${spokenOf(grade, marking.feedback, say)}${back}`);
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
      left,
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

/** What is said of a draft when it is checked: its marks, or only how much of it is right. */
function spokenOf(grade: Grade, feedback: Feedback, say: Say): string {
  const { marks, of, reports } = grade;
  if (feedback !== 'verdict') return say('table.checked', { marks, of });
  return say('table.checked-right', { right: targetsBy(grade, 'right').length, of: reports.length });
}

function freshSeed(): string {
  return Math.random().toString(36).slice(2, 8);
}
