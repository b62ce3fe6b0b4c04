import type { VNode } from 'preact';
import { type Box, heightOf, padded, widthOf } from './box.ts';
import type { Drawing, Part } from './drawing.ts';
import { keyOf } from './key.ts';
import { figure, pathData, runData } from './path-data.ts';

/** The paper and everything that scales with the sheet. */
export function Ink({
  drawing,
  id,
  spread,
}: {
  readonly drawing: Drawing;
  readonly id: string;
  readonly spread: number;
}): VNode {
  return (
    <>
      <Papers id={id} dots={drawing.dots} dot={drawing.dot ?? DOT} />
      <Paper box={padded(drawing.box, spread)} id={id} />
      {drawing.parts.map((part) => (
        <InkPart key={keyOf(part)} part={part} id={id} />
      ))}
    </>
  );
}

/** The radius of a dot of the paper, mm, and where it lies in its square. */
const DOT = 0.6;

interface PapersProps {
  readonly id: string;
  readonly dots: number;
  readonly dot: number;
}

/** The dots of the marking paper and the hatch of the cloth's other side. */
export function Papers({ id, dots, dot }: PapersProps): VNode {
  return (
    <defs>
      <pattern id={`${id}-dots`} width={dots} height={dots} patternUnits="userSpaceOnUse">
        <circle class="paper-dot" cx={DOT} cy={DOT} r={figure(dot)} />
      </pattern>
      <pattern id={`${id}-hatch`} width={4} height={4} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path class="cloth-hatch" d="M0 0V4" />
      </pattern>
    </defs>
  );
}

function Paper({ box, id }: { readonly box: Box; readonly id: string }): VNode {
  const place = {
    x: figure(box.min.x),
    y: figure(-box.max.y),
    width: figure(widthOf(box)),
    height: figure(heightOf(box)),
  };
  return (
    <>
      <rect class="paper" {...place} />
      <rect class="paper-dots" fill={`url(#${id}-dots)`} {...place} />
    </>
  );
}

/** A part that scales with the sheet; null for one that keeps its size. */
export function InkPart({ part, id }: { readonly part: Part; readonly id: string }): VNode | null {
  switch (part.kind) {
    case 'line':
      return (
        <path
          class={part.faint ? `ink ink--${part.tone} ink--faint` : `ink ink--${part.tone}`}
          d={runData(part.from, part.to)}
        />
      );
    case 'curve':
      return <path class={`ink ink--${part.tone}`} d={pathData(part.path)} />;
    case 'arrow':
      return <path class={`ink ink--${part.tone} ink--arrow`} d={runData(part.from, part.to)} />;
    case 'band':
      return <path class={`band band--${part.tone}`} d={bandData(part.path)} stroke-width={figure(part.half * 2)} />;
    case 'cloth':
      return <Cloth d={`${pathData(part.outline)}Z`} side={part.side} id={id} />;
    default:
      return null;
  }
}

function bandData(path: Extract<Part, { kind: 'band' }>['path']): string {
  const [first, second] = path;
  return first && 'x' in first && second && 'x' in second
    ? runData(first, second)
    : pathData(path as Parameters<typeof pathData>[0]);
}

function Cloth({ d, side, id }: { readonly d: string; readonly side: 'right' | 'other'; readonly id: string }): VNode {
  return (
    <>
      <path class={`cloth cloth--${side}`} d={d} />
      {side === 'other' ? <path class="cloth-lines" d={d} fill={`url(#${id}-hatch)`} /> : null}
    </>
  );
}
