import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const css = readFileSync(path.resolve(import.meta.dirname, '../../src/styles/tokens.css'), 'utf8');
const blocks = [...css.matchAll(/:root \{([^}]*)\}/g)].map((match) => match[1] ?? '');
const [light, dark, print] = blocks.map(
  (block) =>
    new Map(Array.from(block.matchAll(/--([\w-]+): (#[0-9a-f]+);/g), (match) => [match[1] ?? '', match[2] ?? ''])),
);

/** Contrast as WCAG 2.2 defines it. */
function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

function luminance(hex: string): number {
  const full = hex.length === 4 ? `#${[...hex.slice(1)].map((c) => c + c).join('')}` : hex;
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(full.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

test('the oracle knows black on white', () => {
  expect(contrast('#000', '#ffffff')).toBeCloseTo(21, 9);
});

describe.each([
  ['light', light],
  ['dark', dark],
  ['print', print],
] as const)('the %s scheme', (_name, colours) => {
  const of = (name: string): string => colours?.get(name) ?? '#000';

  test('has every colour', () => {
    expect([...(colours ?? new Map()).keys()]).toEqual([...(light ?? new Map()).keys()]);
  });

  test.each(['ink', 'quiet', 'graphite', 'blue', 'red', 'accent'])(
    '%s can be read on the sheet and on the bench (AA, 4.5 to 1)',
    (name) => {
      expect(contrast(of(name), of('paper'))).toBeGreaterThanOrEqual(4.5);
      expect(contrast(of(name), of('bench'))).toBeGreaterThanOrEqual(4.5);
    },
  );

  test.each(['ink', 'blue', 'red'])('%s can be read on a chalk wash', (name) => {
    expect(contrast(of(name), of('chalk'))).toBeGreaterThanOrEqual(4.5);
  });

  test('what stands on a pressed button can be read', () => {
    expect(contrast(of('on-accent'), of('accent'))).toBeGreaterThanOrEqual(4.5);
  });
});
