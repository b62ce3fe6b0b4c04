import { defineConfig } from 'vitest/config';
import { LongestFirst } from './run/longest-first.ts';

const common = {
  environment: 'node',
  testTimeout: 120_000,
  hookTimeout: 60_000,
  setupFiles: 'tests/run/property.ts',
} as const;

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    maxWorkers: 2,
    // The files of a worker share what they import: half of the time went into reading the exercises again for each.
    // Nothing in the project may hang on it, since all that modules keep are caches, and a cache that shows is a fault.
    isolate: false,
    sequence: { sequencer: LongestFirst },
    projects: [
      { test: { ...common, name: 'unit', include: ['tests/**/*.test.ts'], exclude: ['tests/site/**'] } },
      { test: { ...common, name: 'site', include: ['tests/site/**/*.test.ts'] } },
    ],
  },
});
