import { isRecord } from '../../drafting/record.ts';
import { message } from '../../words/message.ts';
import type { Fault, Place } from './fault.ts';

/** Words that name something of every object: a field so called would be taken for what the language itself put there. */
const strange = ['__proto__', 'constructor', 'prototype'];

/** Whether a name is such a word. What is so named could be no field of a file: a target, whose hints and marks are told by its name. */
export function isStrange(name: string): boolean {
  return strange.includes(name);
}

/** No file of ours is nested deeper than this. */
const DEEPEST = 12;

/** Fields that no file may have, wherever they are; `skip` names fields that another reader looks into. */
export function strangeKeys(json: unknown, skip: readonly string[] = [], at: Place = []): readonly Fault[] {
  if (at.length > DEEPEST) return [];
  if (Array.isArray(json)) return json.flatMap((entry, index) => strangeKeys(entry, skip, [...at, index]));
  if (!isRecord(json)) return [];
  return Object.keys(json).flatMap((key): readonly Fault[] => {
    if (isStrange(key)) return [{ at: [...at, key], message: message('read.unknown') }];
    return skip.includes(key) ? [] : strangeKeys(json[key], skip, [...at, key]);
  });
}
