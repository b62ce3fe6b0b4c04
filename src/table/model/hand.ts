import { formById } from '../../drafting/form.ts';
import type { ShapeKind } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Step } from '../../drafting/step.ts';
import type { Filling, Hand, ToolId } from './bench.ts';
import { freshName } from './fresh-name.ts';
import { fieldsOf } from './tools.ts';

/** A tool picked up, its first blank under the pointer. */
export function pickUp(tool: ToolId): Hand {
  return { tool, filled: {}, at: fieldsOf(tool)[0]?.field ?? null, answers: null };
}

/** The same step said the other way: what both ways have a blank for stays filled. */
export function turnOver(hand: Hand, tool: ToolId): Hand {
  const own = new Set(fieldsOf(tool).map((field) => field.field));
  const filled = Object.fromEntries(Object.entries(hand.filled).filter(([field]) => own.has(field)));
  const turned: Hand = { ...hand, tool, filled, at: null };
  return { ...turned, at: nextBlank(turned, null) };
}

/** Fills a blank and goes on to the next; a list stays open for more. */
export function fill(hand: Hand, field: string, value: Filling): Hand {
  const filled: Hand = { ...hand, filled: { ...hand.filled, [field]: value } };
  return { ...filled, at: takesMore(hand, field) ? field : nextBlank(filled, field) };
}

/** Whether a blank goes on taking objects until it is left. */
export function takesMore(hand: Hand, field: string): boolean {
  const takes = fieldsOf(hand.tool).find((one) => one.field === field)?.blank.takes;
  return takes === 'objects' || takes === 'run';
}

export function clear(hand: Hand, field: string): Hand {
  const filled = Object.fromEntries(Object.entries(hand.filled).filter(([name]) => name !== field));
  return { ...hand, filled, at: field };
}

/** The first blank after `field`, then from the start, that must still be filled; failing that an optional one; null when all are. */
function nextBlank(hand: Hand, field: string | null): string | null {
  const fields = fieldsOf(hand.tool);
  const start = fields.findIndex((one) => one.field === field) + 1;
  const order = [...fields.slice(start), ...fields.slice(0, start)].filter((one) => !(one.field in hand.filled));
  return (order.find((one) => !one.optional) ?? order[0])?.field ?? null;
}

/** The blanks that must still be filled. */
export function missing(hand: Hand): readonly string[] {
  return fieldsOf(hand.tool)
    .filter((one) => !one.optional && !isFilled(hand, one.field))
    .map((one) => one.field);
}

function isFilled(hand: Hand, field: string): boolean {
  const value = hand.filled[field];
  if (value === undefined || value === '') return false;
  const blank = fieldsOf(hand.tool).find((one) => one.field === field)?.blank;
  if (blank?.takes === 'objects') return Array.isArray(value) && value.length >= blank.least;
  return !(blank?.takes === 'run' && Array.isArray(value) && value.length < 1);
}

/** The step the tool in hand would make; null while a blank is empty, or for the tool that makes none. */
export function stepOf(hand: Hand, sheet: Sheet, taken: ReadonlySet<string>): Step | null {
  if (hand.tool === 'measure' || missing(hand).length > 0) return null;
  const inUse = (name: string) => taken.has(name) || sheet.shapes.has(name) || sheet.measures.has(name);
  const { answers } = hand;
  // What answers a target is called after it, while nothing else is.
  const name =
    answers !== null && !inUse(answers)
      ? answers
      : freshName(hand.tool === 'seam' ? 'seam' : kindMade(hand, sheet), inUse);
  const filled = Object.fromEntries(Object.entries(hand.filled).filter(([, value]) => value !== ''));
  const step = { verb: formById(hand.tool).verb, name, ...filled, ...(answers === null ? {} : { answers }) };
  return step as unknown as Step;
}

/** What kind of thing the tool in hand makes. What is folded or swung stays what it was. */
export function kindMade(hand: Hand, sheet: Sheet): ShapeKind {
  if (hand.tool === 'measure') return 'length';
  const { makes } = formById(hand.tool);
  if (makes !== 'same') return makes;
  const { what } = hand.filled;
  return (typeof what === 'string' ? sheet.shapes.get(what)?.kind : undefined) ?? 'point';
}
