import type { Message } from '../../words/message.ts';

/** Where in a file: names of fields, and positions in lists counted from 0. */
export type Place = readonly (string | number)[];

/** What in a file does not fit, where, and what to do about it. */
export interface Fault {
  readonly at: Place;
  readonly message: Message;
}

/** A place as it is written: `checks[2].tolerance`; empty for the file as a whole. */
export function placeText(at: Place): string {
  return at.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    return text === '' ? step : `${text}.${step}`;
  }, '');
}

/** The place that `placeText` wrote. */
export function placeOf(text: string): Place {
  return [...text.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, position, field]) =>
    position === undefined ? (field ?? '') : Number(position),
  );
}
