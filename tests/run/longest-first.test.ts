import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { LONGEST } from './longest-first.ts';

test('the files that are begun first are files there are', () => {
  const missing = LONGEST.filter((file) => !existsSync(new URL(`../${file}.test.ts`, import.meta.url)));
  expect(missing).toEqual([]);
});
