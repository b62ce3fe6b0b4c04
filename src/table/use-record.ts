import { useEffect, useMemo } from 'preact/hooks';
import type { Name } from '../drafting/step.ts';
import type { HandIn, HintTier } from '../exchange/hand-in.ts';
import type { SetMark } from '../exchange/set.ts';
import { writtenStudent } from '../exchange/student.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { Unit } from '../words/unit.ts';
import type { Bench } from './model/bench.ts';
import type { SetInHand } from './set-in-hand.ts';
import type { DraftRecord } from './store/record.ts';
import type { Dispatch } from './use-bench.ts';
import { type Keeping, useKept } from './use-kept.ts';
import { useStudent } from './use-student.ts';

interface RecordInputs {
  readonly exercise: Exercise;
  readonly inSet: SetInHand | null;
  readonly bench: Bench;
  readonly dispatch: Dispatch;
  readonly unit: Unit;
  /** Whether the draft lies as it was checked, with the notes of that check under it. */
  readonly checked: boolean;
  readonly takeUp: (draft: TakenUp) => void;
}

/** A draft to be laid on the table: one that was kept where it stood, one from a file (null) as a change that can be undone. */
export interface TakenUp extends Omit<DraftRecord, 'upTo'> {
  readonly upTo: number | null;
}

export interface RecordOnTable {
  readonly student: string;
  readonly setStudent: (name: string) => void;
  readonly hints: Readonly<Record<Name, HintTier>>;
  readonly openHint: (target: Name) => void;
  /** Counts one more check of the draft. */
  readonly noteChecked: () => void;
  /** Writes down that the right places of these targets were shown. */
  readonly noteShown: (targets: readonly Name[]) => void;
  readonly handIn: (saved: string | null) => HandIn;
  readonly takeUp: (draft: TakenUp) => void;
  readonly keeping: Keeping;
  readonly keepMine: () => void;
  readonly takeOther: () => void;
}

/** Everything about a draft that goes into a file, kept in this browser as it happens. */
export function useRecord({ exercise, inSet, bench, dispatch, unit, checked, takeUp }: RecordInputs): RecordOnTable {
  const { steps, upTo, about } = bench;
  const { student, shown, hints, checks } = about;
  const set = inSet?.mark ?? null;
  const setStudent = useStudent(student, (name) => dispatch({ do: 'note', about: { student: name } }));
  const begins = steps.length > 0 && about.begun === null;
  useEffect(() => {
    if (begins) dispatch({ do: 'note', about: { begun: new Date().toISOString() } });
  }, [begins, dispatch]);
  const draft = useMemo<HandIn>(
    () => draftOf(exercise, set, { steps, about }, unit),
    [exercise, set, steps, about, unit],
  );
  const kept = useKept(exercise, set, { handIn: draft, upTo, checked }, (record, from) =>
    takeUp({ ...record, upTo: from === 'start' ? record.upTo : null }),
  );
  return {
    ...kept,
    student,
    setStudent,
    hints,
    openHint: (target) => {
      const tier = Math.min(3, (hints[target] ?? 0) + 1) as HintTier;
      dispatch({ do: 'note', about: { hints: { ...hints, [target]: tier } } });
    },
    noteChecked: () => dispatch({ do: 'note', about: { checks: checks + 1 } }),
    noteShown: (targets) => dispatch({ do: 'note', about: { shown: [...new Set([...shown, ...targets])] } }),
    handIn: (saved) => ({ ...draft, saved }),
    takeUp,
  };
}

function draftOf(
  exercise: Exercise,
  set: SetMark | null,
  { steps, about }: Pick<Bench, 'steps' | 'about'>,
  unit: Unit,
): HandIn {
  const { setting, shown, hints, checks, begun } = about;
  const { figure, style, house, strictness } = setting;
  const { student, number } = writtenStudent(about);
  return {
    student: student.trim(),
    number: number.trim(),
    set,
    exercise: exercise.id,
    order: { figure, style, house },
    strictness,
    unit,
    steps,
    shown,
    hints,
    checks,
    begun,
    saved: null,
  };
}
