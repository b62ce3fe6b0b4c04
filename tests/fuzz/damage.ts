import type { Chance } from '../../src/garment/seed.ts';

/** What nobody would write, and what somebody might. */
const odd: readonly unknown[] = [
  '',
  ' ',
  '\u202Eevil',
  '\u0000',
  '<script>globalThis.harmed = true</script>',
  '"><img src=x onerror="globalThis.harmed = true">',
  '{overlap, plural, =0 {',
  "=cmd|' /C calc'!A0",
  '__proto__',
  'constructor',
  '../../package.json',
  'x'.repeat(5000),
  '('.repeat(200),
  '1/0',
  '1e999 in',
  'overlap * overlap * overlap',
  'centre-front',
  'neck-point',
  '99999999999999999999 cm',
  '1 1/0 in',
  null,
  true,
  0,
  -1,
  0.1 + 0.2,
  1e308,
  -1e-320,
  2 ** 53,
  [],
  {},
  [[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]],
  Array.from({ length: 600 }, () => ({ verb: 'pencil', name: 'a', x: '1 cm', y: '1 cm' })),
  { verb: 'seam', name: 'a', run: ['a', 'a', 'a'] },
  { named: 'amara' },
  { sampled: 'women', seed: '1' },
];

/** The text with some letters lost, changed, doubled, moved or strewn in, as a bad copy or a bad will might do it. */
export function damagedText(text: string, chance: Chance): string {
  let damaged = text;
  for (let times = chance.whole(1, 4); times > 0; times -= 1) {
    const at = chance.whole(0, damaged.length);
    const long =
      chance.whole(0, 3) === 0
        ? chance.whole(0, damaged.length - at)
        : Math.min(damaged.length - at, chance.whole(1, 4));
    const [head, piece, tail] = [damaged.slice(0, at), damaged.slice(at, at + long), damaged.slice(at + long)];
    damaged = pick(
      [head + tail, head + strewn(chance) + tail, head + piece + piece + tail, head, tail + piece + head],
      chance,
    );
  }
  return damaged;
}

function strewn(chance: Chance): string {
  const letters = [
    '"',
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    '\\',
    '\n',
    '\u0000',
    '\u202E',
    '\uFFFD',
    '😀',
    '9',
    '-',
    'e',
    '_proto_',
    '/',
  ];
  return Array.from({ length: chance.whole(1, 6) }, () => pick(letters, chance)).join('');
}

/** The document with some of its parts exchanged, lost, renamed, nested deeper or replaced by something odd. */
export function damagedJson(json: unknown, chance: Chance): unknown {
  const copy = structuredClone(json);
  for (let times = chance.whole(1, 3); times > 0; times -= 1) damageOne(copy, chance);
  return copy;
}

type Part = Record<string, unknown>;

function damageOne(json: unknown, chance: Chance): void {
  const parts = partsOf(json);
  if (parts.length === 0) return;
  const [owner, key] = pick(parts, chance);
  const [other, otherKey] = pick(parts, chance);
  const ways: readonly (() => void)[] = [
    () => put(owner, key, structuredClone(pick(odd, chance))),
    () => Reflect.deleteProperty(owner, key),
    () => put(owner, key, structuredClone(other[otherKey])),
    () => put(owner, pick(['__proto__', 'marks', otherKey, `${key} `, key.toUpperCase()], chance), owner[key]),
    () => put(owner, key, [owner[key]]),
    () => typeof owner[key] === 'string' && put(owner, key, damagedText(owner[key], chance)),
    () => typeof owner[key] === 'number' && put(owner, key, -owner[key] * 10 ** chance.whole(-3, 3)),
  ];
  pick(ways, chance)();
}

/** An own field, whatever it is called; a list keeps its length to itself. */
function put(owner: Part, key: string, value: unknown): void {
  if (Array.isArray(owner) && key === 'length') return;
  Object.defineProperty(owner, key, { value, enumerable: true, configurable: true, writable: true });
}

/** Every field of every object and every place of every list, with what it is in. */
function partsOf(json: unknown): readonly (readonly [Part, string])[] {
  if (typeof json !== 'object' || json === null) return [];
  const owner = json as Part;
  return Object.keys(owner).flatMap((key) => [[owner, key] as const, ...partsOf(owner[key])]);
}

function pick<T>(all: readonly T[], chance: Chance): T {
  return all[chance.whole(0, all.length - 1)] as T;
}
