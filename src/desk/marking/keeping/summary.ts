import type { Summary } from './shelf.ts';

/** A summary as it was kept; null where it is none. */
export function summaryFrom(found: unknown): Summary | null {
  if (typeof found !== 'object' || found === null) return null;
  const { title, students, pieces, saved } = found as Readonly<Record<string, unknown>>;
  const whole = typeof students === 'number' && typeof pieces === 'number';
  if (typeof title !== 'string' || typeof saved !== 'string' || !whole) return null;
  return Number.isNaN(Date.parse(saved)) ? null : { title, students, pieces, saved };
}
