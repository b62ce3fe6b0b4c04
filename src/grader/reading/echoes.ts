import type { Fault } from './fault.ts';
import { placeText } from './fault.ts';

/**
 * Faults without those that only echo another: what is told of a place and again of something inside it, and a field that is
 * missing only because it is there under a name nearly right.
 */
export function withoutEchoes(faults: readonly Fault[]): readonly Fault[] {
  const meant = new Set(faults.flatMap(meantPlace));
  return faults.filter((fault) => {
    const isMissing = 'key' in fault.message && fault.message.key === 'author.missing';
    if (isMissing && meant.has(placeText(fault.at))) return false;
    return !faults.some((other) => isWithin(fault, other));
  });
}

/** Where a field belongs that is there under a name nearly right. */
function meantPlace({ at, message }: Fault): readonly string[] {
  if (!('key' in message) || message.key !== 'author.no-field-meant') return [];
  return [placeText([...at.slice(0, -1), String(message.values['meant'])])];
}

function isWithin({ at }: Fault, around: Fault): boolean {
  const wide = around.at;
  return wide.length > 0 && at.length > wide.length && wide.every((step, index) => step === at[index]);
}
