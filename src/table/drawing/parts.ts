import type { Drawn } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import type { Line } from '../../geometry/line.ts';
import type { Point } from '../../geometry/point.ts';
import { type Box, clip } from './box.ts';
import type { Part, Tone } from './drawing.ts';
import { endsOf } from './spans.ts';

/** The part of an unbounded line that lies in the box; null when none does. */
export function lineAcross(line: Line, box: Box): readonly [Point, Point] | null {
  const span = clip(line, box);
  return span ? endsOf(line, span) : null;
}

/** A drawn shape as parts of one tone, lines from edge to edge: for a preview, or for "where it should be". */
export function shapeParts(shape: Drawn, tone: Tone, box: Box, name: Name | null = null): Part[] {
  if (shape.kind === 'point') return [{ kind: 'mark', name, tone, at: shape.point }];
  if (shape.kind === 'curve') return [{ kind: 'curve', name, tone, path: shape.path }];
  const ends = lineAcross(shape.line, box);
  return ends ? [{ kind: 'line', name, tone, from: ends[0], to: ends[1], faint: false }] : [];
}
