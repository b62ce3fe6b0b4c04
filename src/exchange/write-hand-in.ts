import { HAND_IN_FORMAT, HAND_IN_VERSION, type HandIn } from './hand-in.ts';

/** The JSON of a hand-in, fields in the order of docs/files.md; reading it gives the same hand-in again. */
export function handInJson(handIn: HandIn): Readonly<Record<string, unknown>> {
  const { student, number, set, exercise, order, strictness, unit, steps, shown, hints, checks, begun, saved } = handIn;
  return {
    format: HAND_IN_FORMAT,
    version: HAND_IN_VERSION,
    student,
    number,
    set: set === null ? null : { title: set.title, id: set.id },
    exercise,
    order: { figure: order.figure, style: order.style, house: order.house },
    strictness,
    unit,
    steps,
    shown,
    hints,
    checks,
    begun,
    saved,
  };
}

/** The text of a hand-in file, set out to be read by people too. */
export function writeHandIn(handIn: HandIn): string {
  return `${JSON.stringify(handInJson(handIn), null, 2)}\n`;
}
