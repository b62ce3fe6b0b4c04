import { existsSync, readFileSync } from 'node:fs';

/** How many checks passed, failed and were left out. */
export interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

export const noCount: Count = { passed: 0, failed: 0, skipped: 0 };

export function plus(a: Count, b: Count): Count {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped };
}

/** A tool that is one check: its exit code is its result. */
export function asOne(exitCode: number): Count {
  return exitCode === 0 ? { ...noCount, passed: 1 } : { ...noCount, failed: 1 };
}

/**
 * What a test runner counted. A runner that stopped with an error it did not count (a file that does not load, a
 * report that was not written) is one failure more, so that no failure is lost.
 */
export function honest(counted: Count | null, exitCode: number): Count {
  const count = counted ?? noCount;
  const lost = count.failed === 0 && (exitCode !== 0 || counted === null);
  return lost ? { ...count, failed: 1 } : count;
}

/** The counts in a JSON report of Vitest; null where there is none. */
export function vitestCount(file: string): Count | null {
  const report = readReport(file);
  if (!report) return null;
  return {
    passed: numberIn(report, 'numPassedTests'),
    failed: numberIn(report, 'numFailedTests'),
    skipped: numberIn(report, 'numPendingTests') + numberIn(report, 'numTodoTests'),
  };
}

/** The counts in a JSON report of Playwright; null where there is none. A test that passed at the second try failed. */
export function playwrightCount(file: string): Count | null {
  const stats = readReport(file)?.stats;
  if (!isRecord(stats)) return null;
  return {
    passed: numberIn(stats, 'expected'),
    failed: numberIn(stats, 'unexpected') + numberIn(stats, 'flaky'),
    skipped: numberIn(stats, 'skipped'),
  };
}

function readReport(file: string): Readonly<Record<string, unknown>> | null {
  if (!existsSync(file)) return null;
  const json: unknown = JSON.parse(readFileSync(file, 'utf8'));
  return isRecord(json) ? json : null;
}

function numberIn(report: Readonly<Record<string, unknown>>, field: string): number {
  const value = report[field];
  if (typeof value !== 'number') throw new TypeError(`The test report has no number "${field}".`);
  return value;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
