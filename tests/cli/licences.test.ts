import { expect, test } from 'vitest';
import { packageOf } from '../../src/cli/licences.ts';

test('a module belongs to the innermost package that holds it', () => {
  expect(packageOf('/a/node_modules/preact/dist/preact.module.js')).toEqual(['preact']);
  expect(packageOf('/a/node_modules/@preact/signals/dist/signals.js')).toEqual(['@preact/signals']);
  expect(packageOf('/a/node_modules/one/node_modules/two/index.js')).toEqual(['two']);
});

test('the project’s own modules and made ones belong to none', () => {
  expect(packageOf('/a/src/table/table.ts')).toEqual([]);
  expect(packageOf('\0vite/preload-helper.js')).toEqual([]);
});
