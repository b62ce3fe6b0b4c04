import { expect, test } from 'vitest';
import { policyFirst } from '../../src/cli/policy-first.ts';

const POLICY = `<meta http-equiv="content-security-policy" content="default-src 'self'; script-src 'sha256-a$&b='">`;

test('the policy comes before the scripts it governs', () => {
  const page = `<html><head><meta charset="utf-8"><script>a()</script>${POLICY}</head></html>`;
  expect(policyFirst(page)).toBe(`<html><head><meta charset="utf-8">${POLICY}<script>a()</script></head></html>`);
});

test('a page without a policy stops the build', () => {
  expect(() => policyFirst('<html><head><meta charset="utf-8"></head></html>')).toThrow('must have a policy');
});
