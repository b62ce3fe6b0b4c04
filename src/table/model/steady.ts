/**
 * Plain data as they are now, with whatever in them is as it was being the very thing of before: who shows them tells at a glance
 * what has changed, and leaves the rest alone.
 */
export function steady<Data>(now: Data, before: Data): Data {
  if (isSame(now, before)) return before;
  if (Array.isArray(now) && Array.isArray(before)) return now.map((one, index) => steady(one, before[index])) as Data;
  if (!isRecord(now) || !isRecord(before)) return now;
  return Object.fromEntries(Object.entries(now).map(([name, value]) => [name, steady(value, before[name])])) as Data;
}

/** A list, each thing in it the very one of before where it is the same, and the very list where all of them are. */
export function steadyList<Thing>(now: readonly Thing[], before: readonly Thing[]): readonly Thing[] {
  const kept = now.map((one, index) => (isSame(one, before[index]) ? (before[index] as Thing) : one));
  return kept.length === before.length && kept.every((one, index) => one === before[index]) ? before : kept;
}

function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (Array.isArray(a))
    return Array.isArray(b) && a.length === b.length && a.every((one, index) => isSame(one, b[index]));
  return isRecord(a) && isRecord(b) && sameFields(a, b);
}

type Fields = Readonly<Record<string, unknown>>;

function sameFields(a: Fields, b: Fields): boolean {
  const names = Object.keys(a);
  if (names.length !== Object.keys(b).length) return false;
  for (const name of names) if (!(Object.hasOwn(b, name) && isSame(a[name], b[name]))) return false;
  return true;
}

function isRecord(data: unknown): data is Fields {
  return typeof data === 'object' && data !== null && Object.getPrototypeOf(data) === Object.prototype;
}
