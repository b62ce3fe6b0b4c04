import type { VNode } from 'preact';
import { ABOUT } from './papers.ts';

/** How long the scales are, mm, and into how many parts they are divided: 10 cm, or 4 in. */
export const SCALE = { cm: { long: 100, parts: 10 }, in: { long: 101.6, parts: 4 } } as const;

interface ScalesProps {
  readonly frame: { readonly width: number; readonly height: number };
  readonly unit: 'cm' | 'in';
  readonly says: string;
  readonly measure: string;
}

/** From the frame, mm: to a scale, from a scale to the end of its ticks, and to the line of words. */
const OFF = 3;
const TICK = 2;
const LINE = 12;

/** A scale along and one across, since a printer may stretch one way only, and what the sheet is. */
export function Scales({ frame, unit, says, measure }: ScalesProps): VNode {
  const { long, parts } = SCALE[unit];
  const under = ABOUT.top + frame.height + OFF;
  const beside = ABOUT.left - OFF;
  const stations = Array.from({ length: parts + 1 }, (_, i) => (i * long) / parts);
  const across = stations.map((at) => `M${ABOUT.left + at} ${under}v${TICK}`).join('');
  const along = stations.map((at) => `M${beside} ${ABOUT.top + at}h${-TICK}`).join('');
  return (
    <>
      <path class="paper-scale" d={`M${ABOUT.left} ${under}h${long}${across}M${beside} ${ABOUT.top}v${long}${along}`} />
      <text class="paper-words" x={ABOUT.left + long + OFF} y={under + TICK}>
        {measure}
      </text>
      <text class="paper-words" x={ABOUT.left} y={ABOUT.top + frame.height + LINE}>
        {says}
      </text>
    </>
  );
}
