import { expect, test } from 'vitest';
import { en } from '../../src/words/en/index.ts';
import type { Entry } from '../../src/words/entry.ts';

const files = import.meta.glob<Readonly<Record<string, Readonly<Record<string, Entry>>>>>('../../src/words/en/*.ts', {
  eager: true,
});

test('no key stands in two files of the catalogue, where the later would silently rule', () => {
  const places = new Map<string, string[]>();
  for (const [file, exports] of Object.entries(files)) {
    if (file.endsWith('/index.ts')) continue;
    for (const key of Object.values(exports).flatMap((entries) => Object.keys(entries))) {
      places.set(key, [...(places.get(key) ?? []), file]);
    }
  }
  expect([...places].filter(([, where]) => where.length > 1)).toEqual([]);
  expect([...places.keys()].sort()).toEqual(Object.keys(en).sort());
});
