/** A moment as a field for date and time holds it, in the time zone of this machine; empty for none. */
export function dateTimeOf(utc: string | null): string {
  if (utc === null) return '';
  const date = new Date(utc);
  const local = new Date(date.getTime() - date.getTimezoneOffset() * 60_000);
  return local.toISOString().slice(0, 16);
}

/** The moment that such a field holds, in UTC; null where it holds none, and beyond the year 9999. */
export function utcOf(dateTime: string): string | null {
  const date = new Date(dateTime);
  // Past that year ISO 8601 wants a sign before it, which no file of ours has.
  return dateTime === '' || !(date.getTime() < Date.UTC(10_000, 0)) ? null : date.toISOString();
}
