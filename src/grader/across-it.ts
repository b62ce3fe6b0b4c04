import { angleFrom, type Line } from '../geometry/line.ts';
import { type Message, message, type Value } from '../words/message.ts';
import type { Check } from './exercise.ts';
import type { JudgedTarget } from './judge.ts';
import { lineNamed, type Named } from './measures/lookup.ts';

/** As near to square as this, radians, a line is said to be square: half a degree. */
const SQUARE = Math.PI / 360;

const level: Line = { through: { x: 0, y: 0 }, direction: { x: 1, y: 0 } };

/** What is said of an answer that cannot be read: of a line, that it runs across what it should run beside, and at what angle. */
export function acrossIt({ target, answer, right, reference }: JudgedTarget, check: Check): Message {
  const named: Value = { named: target.name };
  const beside = besideWhich(check, reference, right?.kind === 'line' ? right.line : null);
  const drawn = answer.found === 'right-kind' && answer.shape.kind === 'line' ? answer.shape.line : null;
  if (beside === null || drawn === null) return message('grader.unreadable', { target: named });
  const angle = { said: angleWords(Math.abs(angleFrom(beside, drawn))) };
  switch (check.measure) {
    case 'parallel':
      return message('grader.across', { target: named, from: { named: check.from }, angle });
    case 'level':
      return message('grader.upright', { target: named, angle });
    default:
      return message('grader.crosswise', { target: named, angle });
  }
}

/** The line that an answer should run beside; null where it is no line that is looked at. */
function besideWhich(check: Check, reference: Named, right: Line | null): Line | null {
  if (check.measure === 'parallel') return lineNamed(reference, check.from);
  if (check.measure === 'level') return level;
  return check.measure === 'line' ? right : null;
}

function angleWords(radians: number): Message {
  return Math.abs(radians - Math.PI / 2) < SQUARE
    ? message('grader.at-right-angles')
    : message('grader.at-angle', { angle: { radians } });
}
