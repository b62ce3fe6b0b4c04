import type { Document } from 'yaml';
import { isRecord } from '../../drafting/record.ts';
import type { Place } from '../../grader/reading/fault.ts';

/** Where a place starts in the text: the place itself, or the nearest thing around it that is there. */
export function offsetOf(document: Document, at: Place): number {
  for (let length = at.length; length > 0; length -= 1) {
    const node = document.getIn(at.slice(0, length), true) as { readonly range?: readonly number[] } | undefined;
    if (node?.range?.[0] !== undefined) return node.range[0];
  }
  return 0;
}

/**
 * A place in an exercise as an author looks for it: entries of lists counted from 1, with the name they have in the file:
 * `misreadings 2 (on-the-edge), instead 1 (top-button), one`.
 */
export function placeWords(data: unknown, at: Place): string {
  const parts: string[] = [];
  let inner = data;
  for (const step of at) {
    inner = isRecord(inner) || Array.isArray(inner) ? (inner as Readonly<Record<string, unknown>>)[step] : undefined;
    if (typeof step === 'number') parts.push(`${parts.pop() ?? ''} ${step + 1}${nameOf(inner)}`.trim());
    else parts.push(step);
  }
  return parts.join(', ');
}

function nameOf(entry: unknown): string {
  const name = isRecord(entry) ? (entry['id'] ?? entry['name'] ?? entry['target']) : undefined;
  return typeof name === 'string' ? ` (${name})` : '';
}
