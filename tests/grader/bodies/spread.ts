import type { Figure } from '../../../src/garment/figure.ts';

/** Into how many parts the range of each measure is cut. */
const PARTS = 6;

/**
 * Bodies that stand for all: one of each cell of a net over the four measures that were taken, and whoever goes furthest in a
 * measure, or in one beside another. Some 340 of the 6,068.
 */
export function spreadOf(bodies: readonly Figure[]): readonly Figure[] {
  const shares = sharesOf(bodies);
  const cells = new Map<string, Figure>();
  for (const [index, share] of shares.entries()) {
    const cell = share.map((one) => Math.min(PARTS - 1, Math.floor(one * PARTS))).join();
    if (!cells.has(cell)) cells.set(cell, bodies[index] as Figure);
  }
  return [...new Set([...cells.values(), ...furthest(shares).map((index) => bodies[index] as Figure)])];
}

/** Where each body lies in the range of each measure, from 0 to 1. */
function sharesOf(bodies: readonly Figure[]): readonly (readonly number[])[] {
  const taken = (['neck-base', 'shoulder', 'front-waist', 'back-waist'] as const).map((measure) => {
    const all = bodies.map((body) => body[measure]);
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return all.map((one) => (one - least) / (most - least));
  });
  return bodies.map((_, index) => taken.map((measure) => measure[index] as number));
}

/** The bodies that have the least and the most of a measure, and of one less another. */
function furthest(shares: readonly (readonly number[])[]): readonly number[] {
  const measures = [0, 1, 2, 3];
  const alone = measures.map((one) => shares.map((share) => share[one] as number));
  const pairs = measures.flatMap((one) =>
    measures.slice(one + 1).map((other) => shares.map((share) => (share[one] as number) - (share[other] as number))),
  );
  return [...alone, ...pairs].flatMap((all) => [all.indexOf(Math.min(...all)), all.indexOf(Math.max(...all))]);
}
