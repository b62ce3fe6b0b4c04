import type { Line } from '../../geometry/line.ts';
import type { Point } from '../../geometry/point.ts';
import { mirrorLine, mirrorPath, mirrorPoint, turnLine, turnPath, turnPoint } from '../../geometry/transform.ts';
import { message } from '../../words/message.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { Drawn } from '../shape.ts';
import type { Given } from '../taken.ts';

/** Mirrored over a line, as the lapel turns back over the roll line. */
export function makeFold({ what, over }: Given<'fold'>): Outcome<Drawn> {
  return made(mirrored(what, over.line));
}

/** Turned about a pin by the angle whose arc at radius `at` is `by`. A negative `by` turns the other way. */
export function makeSwing({ what, about, by, at, turn }: Given<'swing'>): Outcome<Drawn> {
  // Is there a radius to measure at?
  if (!(at > 0)) return failed('at', message('problem.swing-radius', { at: { mm: at } }));
  return made(turned(what, about.point, (turn * by) / at));
}

/** Turned about a pin by an angle. */
export function makeSwingAngle({ what, about, angle, turn }: Given<'swing-angle'>): Outcome<Drawn> {
  return made(turned(what, about.point, turn * angle));
}

function mirrored(what: Drawn, over: Line): Drawn {
  switch (what.kind) {
    case 'point':
      return { kind: 'point', point: mirrorPoint(what.point, over) };
    case 'line':
      return { kind: 'line', line: mirrorLine(what.line, over) };
    case 'curve':
      return { kind: 'curve', path: mirrorPath(what.path, over) };
  }
}

function turned(what: Drawn, centre: Point, angle: number): Drawn {
  switch (what.kind) {
    case 'point':
      return { kind: 'point', point: turnPoint(what.point, centre, angle) };
    case 'line':
      return { kind: 'line', line: turnLine(what.line, centre, angle) };
    case 'curve':
      return { kind: 'curve', path: turnPath(what.path, centre, angle) };
  }
}
