/** What has been spent, and how much may be: the innermost loops count here, so that nothing need be handed down to them. */
const meter = new Float64Array([0, Number.POSITIVE_INFINITY]);

/** Thrown where a limit is reached; only `metered` catches it, and it never leaves this file's callers. */
class OutOfWork extends Error {}

/**
 * Counts work done, in units of about one root finding or one look at a pair of stretches. The count hangs on the figures
 * alone, never on a clock, so that the same draft costs the same everywhere. Costs nothing to speak of where no limit is set.
 */
export function spend(units: number): void {
  const spent = (meter[0] as number) + units;
  meter[0] = spent;
  if (spent > (meter[1] as number)) throw new OutOfWork();
}

/** What came of work under a limit: its value and what it cost, or that the limit was reached. */
export type Metered<T> = { readonly done: true; readonly value: T; readonly spent: number } | { readonly done: false };

/** Does work that may cost no more than `limit` units, and says what it cost. Work under a limit may hold more of its kind. */
export function metered<T>(limit: number, work: () => T): Metered<T> {
  const [before, most] = [meter[0] as number, meter[1] as number];
  meter[1] = Math.min(most, before + limit);
  try {
    const value = work();
    return { done: true, value, spent: (meter[0] as number) - before };
  } catch (error) {
    // A limit further out has been reached too: that one ends its own work.
    if (error instanceof OutOfWork && (meter[0] as number) <= most) return { done: false };
    throw error;
  } finally {
    meter[1] = most;
  }
}
