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
 * Which of six customers want a part of the garment bigger: each part is bigger for another three of them, so that of any
 * two parts each is bigger once where the other is smaller. A measure named for another then shows, even where the two
 * are alike on the order at hand. More parts than these begin again.
 */
const BIGGER = ['111000', '000111', '100110', '011001', '101010', '010101', '110001', '001110'] as const;

/**
 * The order of another customer, the first, second or any other of them (`nth`, from 0). A part that grows goes 90 to
 * 100 % of the way to the end of its range, one that shrinks as far the other way: well away from the order at hand,
 * because a number typed in place of a name is to be seen. Where one side of the range has too little room for that,
 * both go the other way, the one 90 to 100 % and the other 30 to 45 %. All measures of one part move the same way and as
 * far, so that a fall stays above its stand; in whole mm; always the same for the same seed. Angles stay.
 */
export function variedStyle(
  seed: string | number,
  nth: number,
  base: Style,
  ranges: Readonly<Record<Name, StyleRange>> = {},
): Style {
  const chance = chanceOf(`style/${seed}/${nth}`);
  const moves = new Map<string, Move>();
  const moveOf = (part: string): Move => {
    const bigger = BIGGER[moves.size % BIGGER.length] as string;
    const move = moves.get(part) ?? drawMove(bigger[nth % bigger.length] === '1', chance);
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
  readonly bigger: boolean;
  /** How much of the room on the side it goes to, and how much where it has to go to the other. */
  readonly far: number;
  readonly near: number;
}

function drawMove(bigger: boolean, chance: Chance): Move {
  return { bigger, far: chance.whole(90, 100) / 100, near: chance.whole(30, 45) / 100 };
}

function usualRange(name: Name, value: number): StyleRange {
  const { least, most } = styleMeasureNamed(name) ?? { least: 0, most: Number.POSITIVE_INFINITY };
  return { least: Math.max(least, value * (1 - FREELY)), most: Math.min(most, value * (1 + FREELY)) };
}

function moved(value: number, { bigger, far, near }: Move, { least, most }: StyleRange): number {
  const [below, above] = [Math.max(value - least, 0), Math.max(most - value, 0)];
  const up = value + above * (below < CRAMPED * above && !bigger ? near : far);
  const down = value - below * (above < CRAMPED * below && bigger ? near : far);
  // Is there room on the side chosen?
  const goesUp = bigger ? above >= CRAMPED * below : below < CRAMPED * above;
  const wanted = Math.round(goesUp ? up : down);
  // Rounding must not leave the range; a range without a whole millimetre in it leaves the measure alone.
  const [first, last] = [Math.ceil(least), Math.floor(most)];
  return first > last ? value : Math.min(Math.max(wanted, first), last);
}
