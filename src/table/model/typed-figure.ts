import { evaluate } from '../../drafting/expression.ts';
import { bareLength } from '../../drafting/take/amount.ts';
import { type Figure, type FigureMeasure, figureMeasures, measureRanges } from '../../garment/figure.ts';
import { type Message, message, type Value } from '../../words/message.ts';
import { withPoints } from './typed.ts';

/** What was typed for the measures of a body; what was not touched is not among it. */
export type TypedMeasures = Readonly<Partial<Record<FigureMeasure, string>>>;

/** What stands in the way of a figure, measure by measure. */
export type MeasureTroubles = Readonly<Partial<Record<FigureMeasure, Message>>>;

export type TypedFigure =
  | { readonly ok: true; readonly figure: Figure; readonly doubt: Message | null }
  | { readonly ok: false; readonly troubles: MeasureTroubles };

/** The figure with what was typed in place of its measures; what was not touched stays exact. */
export function readTypedFigure(figure: Figure, typed: TypedMeasures): TypedFigure {
  const measures: Record<FigureMeasure, number> = { ...figure };
  const troubles: Partial<Record<FigureMeasure, Message>> = {};
  for (const name of figureMeasures) {
    const text = typed[name];
    if (text === undefined) continue;
    const read = readMeasure(name, text);
    if (typeof read === 'number') measures[name] = read;
    else troubles[name] = read;
  }
  if (Object.keys(troubles).length > 0) return { ok: false, troubles };
  return { ok: true, figure: measures, doubt: doubtOf(measures) };
}

/** One measure in the unit of its range; or what to say of what was typed. */
function readMeasure(name: FigureMeasure, text: string): number | Message {
  const { unit, least, most } = measureRanges[name];
  const wanted = unit === 'mm' ? 'length' : 'angle';
  const written = withPoints(text).trim();
  if (written === '') return message('table.measure-empty');
  const amount = evaluate(written, new Map());
  if (!amount.ok) return amount.message;
  const { dimension, value } = amount.quantity;
  if (dimension === 'number')
    return wanted === 'length' ? bareLength(written) : message('expression.bare-angle', { text: written });
  if (dimension !== wanted) return message('expression.wanted', { text: written, found: dimension, wanted });
  const found = wanted === 'length' ? value : (value * 180) / Math.PI;
  if (found >= least && found <= most) return found;
  const shown = (amountInUnit: number): Value =>
    wanted === 'length' ? { mm: amountInUnit } : { radians: (amountInUnit * Math.PI) / 180 };
  return message('table.measure-out', { found: shown(found), least: shown(least), most: shown(most) });
}

/**
 * A body may be long in front and short behind, but the front is hardly ever the longer: on 2 of the 6,068 adults of Gordon et
 * al. 2014 it was, the front measured sitting. Two fields filled the wrong way round are the likelier reason.
 */
function doubtOf(figure: Figure): Message | null {
  return figure['front-waist'] > figure['back-waist'] ? message('table.measures-swapped') : null;
}
