import { millimetres, type Quantity } from '../drafting/quantity.ts';
import type { Name } from '../drafting/step.ts';
import { type Chance, chanceOf } from './seed.ts';
import type { Style } from './style.ts';
import { type StyleMeasure, styleMeasureNamed } from './style-measures.ts';

/** Least and most of a style measure, mm. */
export interface StyleRange {
  readonly least: number;
  readonly most: number;
}

/**
 * Another customer's order: every length of the style a quarter to two fifths larger or smaller, all measures of one
 * part of the garment by the same factor, in whole mm, within the ranges given or else those the reader accepts. Where
 * a range leaves no room on one side the other is taken. Always the same for the same seed. Angles and numbers stay.
 */
export function variedStyle(
  seed: string | number,
  base: Style,
  ranges: Readonly<Record<Name, StyleRange>> = {},
): Style {
  const chance = chanceOf(`style/${seed}`);
  const factors = new Map<string, number>();
  const factorOf = (part: string): number => {
    const factor = factors.get(part) ?? drawFactor(chance);
    factors.set(part, factor);
    return factor;
  };
  return new Map(
    [...base].map(([name, quantity]): [Name, Quantity] => {
      if (quantity.dimension !== 'length') return [name, quantity];
      const measure = styleMeasureNamed(name);
      const range = ranges[name] ?? measure;
      return [name, millimetres(within(quantity.value, factorOf(measure?.part ?? name), range))];
    }),
  );
}

/** From 0.60 to 0.75 or from 1.25 to 1.40. */
function drawFactor(chance: Chance): number {
  const by = chance.whole(25, 40) / 100;
  return chance.whole(0, 1) === 0 ? 1 - by : 1 + by;
}

function within(value: number, factor: number, range: StyleRange | StyleMeasure | null): number {
  const wanted = Math.round(value * factor);
  if (!range || (wanted >= range.least && wanted <= range.most)) return wanted;
  const other = Math.round(value * (2 - factor));
  if (other >= range.least && other <= range.most) return other;
  return Math.min(Math.max(wanted, range.least), range.most);
}
