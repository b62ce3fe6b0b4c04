import { type Message, message } from '../words/message.ts';

/** The body measures a block is drawn from. docs/method.md gives the terms of ISO 8559-1 and ASTM D5219 they stand for. */
export const figureMeasures = ['neck-base', 'shoulder', 'shoulder-slope', 'front-waist', 'back-waist'] as const;

export type FigureMeasure = (typeof figureMeasures)[number];

/** One person's measures: lengths in mm, `shoulder-slope` in degrees below the level. */
export type Figure = Readonly<Record<FigureMeasure, number>>;

export interface MeasureRange {
  readonly unit: 'mm' | 'degrees';
  readonly least: number;
  readonly most: number;
  /** Taken where a figure does not give the measure; null where it has to. */
  readonly otherwise: number | null;
}

/**
 * What the reader of figures accepts. Lengths: the extremes among the 6,068 adults of Gordon et al. 2014, widened by
 * a tenth and rounded outward to 5 mm. Slope: common practice, no source; 22 1/2 degrees where none is given, from
 * Hertzer, Garment Cutting in the Twentieth Century, 1892.
 */
export const measureRanges: Readonly<Record<FigureMeasure, MeasureRange>> = {
  'neck-base': { unit: 'mm', least: 270, most: 600, otherwise: null },
  shoulder: { unit: 'mm', least: 95, most: 205, otherwise: null },
  'shoulder-slope': { unit: 'degrees', least: 10, most: 35, otherwise: 22.5 },
  'front-waist': { unit: 'mm', least: 260, most: 545, otherwise: null },
  'back-waist': { unit: 'mm', least: 310, most: 660, otherwise: null },
};

export interface FigureError {
  /** The measure at fault; empty when the figure as a whole is. */
  readonly path: string;
  readonly message: Message;
}

export type FigureReading =
  | { readonly ok: true; readonly figure: Figure }
  | { readonly ok: false; readonly errors: readonly FigureError[] };

/** Reads `{measure: number}`, mm and degrees. Reports every measure that is missing, unknown, no number or out of range. */
export function readFigure(json: unknown): FigureReading {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    return {
      ok: false,
      errors: [{ path: '', message: message('garment.figure-shape', { known: figureMeasures.join(', ') }) }],
    };
  }
  const found = new Map<string, unknown>(Object.entries(json));
  const errors = [
    ...unknownMeasures(found),
    ...figureMeasures.flatMap((measure) => faultOf(measure, found.get(measure))),
  ];
  if (errors.length > 0) return { ok: false, errors };
  const read = figureMeasures.map((measure) => [measure, found.get(measure) ?? measureRanges[measure].otherwise]);
  return { ok: true, figure: Object.fromEntries(read) as Figure };
}

function unknownMeasures(found: ReadonlyMap<string, unknown>): FigureError[] {
  const known: readonly string[] = figureMeasures;
  return [...found.keys()]
    .filter((name) => !known.includes(name))
    .map((name) => ({ path: name, message: message('garment.measure-unknown', { name, known: known.join(', ') }) }));
}

function faultOf(measure: FigureMeasure, value: unknown): FigureError[] {
  const { unit, least, most, otherwise } = measureRanges[measure];
  const fault = (said: Message): FigureError[] => [{ path: measure, message: said }];
  const named = { name: measure, measure: { named: measure }, unit };
  // Is it left out?
  if (value === undefined)
    return otherwise === null ? fault(message('garment.measure-missing', { ...named, least, most })) : [];
  // Is it a number?
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return fault(message('garment.measure-not-a-number', { ...named, found: shown(value) }));
  }
  // Is it an adult's?
  if (value < least || value > most)
    return fault(message('garment.measure-range', { ...named, found: String(value), least, most }));
  return [];
}

/** A value as its author wrote it, as nearly as can be told. */
function shown(value: unknown): string {
  return typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? String(value));
}
