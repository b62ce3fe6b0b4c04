import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Name } from '../drafting/step.ts';
import type { HandIn, HintTier } from '../exchange/hand-in.ts';
import { writeHandIn } from '../exchange/write-hand-in.ts';
import { download } from './download.ts';
import type { Room, ToolId } from './model/bench.ts';
import { newFigure } from './model/setting.ts';
import { sayFor } from './say.ts';
import { fileName, openDraft } from './store/files.ts';
import type { TableProps } from './Table.tsx';
import { undoKeys } from './undo-keys.ts';
import { useBench } from './use-bench.ts';
import { useKept } from './use-kept.ts';
import { useMarking } from './use-marking.ts';
import { useOrder } from './use-order.ts';
import { useReader } from './use-reader.ts';
import { useSheet } from './use-sheet.ts';
import { useSpoken } from './use-spoken.ts';

/** Everything the table holds, and everything that can be done to it. */
export function useTable({ exercise, set = null, seed = 'first', language = 'en' }: TableProps) {
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader.language, reader.unit]);
  const { setting, order, givens, setSetting } = useOrder(exercise, seed);
  const room = useMemo<Room>(() => ({ givens, targets: exercise.targets }), [givens, exercise]);
  const [bench, dispatch] = useBench(room);
  const [spoken, speak] = useSpoken(bench, say);
  const [student, setStudent] = useState('');
  const [shown, setShown] = useState<readonly Name[]>([]);
  const [hints, setHints] = useState<Readonly<Record<Name, HintTier>>>({});
  const marking = useMarking(exercise, order, setting.strictness);
  const [showsRight, setShowsRight] = useState(false);
  const [toFirst, setToFirst] = useState(0);
  const [awake, setAwake] = useState(false);
  useEffect(() => setAwake(true), []);

  const handIn = (saved: string | null): HandIn => ({
    student: student.trim(),
    set,
    exercise: exercise.id,
    order: { figure: setting.figure, style: {}, house: setting.house },
    strictness: setting.strictness,
    unit: reader.unit,
    steps: bench.steps,
    shown,
    hints,
    saved,
  });
  const takeUp = (draft: HandIn, upTo: number): void => {
    setSetting({
      figure: draft.order.figure,
      house: { ...exercise.house, ...draft.order.house },
      strictness: draft.strictness,
    });
    dispatch({ do: 'open', steps: draft.steps });
    dispatch({ do: 'go', upTo });
    setStudent(draft.student);
    setShown(draft.shown);
    setHints(draft.hints);
    marking.rubOut();
  };
  const kept = useKept(exercise, set, { handIn: handIn(null), upTo: bench.upTo }, (record) =>
    takeUp(record.handIn, record.upTo),
  );
  const save = (suffix: string): string => {
    const draft = handIn(new Date().toISOString());
    const name = fileName(draft, suffix);
    download(name, writeHandIn(draft));
    return name;
  };
  const sheet = useSheet({ exercise, room, bench, dispatch, say, speak, marked: marking.marked, showsRight, toFirst });

  const check = (): void => {
    const { grade } = marking.check(bench.steps);
    setShowsRight(false);
    dispatch({ do: 'put-down' });
    speak(say('table.checked', { marks: grade.marks, of: grade.of }));
  };

  return {
    ...sheet,
    say,
    bench,
    room,
    setting,
    dispatch,
    spoken,
    awake,
    hints,
    showsRight,
    figure: order.figure,
    keeping: kept.keeping,
    startClean: kept.startClean,
    marked: marking.marked,
    stale: marking.marked !== null && (marking.marked.steps !== bench.steps || marking.marked.order !== order),
    setSetting: (next: typeof setting): void => {
      const trouble = setSetting(next);
      if (trouble) speak(say.message(trouble));
      else marking.rubOut();
    },
    freshFigure: () => newFigure(exercise, freshSeed()),
    bar: {
      canUndo: bench.past.length > 0,
      canRedo: bench.future.length > 0,
      onUndo: (): void => dispatch({ do: 'undo' }),
      onRedo: (): void => dispatch({ do: 'redo' }),
      onCheck: check,
    },
    onKeyDown: (event: KeyboardEvent): void => undoKeys(event, dispatch),
    take: (tool: ToolId, byKeys: boolean): void => {
      dispatch({ do: 'take', tool });
      if (byKeys) setToFirst(toFirst + 1);
    },
    openHint: (target: Name): void =>
      setHints({ ...hints, [target]: Math.min(3, (hints[target] ?? 0) + 1) as HintTier }),
    toggleRight: (): void => {
      const wrong =
        marking.marked?.grade.reports.filter(({ status }) => status !== 'within').map(({ target }) => target) ?? [];
      if (!showsRight) setShown([...new Set([...shown, ...wrong])]);
      setShowsRight(!showsRight);
      if (!showsRight) speak(say('table.shown-right'));
    },
    rubOut: (): void => {
      marking.rubOut();
      setShowsRight(false);
    },
    filesProps: {
      student,
      keeping: kept.keeping,
      say,
      onStudent: setStudent,
      onSave: () => save('draft.json'),
      onHandIn: () => save('hand-in.json'),
      onOpen: (text: string): string | null => {
        const opened = openDraft(text, exercise);
        if (!opened.ok) return say.message(opened.message);
        takeUp(opened.handIn, opened.handIn.steps.length);
        return say('table.opened', { count: opened.handIn.steps.length });
      },
    },
  };
}

function freshSeed(): string {
  return Math.random().toString(36).slice(2, 8);
}
