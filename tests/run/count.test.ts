import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { asOne, honest, playwrightCount, plus, vitestCount } from './count.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'count-'));
afterAll(() => rmSync(folder, { recursive: true }));

function report(json: unknown): string {
  const file = path.join(folder, 'report.json');
  writeFileSync(file, JSON.stringify(json));
  return file;
}

describe('the closing count', () => {
  test('takes what a unit test report counted', () => {
    const json = { numPassedTests: 7, numFailedTests: 1, numPendingTests: 2, numTodoTests: 0 };
    expect(vitestCount(report(json))).toEqual({ passed: 7, failed: 1, skipped: 2 });
  });

  test('counts a browser test that passed at the second try as failed', () => {
    const json = { stats: { expected: 5, unexpected: 1, flaky: 1, skipped: 0 } };
    expect(playwrightCount(report(json))).toEqual({ passed: 5, failed: 2, skipped: 0 });
  });

  test('adds a failure where a runner stopped badly without counting one', () => {
    const passed = { passed: 3, failed: 0, skipped: 0 };
    expect(honest(passed, 1)).toEqual({ passed: 3, failed: 1, skipped: 0 });
    expect(honest(passed, 0)).toEqual(passed);
    expect(honest({ passed: 3, failed: 2, skipped: 0 }, 1)).toEqual({ passed: 3, failed: 2, skipped: 0 });
  });

  test('adds a failure where there is no report, even if the runner said all was well', () => {
    expect(vitestCount(path.join(folder, 'none.json'))).toBeNull();
    expect(honest(null, 0)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });

  test('takes any other tool as one check', () => {
    expect(plus(asOne(0), asOne(2))).toEqual({ passed: 1, failed: 1, skipped: 0 });
  });
});
