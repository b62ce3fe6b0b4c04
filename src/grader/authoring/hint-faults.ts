import { foundWords } from '../../drafting/read/found.ts';
import { isRecord } from '../../drafting/record.ts';
import { message } from '../../words/message.ts';
import type { Fault } from '../reading/fault.ts';

/** Targets with more or fewer than three hints, told once of the list and not of each hint that lacks. */
export function hintFaults({ targets }: Readonly<Record<string, unknown>>): readonly Fault[] {
  const listed: readonly unknown[] = Array.isArray(targets) ? targets : [];
  return listed.flatMap((target, index) => {
    const hints = isRecord(target) ? target['hints'] : undefined;
    if (!Array.isArray(hints) || hints.length === 3) return [];
    const values = { wanted: { said: message('wants.hints') }, found: { said: foundWords(hints) } };
    return [{ at: ['targets', index, 'hints'], message: message('read.wrong', values) }];
  });
}
