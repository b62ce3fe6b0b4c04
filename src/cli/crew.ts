import { type Hand, hired } from './hand.ts';
import { type Manner, type Told, tell } from './tell.ts';
import type { Work } from './work.ts';

/** Does batches of work, one after another on each of its hands. */
export interface Crew {
  readonly hands: number;
  readonly do: (batch: readonly Work[]) => Promise<readonly Told[]>;
  readonly goHome: () => Promise<void>;
}

/**
 * A crew with so many hands, each on a core of its own. The first batch is done by this process itself, so that a little
 * work need not wait for others to be called in; what comes after it is not, even where there is one hand only, because a hand
 * can be kept from spreading out and this process, which may have a whole class to report on, cannot.
 */
export function crewOf(manner: Manner, hands: number): Crew {
  let begun = false;
  let crew: readonly Hand[] = [];
  return {
    hands,
    do: async (batch) => {
      if (!begun) {
        begun = true;
        return batch.map((piece) => tell(piece, manner));
      }
      if (crew.length === 0) crew = Array.from({ length: hands }, () => hired(manner));
      const [idlest] = crew.toSorted((a, b) => a.waiting() - b.waiting());
      return await (idlest as Hand).do(batch);
    },
    goHome: async () => {
      await Promise.all(crew.map((hand) => hand.leave()));
    },
  };
}
