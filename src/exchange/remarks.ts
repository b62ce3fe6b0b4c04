import type { Exercise } from '../grader/exercise.ts';
import type { HandIn } from './hand-in.ts';
import { isSameLength } from './own-order.ts';
import type { ProblemSet } from './set.ts';
import { setOrder } from './set-order.ts';
import type { Student } from './student.ts';
import { setMark } from './write-set.ts';

/** What is out of the ordinary with a piece of work in a set. It is said, and takes nothing away. */
export type Remark =
  /** Handed in for another set, or for none. */
  | 'other-set'
  /** Its exercise is not in the set. */
  | 'not-in-set'
  /** Drawn on another figure than the set deals this student. */
  | 'other-figure'
  /** Drawn to other style measures or other house rules than the set has. */
  | 'other-order'
  | 'late'
  | 'checks-over'
  | 'hints-taken'
  | 'places-shown'
  /** A letter of the name or the number was lost: its bytes are not UTF-8. Said outside a set, too. */
  | 'letters-lost';

/** What readers of UTF-8 put in place of bytes that are none. */
const LOST = '\uFFFD';

/** What is out of the ordinary with a piece of work by itself, in a set or not. */
export function remarksByItself({ student, number }: Student): readonly Remark[] {
  return student.includes(LOST) || number.includes(LOST) ? ['letters-lost'] : [];
}

/** What is to be said of a hand-in where it should be of this set. */
export function remarksOn(handIn: HandIn, exercise: Exercise, set: ProblemSet): readonly Remark[] {
  const found: Readonly<Record<Remark, boolean>> = {
    'other-set': handIn.set?.id !== setMark(set).id,
    'not-in-set': set.exercises.every((one) => one.exercise !== handIn.exercise),
    'other-figure': !isFigureDealt(handIn, exercise, set),
    'other-order': !isOrderDealt(handIn, exercise, set),
    late: set.due !== null && handIn.saved !== null && Date.parse(handIn.saved) > Date.parse(set.due),
    'checks-over': set.checks !== null && handIn.checks > set.checks,
    'hints-taken': !set.hints && Object.keys(handIn.hints).length > 0,
    'letters-lost': remarksByItself(handIn).length > 0,
    'places-shown': set.feedback !== 'place' && handIn.shown.length > 0,
  };
  return (Object.keys(found) as Remark[]).filter((remark) => found[remark]);
}

/** Whether it was drawn on the figure that the set deals this student. */
function isFigureDealt(handIn: HandIn, exercise: Exercise, set: ProblemSet): boolean {
  const { figure } = setOrder(set, exercise, handIn);
  return JSON.stringify(Object.entries(handIn.order.figure).sort()) === JSON.stringify(Object.entries(figure).sort());
}

/** Whether it was drawn to the style measures and house rules of the set. */
function isOrderDealt(handIn: HandIn, exercise: Exercise, set: ProblemSet): boolean {
  const dealt = setOrder(set, exercise, handIn);
  const { style, house } = handIn.order;
  return (
    Object.entries(style).every(([name, value]) => isSameLength(value, exercise.style[name]?.value)) &&
    Object.keys(exercise.house).every(
      (rule) => (house[rule] ?? exercise.house[rule]) === (dealt.house[rule] ?? exercise.house[rule]),
    )
  );
}
