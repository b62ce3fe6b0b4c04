import { millimetres, type Quantity } from '../drafting/quantity.ts';
import type { Name } from '../drafting/step.ts';
import { type Chance, chanceOf } from './seed.ts';
import type { Style } from './style.ts';
import { styleMeasureNamed } from './style-measures.ts';

/** Least and most of a style measure, mm. */
export interface StyleRange {
  readonly least: number;
  readonly most: number;
}

/** Where no range is given, a measure may grow or shrink by two fifths, as far as the reader of styles accepts. */
const FREELY = 0.4;

/** One side is taken for the other where it has less than two thirds of the other's room. */
const CRAMPED = 2 / 3;

/**
 * Another customer's order. Every length moves 60 to 100 % of the way to one end of its range, all measures of one part
 * of the garment the same way and as far, so that a fall stays above its stand; in whole mm; always the same for the
 * same seed. Well away from the order at hand, because a number typed in place of a name is to be seen. Angles stay.
 */
export function variedStyle(
  seed: string | number,
  base: Style,
  ranges: Readonly<Record<Name, StyleRange>> = {},
): Style {
  const chance = chanceOf(`style/${seed}`);
  const moves = new Map<string, Move>();
  const moveOf = (part: string): Move => {
    const move = moves.get(part) ?? drawMove(chance);
    moves.set(part, move);
    return move;
  };
  return new Map(
    [...base].map(([name, quantity]): [Name, Quantity] => {
      if (quantity.dimension !== 'length') return [name, quantity];
      const range = ranges[name] ?? usualRange(name, quantity.value);
      return [name, millimetres(moved(quantity.value, moveOf(styleMeasureNamed(name)?.part ?? name), range))];
    }),
  );
}

interface Move {
  readonly up: boolean;
  /** How much of the room on that side. */
  readonly share: number;
}

function drawMove(chance: Chance): Move {
  return { up: chance.whole(0, 1) === 1, share: chance.whole(60, 100) / 100 };
}

function usualRange(name: Name, value: number): StyleRange {
  const { least, most } = styleMeasureNamed(name) ?? { least: 0, most: Number.POSITIVE_INFINITY };
  return { least: Math.max(least, value * (1 - FREELY)), most: Math.min(most, value * (1 + FREELY)) };
}

function moved(value: number, { up, share }: Move, { least, most }: StyleRange): number {
  const [below, above] = [Math.max(value - least, 0), Math.max(most - value, 0)];
  // Is there room on the side chosen?
  const cramped = up ? above < CRAMPED * below : below < CRAMPED * above;
  const wanted = Math.round(up === cramped ? value - below * share : value + above * share);
  // Rounding must not leave the range; a range without a whole millimetre in it leaves the measure alone.
  const [first, last] = [Math.ceil(least), Math.floor(most)];
  return first > last ? value : Math.min(Math.max(wanted, first), last);
}
