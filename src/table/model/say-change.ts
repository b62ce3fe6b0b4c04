import { namesUsedBy } from '../../drafting/dependencies.ts';
import type { Shape } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name, Step } from '../../drafting/step.ts';
import { signedDistance } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import type { Point } from '../../geometry/point.ts';
import { distance } from '../../geometry/point.ts';
import { type Message, message } from '../../words/message.ts';

/** Near enough, mm, to say that a mark lies on something. For the ear only. */
const ON = 0.05;

/** What a step made, for those who hear it. */
export function sayMade(step: Step, sheet: Sheet): Message {
  const shape = sheet.shapes.get(step.name);
  const name = { named: step.name };
  if (!shape) return message('table.made', { name });
  if (shape.kind === 'length') return message('table.made-length', { name, length: { mm: shape.length } });
  if (shape.kind === 'angle') return message('table.made-angle', { name, angle: { radians: shape.angle } });
  const near = { ...sheet, shapes: saidBeside(step, sheet) };
  if (shape.kind === 'point')
    return message('table.made-mark', { name, where: { said: sayWhere(step.name, shape.point, near) } });
  const through = marksOn(shape, near);
  return through.length > 0
    ? message('table.made-through', { name, marks: { namedAll: through } })
    : message('table.made', { name });
}

/** What a made object may be said to lie on: what its sentence names, in its order; a mark by eye names nothing, and may lie on anything. */
function saidBeside(step: Step, { shapes }: Sheet): Sheet['shapes'] {
  if (step.verb === 'pencil') return shapes;
  return new Map(
    namesUsedBy(step).flatMap((name): [Name, Shape][] => {
      const shape = shapes.get(name);
      return shape ? [[name, shape]] : [];
    }),
  );
}

/** Where something was moved to. */
export function sayMoved(name: Name, sheet: Sheet): Message {
  const shape = sheet.shapes.get(name);
  if (shape?.kind !== 'point') return message('table.bent', { name: { named: name } });
  return message('table.moved', { name: { named: name }, where: { said: sayWhere(name, shape.point, sheet) } });
}

/** What a mark lies on, and how far it is from the origin, where the centre front crosses the waist. */
export function sayWhere(name: Name, at: Point, sheet: Sheet): Message {
  const on = [...sheet.shapes].filter(([other, shape]) => other !== name && liesOn(at, shape)).map(([other]) => other);
  const height = { mm: Math.abs(at.y) };
  const aside = { mm: Math.abs(at.x) };
  const place = message('table.place', {
    height,
    level: Math.abs(at.y) < ON ? 'on' : at.y < 0 ? 'below' : 'above',
    aside,
    side: Math.abs(at.x) < ON ? 'on' : at.x < 0 ? 'left' : 'right',
  });
  return on.length === 0 ? place : message('table.place-on', { on: { namedAll: on }, place: { said: place } });
}

function liesOn(at: Point, shape: Shape): boolean {
  if (shape.kind === 'line') return Math.abs(signedDistance(shape.line, at)) < ON;
  if (shape.kind === 'point') return distance(at, shape.point) < ON;
  return shape.kind === 'curve' && nearestOn(shape.path, at).distance < ON;
}

function marksOn(shape: Shape, sheet: Sheet): Name[] {
  return [...sheet.shapes]
    .filter(([, other]) => other.kind === 'point' && liesOn(other.point, shape))
    .map(([name]) => name);
}
