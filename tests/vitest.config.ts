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
    sequence: { sequencer: LongestFirst },
    projects: [
      { test: { ...common, name: 'unit', include: ['tests/**/*.test.ts'], exclude: ['tests/site/**'] } },
      { test: { ...common, name: 'site', include: ['tests/site/**/*.test.ts'] } },
    ],
  },
});
