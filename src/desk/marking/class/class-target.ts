import type { Name } from '../../../drafting/step.ts';
import { type Stray, sizeOf } from '../../../exchange/class/laid/stray.ts';
import { wayWords } from '../../../exchange/class/ways.ts';
import type { Sound } from '../intake/taken.ts';
import type { Gathered } from './class-drawing.ts';

/** What a class made of one target, as far as it can be laid over one another. */
export interface ClassTarget {
  readonly strays: readonly Stray[];
  readonly right: number;
  /** Those who went the same wrong way, the most first. */
  readonly gathered: readonly Gathered[];
  /** Whose answers are not right, the furthest off first. */
  readonly furthest: readonly string[];
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
  const wrong = laid.filter(({ right }) => !right).toSorted((a, b) => sizeOf(b.stray) - sizeOf(a.stray));
  return {
    strays: laid.map(({ stray }) => stray),
    right: laid.filter(({ right }) => right).length,
    gathered: gathered.toSorted((a, b) => b.strays.length - a.strays.length || (a.way < b.way ? -1 : 1)),
    furthest: wrong.map(({ piece }) => piece.kept.student),
  };
}

function isRight({ kept }: Sound, target: Name): boolean {
  return kept.checks.every((check) => check.target !== target || check.status === 'within');
}

function wayGone({ ways }: Sound, target: Name): string | null {
  const gone = ways.find((way) => way.target === target);
  return gone ? wayWords(gone.id) : null;
}
