import type { Stray } from '../../../exchange/class/laid/stray.ts';
import type { Student } from '../../../exchange/student.ts';

/** Somebody's answer that is not right, and went no wrong way that the exercise knows. */
export interface Lone {
  /** By what the student is known among others. */
  readonly student: string;
  readonly who: Student;
  readonly stray: Stray;
}

/** Answers lie together that are nowhere further apart than this, mm: about what a workroom allows. */
const APART = 3;
/** So many make a bundle, and such a share of the class: fewer come together by chance. */
const FEWEST = 3;
const SHARE = 0.05;

/** Of answers that went no known way those that lie together, the most first, and those that lie by themselves. */
export function togetherIn(
  answers: readonly Lone[],
  worked: number,
): { readonly together: readonly (readonly Lone[])[]; readonly alone: readonly Lone[] } {
  const bundles = beside(answers, APART);
  const least = Math.max(FEWEST, Math.ceil(worked * SHARE));
  return {
    together: bundles.filter(({ length }) => length >= least).toSorted((a, b) => b.length - a.length),
    alone: bundles.filter(({ length }) => length < least).flat(),
  };
}

/** Of some answers those that lie within `near` mm of one another everywhere, together; the first of each keeps its place. */
export function beside(answers: readonly Lone[], near: number): readonly (readonly Lone[])[] {
  const groups: Lone[][] = [];
  for (const answer of answers) {
    const next = groups.find(([first]) => first !== undefined && apart(first.stray, answer.stray) <= near);
    if (next) next.push(answer);
    else groups.push([answer]);
  }
  return groups;
}

/** How far two answers lie apart where they do so most, mm. */
function apart({ offs }: Stray, other: Stray): number {
  return offs.reduce((most, { along, across }, index) => {
    const there = other.offs[index] ?? { along: 0, across: 0 };
    return Math.max(most, Math.hypot(along - there.along, across - there.across));
  }, 0);
}
