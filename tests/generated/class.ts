import { type Chance, chanceOf } from '../../src/garment/seed.ts';
import { draftOf, exercisesFor } from './drafts.ts';
import { handInLine } from './hand-in-line.ts';
import { type Kind, kinds } from './kinds.ts';

/** One line of a generated stream, and what it was made to be. */
export interface Made {
  readonly kind: Kind;
  readonly text: string;
  /** The misreading it was made with; null where it was made with none. */
  readonly misreading: string | null;
  /** The place, from 0, of the line it repeats; its own place where it repeats none. */
  readonly first: number;
}

/** A piece that may be handed in again is repeated from among so many last ones. */
const REMEMBERED = 64;

/**
 * A class, however large, each student on a figure of their own: work of every kind, as chance has it, always the same for the
 * same seed. Each line stands by itself, so that any number of them take no more room than one.
 */
export function* classOf(count: number, seed: string | number): Generator<Made> {
  const chance = chanceOf(`class/${seed}`);
  const recent: Made[] = [];
  for (let at = 0; at < count; at += 1) {
    const made = madeAt(at, chance, recent);
    if (mayBeRepeated(made.kind)) recent[at % REMEMBERED] = made;
    yield made;
  }
}

function madeAt(at: number, chance: Chance, recent: readonly Made[]): Made {
  const drawn = pick(kindsByShare, chance);
  const handedIn = recent.filter((one) => one !== undefined);
  if (drawn === 'repeated' && handedIn.length > 0) return { ...pick(handedIn, chance), kind: drawn };
  // Where there is nothing to repeat yet, it is right.
  const kind = drawn === 'repeated' ? 'right' : drawn;
  const draft = draftOf(kind, pick(exercisesFor(kind), chance), String(at), chance);
  return { kind, text: handInLine(kind, at, draft, chance), misreading: draft.misreading, first: at };
}

const kindsByShare: readonly Kind[] = Object.entries(kinds).flatMap(([kind, { share }]) =>
  Array.from({ length: share }, () => kind as Kind),
);

function mayBeRepeated(kind: Kind): boolean {
  return kind !== 'repeated' && kinds[kind].comesOut === 'row';
}

/** One of some, of which there is one at least. */
function pick<T>(all: readonly T[], chance: Chance): T {
  return all[chance.whole(0, all.length - 1)] as T;
}
