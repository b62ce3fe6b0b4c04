import { useMemo, useState } from 'preact/hooks';
import type { Name } from '../drafting/step.ts';
import type { HandIn, HintTier } from '../exchange/hand-in.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { Unit } from '../words/unit.ts';
import type { Bench } from './model/bench.ts';
import type { Setting } from './model/setting.ts';
import { type Keeping, useKept } from './use-kept.ts';
import { useStudent } from './use-student.ts';

interface RecordInputs {
  readonly exercise: Exercise;
  readonly set: string | null;
  readonly setting: Setting;
  readonly bench: Bench;
  readonly unit: Unit;
  /** Lays a draft on the table: one that was kept where it stood, one from a file (null) as a change that can be undone. */
  readonly onTakeUp: (draft: HandIn, upTo: number | null) => void;
}

export interface RecordOnTable {
  readonly student: string;
  readonly setStudent: (name: string) => void;
  readonly hints: Readonly<Record<Name, HintTier>>;
  readonly openHint: (target: Name) => void;
  /** Writes down that the right places of these targets were shown. */
  readonly noteShown: (targets: readonly Name[]) => void;
  readonly handIn: (saved: string | null) => HandIn;
  readonly takeUp: (draft: HandIn, upTo: number | null) => void;
  readonly keeping: Keeping;
  readonly startClean: () => void;
}

/** Everything about a draft that goes into a file, kept in this browser as it happens. */
export function useRecord({ exercise, set, setting, bench, unit, onTakeUp }: RecordInputs): RecordOnTable {
  const [student, setStudent] = useStudent();
  const [shown, setShown] = useState<readonly Name[]>([]);
  const [hints, setHints] = useState<Readonly<Record<Name, HintTier>>>({});
  const { steps, upTo } = bench;
  const draft = useMemo<HandIn>(
    () => ({
      student: student.trim(),
      set,
      exercise: exercise.id,
      order: { figure: setting.figure, style: setting.style, house: setting.house },
      strictness: setting.strictness,
      unit,
      steps,
      shown,
      hints,
      saved: null,
    }),
    [student, set, exercise, setting, unit, steps, shown, hints],
  );
  const takeUp = (taken: HandIn, standing: number | null): void => {
    if (taken.student !== '') setStudent(taken.student);
    setShown(taken.shown);
    setHints(taken.hints);
    onTakeUp(taken, standing);
  };
  const kept = useKept(exercise, set, { handIn: draft, upTo }, (record) => takeUp(record.handIn, record.upTo));
  return {
    ...kept,
    student,
    setStudent,
    hints,
    openHint: (target) => setHints({ ...hints, [target]: Math.min(3, (hints[target] ?? 0) + 1) as HintTier }),
    noteShown: (targets) => setShown([...new Set([...shown, ...targets])]),
    handIn: (saved) => ({ ...draft, saved }),
    takeUp,
  };
}
