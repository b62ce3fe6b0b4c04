import { isRecord } from '../drafting/record.ts';
import { SET_FORMAT } from './set.ts';

/** No set's file is larger, in bytes or in characters. */
export const SET_LENGTH = 64 * 1024;

/** Whether a text says of itself that it is a problem set, wherever in it that stands. One that is cut off says nothing. */
export function saysSet(text: string): boolean {
  // Hand-ins are looked at by the thousand: what does not have the words need not be parsed.
  if (text.length > SET_LENGTH || !text.includes(`"${SET_FORMAT}"`)) return false;
  try {
    const json: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    return isRecord(json) && json['format'] === SET_FORMAT;
  } catch {
    return false;
  }
}
