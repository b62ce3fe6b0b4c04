import type { VNode } from 'preact';
import type { Point } from '../../geometry/point.ts';
import { type Box, heightOf, widthOf } from './box.ts';
import type { Drawing } from './drawing.ts';
import { keyOf } from './key.ts';
import { figure } from './path-data.ts';

/** Marks and arrow heads: they keep their size in pixels however large the sheet is shown. */
export function Symbols({ drawing }: { readonly drawing: Drawing }): VNode {
  const { box } = drawing;
  return (
    <>
      {drawing.parts.map((part) => {
        if (part.kind === 'mark') return <Mark key={keyOf(part)} at={part.at} tone={part.tone} box={box} />;
        return part.kind === 'arrow' ? (
          <Head key={keyOf(part)} from={part.from} to={part.to} tone={part.tone} box={box} />
        ) : null;
      })}
    </>
  );
}

/** A cross made with two strokes of the pencil. */
export const CROSS = 'M-4.5-4.5 4.5 4.5M-4.5 4.5 4.5-4.5';

function Mark({ at, tone, box }: { readonly at: Point; readonly tone: string; readonly box: Box }): VNode {
  return (
    <svg class="symbol" aria-hidden="true" {...percent(at, box)}>
      <path class={`mark mark--${tone}`} d={CROSS} />
    </svg>
  );
}

function Head({
  from,
  to,
  tone,
  box,
}: {
  readonly from: Point;
  readonly to: Point;
  readonly tone: string;
  readonly box: Box;
}): VNode {
  const turn = (Math.atan2(from.y - to.y, to.x - from.x) * 180) / Math.PI;
  return (
    <svg class="symbol" aria-hidden="true" {...percent(to, box)}>
      <path class={`head head--${tone}`} transform={`rotate(${figure(turn)})`} d="M0 0-8-3.2-6.2 0-8 3.2Z" />
    </svg>
  );
}

/** A place of the box for an element laid over it. */
export function percent(p: Point, box: Box): { readonly x: string; readonly y: string } {
  return {
    x: `${figure(((p.x - box.min.x) / widthOf(box)) * 100)}%`,
    y: `${figure(((box.max.y - p.y) / heightOf(box)) * 100)}%`,
  };
}
