import type { Name } from '../../drafting/step.ts';
import { houseRules } from '../../garment/house-rules.ts';
import type { Grade } from '../../grader/result.ts';
import { type Message, message } from '../../words/message.ts';

/** A classic wrong way that a draft went at a target, and what was said of it: in the exercise's own words where it is one of the exercise's. */
export interface WayGone {
  readonly target: Name;
  readonly id: string;
  readonly says: Message;
  /** How far off the first check is that shows it, in tolerances; null where that cannot be read. */
  readonly off: number | null;
}

/** The choices of house rules as wrong ways: what another house has was followed. */
const otherRules: ReadonlySet<string> = new Set(
  houseRules.flatMap(({ choices }) => choices.map(({ name }) => `by-${name}`)),
);

const TAKEN_FOR = 'taken-for-';

/** The short name of a wrong way, as it is written beside a picture. */
export function wayWords(id: string): Message {
  if (otherRules.has(id)) return message('class.way-other-rule');
  if (id.startsWith(TAKEN_FOR))
    return message('class.way-taken-for', { target: { named: id.slice(TAKEN_FOR.length) } });
  return message('class.way-named', { name: id.replaceAll('-', ' ') });
}

/** The wrong ways that a draft went, each target's once. */
export function waysGoneIn({ checks, reports }: Pick<Grade, 'checks' | 'reports'>): readonly WayGone[] {
  const shown = new Map(
    checks.filter(({ misreading }) => misreading !== null).map((check) => [check.target, check] as const),
  );
  return reports.flatMap(({ target, sentences: [says] }): readonly WayGone[] => {
    const check = shown.get(target);
    if (check?.misreading == null || says === undefined) return [];
    return [{ target, id: check.misreading, says, off: check.off === null ? null : check.off / check.tolerance }];
  });
}

/** A student's draft and the wrong ways it went. */
export interface Wayfarer {
  /** By what the student is known among others. */
  readonly student: string;
  readonly exercise: Name;
  readonly ways: readonly WayGone[];
}

/** A wrong way with everyone who went it. */
export interface WayTaken {
  readonly exercise: Name;
  readonly target: Name;
  readonly id: string;
  readonly students: readonly string[];
  /** What was said of it to the one in the middle of them, by how far off they were, and to whom. */
  readonly says: Message;
  readonly to: string;
}

/** The wrong ways that a class went, by exercise the most gone first; of each student the work that counts. */
export function waysTaken(counted: readonly Wayfarer[]): readonly WayTaken[] {
  const gone = counted.flatMap(({ student, exercise, ways }) => ways.map((way) => ({ ...way, student, exercise })));
  const alike = Map.groupBy(gone, ({ exercise, target, id }) => JSON.stringify([exercise, target, id]));
  return [...alike.values()].map(wayOf).toSorted((a, b) => b.students.length - a.students.length || before(a, b));
}

/** Number 7 comes before number 11. */
const byNumber = new Intl.Collator('en', { numeric: true });

type Gone = WayGone & Pick<Wayfarer, 'student' | 'exercise'>;

function wayOf(all: readonly Gone[]): WayTaken {
  const byOff = all.toSorted((a, b) => (a.off ?? 0) - (b.off ?? 0));
  const { exercise, target, id, says, student: to } = byOff[Math.floor((all.length - 1) / 2)] as Gone;
  return { exercise, target, id, students: all.map(({ student }) => student).toSorted(byNumber.compare), says, to };
}

function before(a: WayTaken, b: WayTaken): number {
  const [one, other] = [a, b].map(({ exercise, target, id }) => JSON.stringify([exercise, target, id]));
  return (one ?? '') < (other ?? '') ? -1 : 1;
}
