import type { Step } from '../../src/drafting/step.ts';

const marks = Array.from({ length: 60 }, (_, i) => ({
  verb: 'pencil' as const,
  name: `p${i}`,
  at: [(i * 37) % 200, (i * 91) % 300] as const,
}));

const through = (step: number): readonly string[] => Array.from({ length: 99 }, (_, i) => `p${(i * step) % 60}`);

/** Two curves through a hundred points, crossed two hundred times and offset a hundred times: well formed, and hostile. */
export const greedySteps: readonly Step[] = [
  ...marks,
  { verb: 'curve', name: 'c0', through: through(7) },
  { verb: 'curve', name: 'c1', through: through(11) },
  ...Array.from(
    { length: 200 },
    (_, i): Step => ({ verb: 'cross', name: `x${i}`, one: 'c0', other: 'c1', near: [i, i] }),
  ),
  ...Array.from(
    { length: 100 },
    (_, i): Step => ({ verb: 'offset', name: `o${i}`, of: 'c0', distance: `${i + 1} mm`, side: 'left' }),
  ),
];
