import { local } from './own-storage.ts';

/** The best marks a draft of an exercise got in this browser. */
export interface BestMarks {
  readonly marks: number;
  readonly of: number;
}

const keyFor = (exercise: string): string => `gorgeline.marks.${exercise}`;

/** Keeps the marks of a draft, if it did better than the best so far. */
export function keepMarks(exercise: string, { marks, of }: BestMarks): void {
  const best = bestMarks(exercise);
  if (best && best.marks / best.of >= marks / of) return;
  local.write(keyFor(exercise), JSON.stringify({ marks, of }));
}

/** The best marks kept for an exercise; null when there are none, or they cannot be read. */
export function bestMarks(exercise: string): BestMarks | null {
  try {
    const kept: unknown = JSON.parse(local.read(keyFor(exercise)) ?? 'null');
    if (typeof kept !== 'object' || kept === null || !('marks' in kept) || !('of' in kept)) return null;
    const { marks, of } = kept;
    return typeof marks === 'number' && typeof of === 'number' && of > 0 ? { marks, of } : null;
  } catch {
    return null;
  }
}

/** Whether a draft of the exercise is kept, marked or not. */
export function hasDraft(exercise: string): boolean {
  return local.read(`gorgeline.draft.${exercise}`) !== null;
}
