import { spelled } from '../words/unseen.ts';

const SHOWN = 40;

/** Text that somebody else wrote, short enough to show, and with nothing in it that is not seen. */
export function shortened(text: string): string {
  const letters = [...text.slice(0, 4 * SHOWN)];
  return spelled(letters.length > SHOWN ? `${letters.slice(0, SHOWN).join('')}…` : text);
}

/** Something found where a word should be, short enough to show; empty where there is nothing that can be shown. */
export function wordOf(value: unknown): string {
  if (typeof value === 'string') return shortened(value);
  return typeof value === 'number' || typeof value === 'boolean' ? String(value) : '';
}
