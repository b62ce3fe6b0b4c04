import type { Name } from '../../drafting/step.ts';
import type { WorkRow } from '../grade-row.ts';
import { type Remark, remarksByItself } from '../remarks.ts';
import type { ProblemSet } from '../set.ts';
import { type Student, studentKey } from '../student.ts';
import { notAmong } from './class-list.ts';
import { type Counts, countingOf } from './counting.ts';
import { inOwnTime } from './own-time.ts';
import { type UnreadPiece, unreadByStudent } from './unread.ts';

/** What a gradebook keeps of a marked piece of work. */
export interface Entry extends Student {
  readonly exercise: Name;
  /** In the scale of the set, or of the exercise where the work was marked by itself. */
  readonly marks: number;
  readonly of: number;
  readonly saved: string | null;
  readonly remarks: readonly Remark[];
  /** By what the student is known to whom the set dealt the figure; null where it dealt that to nobody in particular. */
  readonly figureOf: string | null;
  /** What the grader gave, where a teacher's marks count instead. */
  readonly grader?: number;
}

/** One student of a gradebook. */
export interface BookLine extends Student {
  readonly key: string;
  /** Exercise to the work that counts. */
  readonly entries: ReadonlyMap<Name, Entry>;
  readonly marks: number;
  /** What of the student's could not be read. */
  readonly unread: readonly UnreadPiece[];
  /** By the class list: one of it of whom nothing came, or one who is not on it. Null where all is as it should be, and without a list. */
  readonly listed: 'absent' | 'unlisted' | null;
  /** To when the teacher gave this student more time; ISO 8601, null where none was given. */
  readonly until: string | null;
}

/** What lies beside the work of a class. */
export interface BesideWork {
  /** What could not be read. */
  readonly unread: readonly UnreadPiece[];
  /** The class list; empty where there is none. */
  readonly list: readonly Student[];
  /** By the student's key, to when more time was given. */
  readonly until: ReadonlyMap<string, string>;
  readonly counts: Counts;
}

const NOTHING_BESIDE: BesideWork = { unread: [], list: [], until: new Map(), counts: 'last' };

export interface Gradebook {
  /** The columns: the exercises of the set in its order, or all that were handed in. */
  readonly exercises: readonly Name[];
  /** Those of them that the set has not, so that nobody was asked for them. */
  readonly others: readonly Name[];
  /** What all of them are worth together; of work marked by itself, what each is worth for whoever did it. */
  readonly of: number;
  /** By name. */
  readonly lines: readonly BookLine[];
  /** How many pieces lie there of the same students beside those that count. */
  readonly repeated: number;
}

export function entryOf({ student, number, exercise, marks, of, saved, inSet }: WorkRow): Entry {
  const counted = inSet ?? { marks, of, remarks: remarksByItself({ student, number }), figureOf: null };
  const { remarks, figureOf } = counted;
  return { student, number, exercise, marks: counted.marks, of: counted.of, saved, remarks, figureOf };
}

/**
 * The gradebook of a class. Work that is not of the set has a column of its own behind those of the set. Whoever handed in
 * nothing that could be read has a line all the same, and so has who is on the class list and handed in nothing.
 */
export function gradebookOf(
  entries: readonly Entry[],
  set: ProblemSet | null,
  beside: Partial<BesideWork> = {},
): Gradebook {
  const { unread, list, until, counts } = { ...NOTHING_BESIDE, ...beside };
  const keyed = entries.map((entry) => {
    const key = studentKey(entry);
    return { ...inOwnTime(entry, until.get(key) ?? null), name: entry.student, student: key };
  });
  const counted = countingOf(keyed, counts, ({ marks }) => marks);
  const own = set?.exercises.map(({ exercise }) => exercise) ?? [];
  const others = [...new Set(counted.map(({ exercise }) => exercise))].filter((name) => !own.includes(name)).sort();
  const exercises = [...own, ...others];
  const worked = Map.groupBy(counted, ({ student }) => student);
  const lost = unreadByStudent(
    unread,
    counted.map(({ name, number }) => ({ student: name, number })),
  );
  const came = [...new Set([...worked.keys(), ...lost.keys()])].map((key) =>
    lineOf(key, worked.get(key) ?? [], lost.get(key) ?? []),
  );
  const lines = byClassList(came, list).map((line) => ({ ...line, until: until.get(line.key) ?? null }));
  return {
    exercises,
    others: set === null ? [] : others,
    of: set?.exercises.reduce((sum, { marks }) => sum + marks, 0) ?? sumOf(mostOf(counted)),
    lines: lines.toSorted((a, b) => byName.compare(a.student, b.student) || (a.key < b.key ? -1 : 1)),
    repeated: entries.length - counted.length,
  };
}

/** The lines held against the class list, which has its own for those of whom nothing came. */
function byClassList(came: readonly BookLine[], list: readonly Student[]): readonly BookLine[] {
  if (list.length === 0) return came;
  const strange = new Set(notAmong(came, list));
  const absent = notAmong(list, came).map(
    (who): BookLine => ({ ...lineOf(studentKey(who), [], []), ...who, listed: 'absent' }),
  );
  return [...came.map((line) => (strange.has(line) ? { ...line, listed: 'unlisted' as const } : line)), ...absent];
}

/** The same order on every machine, whatever its own language. */
const byName = new Intl.Collator('en');

type Keyed = Entry & { readonly name: string };

function lineOf(
  key: string,
  work: readonly Keyed[],
  unread: readonly (UnreadPiece & { readonly who: Student })[],
): BookLine {
  const entries = new Map(work.map(({ name, ...entry }) => [entry.exercise, { ...entry, student: name }] as const));
  const last = work.at(-1);
  const who = last === undefined ? unread.at(-1)?.who : { student: last.name, number: last.number };
  return {
    key,
    student: who?.student ?? '',
    number: who?.number ?? '',
    entries,
    marks: sumOf(work.map(({ marks }) => marks)),
    unread,
    listed: null,
    until: null,
  };
}

/** What each exercise that was handed in is worth. */
function mostOf(entries: readonly Entry[]): readonly number[] {
  return [...new Map(entries.map(({ exercise, of }) => [exercise, of])).values()];
}

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, one) => sum + one, 0);
}
