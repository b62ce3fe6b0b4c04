import type { Name } from '../../../drafting/step.ts';
import { type Stray, sizeOf } from '../../../exchange/class/laid/stray.ts';
import type { Sound } from '../intake/taken.ts';
import { type Lone, togetherIn } from './together.ts';

/** Answers of a class that lie together because they went the same wrong way. */
export interface Gathered {
  /** By its id. */
  readonly way: string;
  readonly strays: readonly Stray[];
}

/** What a class made of one target, as far as it can be laid over one another. Every answer is in one of the four. */
export interface ClassTarget {
  readonly right: readonly Stray[];
  /** Those who went the same wrong way, the most first. */
  readonly gathered: readonly Gathered[];
  /** Those who lie together where no known wrong way comes out, the most first. */
  readonly together: readonly (readonly Lone[])[];
  /** Those who lie by themselves, the furthest off first. */
  readonly alone: readonly Lone[];
}

export function classTarget(pieces: readonly Sound[], target: Name): ClassTarget {
  const laid = pieces.flatMap((piece) => {
    const stray = piece.sketch.strays[target];
    return stray ? [{ piece, stray, right: isRight(piece, target), way: wayGone(piece, target) }] : [];
  });
  const misread = Map.groupBy(
    laid.filter(({ way }) => way !== null),
    ({ way }) => way ?? '',
  );
  const gathered = [...misread].map(([way, all]) => ({ way, strays: all.map(({ stray }) => stray) }));
  const rest = laid.filter(({ way }) => way === null);
  const wrong = rest.filter(({ right }) => !right).map(({ piece: { kept }, stray }) => ({ ...kept, stray }));
  const { together, alone } = togetherIn(
    wrong.map(({ student, who, stray }): Lone => ({ student, who, stray })),
    laid.length,
  );
  return {
    right: rest.filter(({ right }) => right).map(({ stray }) => stray),
    gathered: gathered.toSorted((a, b) => b.strays.length - a.strays.length || (a.way < b.way ? -1 : 1)),
    together,
    alone: alone.toSorted((a, b) => sizeOf(b.stray) - sizeOf(a.stray)),
  };
}

/** All answers that can be laid, however they went. */
export function straysOf({ right, gathered, together, alone }: ClassTarget): readonly Stray[] {
  return [
    ...right,
    ...gathered.flatMap(({ strays }) => strays),
    ...[...together.flat(), ...alone].map(({ stray }) => stray),
  ];
}

function isRight({ kept }: Sound, target: Name): boolean {
  return kept.checks.every((check) => check.target !== target || check.status === 'within');
}

function wayGone({ ways }: Sound, target: Name): string | null {
  const gone = ways.find((way) => way.target === target);
  return gone ? gone.id : null;
}
