import type { Input } from '../input.ts';
import { LIST_LENGTH } from '../limits.ts';
import { partOf } from '../make/part-of.ts';
import { isDirection } from '../name.ts';
import { isRecord } from '../record.ts';
import type { Scope } from '../scope.ts';
import type { Shape, ShapeKind } from '../shape.ts';
import type { Name } from '../step.ts';
import { take } from '../take/take.ts';
import type { Aim, Course, RunPiece } from '../taken.ts';
import type { Blank } from '../verbs.ts';
import { amountTaker } from './amount.ts';
import type { Taker } from './takes.ts';

/**
 * What takes a blank as `take` does, its names looked up by their numbers in `uses`; null where it can never be taken. What
 * stands there is looked at once, and not each time it is taken.
 */
export function takerOf(blank: Blank, value: unknown, uses: readonly Name[]): Taker | null {
  switch (blank.takes) {
    case 'object':
      return objectTaker(value, blank.kinds, uses);
    case 'objects':
      return listTaker(value, blank.least, (one) => objectTaker(one, blank.kinds, uses));
    case 'run':
      return listTaker(value, 1, (one) => runTaker(one, uses));
    case 'length':
    case 'angle':
    case 'number':
      return typeof value === 'string' ? amountTaker(value, blank.takes, uses) : null;
    case 'toward':
      return aimTaker(value, uses) ?? null;
    case 'near':
      return Array.isArray(value) ? constantTaker(blank, value) : aimTaker(value, uses);
    case 'heading':
      return headingTaker(value, uses);
    default:
      return constantTaker(blank, value);
  }
}

const nothing: Scope = { shapes: new Map(), measures: new Map(), absent: () => null };

/** For what names nothing: taken once and for all. */
function constantTaker(blank: Blank, value: unknown): Taker | null {
  const taken = take(blank, value, nothing);
  return taken.ok ? () => taken.value : null;
}

type Getter<K extends ShapeKind> = (inputs: readonly Input[]) => Extract<Shape, { kind: K }> | undefined;

function objectTaker<K extends ShapeKind>(
  value: unknown,
  kinds: readonly K[],
  uses: readonly Name[],
): Getter<K> | null {
  const at = typeof value === 'string' ? uses.indexOf(value) : -1;
  if (at < 0) return null;
  return (inputs) => {
    const input = inputs[at] as Shape | undefined;
    // What is a measure and no object has no kind.
    return (kinds as readonly ShapeKind[]).includes(input?.kind as ShapeKind)
      ? (input as Extract<Shape, { kind: K }>)
      : undefined;
  };
}

function listTaker(value: unknown, least: number, takerFor: (one: unknown) => Taker | null): Taker | null {
  if (!Array.isArray(value) || value.length < least || value.length > LIST_LENGTH) return null;
  const takers: Taker[] = [];
  for (const one of value) {
    const taker = takerFor(one);
    if (taker === null) return null;
    takers.push(taker);
  }
  return (inputs) => {
    const taken: unknown[] = [];
    for (const taker of takers) {
      const one = taker(inputs);
      if (one === undefined) return undefined;
      taken.push(one);
    }
    return taken;
  };
}

function runTaker(value: unknown, uses: readonly Name[]): Taker | null {
  if (typeof value === 'string') return wholeTaker(value, uses);
  if (!isRecord(value)) return null;
  const along = objectTaker(value['along'], ['line', 'curve'], uses);
  const from = objectTaker(value['from'], ['point'], uses);
  const to = objectTaker(value['to'], ['point'], uses);
  if (along === null || from === null || to === null) return null;
  const name = value['along'] as Name;
  return (inputs): RunPiece | undefined => {
    const [what, start, end] = [along(inputs), from(inputs), to(inputs)];
    if (what === undefined || start === undefined || end === undefined) return undefined;
    const path = partOf(what, start.point, end.point);
    return path === null ? undefined : { kind: 'path', name, path };
  };
}

function wholeTaker(name: Name, uses: readonly Name[]): Taker | null {
  const whole = objectTaker(name, ['point', 'curve'], uses);
  if (whole === null) return null;
  return (inputs): RunPiece | undefined => {
    const taken = whole(inputs);
    if (taken === undefined) return undefined;
    return taken.kind === 'point'
      ? { kind: 'point', name, point: taken.point }
      : { kind: 'path', name, path: taken.path };
  };
}

function aimTaker(value: unknown, uses: readonly Name[]): Taker | null {
  if (isDirection(value)) return constantTaker({ takes: 'toward' }, value);
  const mark = objectTaker(value, ['point'], uses);
  if (mark === null) return null;
  return (inputs): Aim | undefined => {
    const taken = mark(inputs);
    return taken && { kind: 'point', name: value as Name, point: taken.point };
  };
}

function headingTaker(value: unknown, uses: readonly Name[]): Taker | null {
  if (!isRecord(value)) return null;
  const kind = value['along'] === undefined ? 'square' : 'along';
  // Both at once is no heading.
  if (kind === 'along' && value['square'] !== undefined) return null;
  const along = objectTaker(value[kind], ['line'], uses);
  if (along === null) return null;
  return (inputs): Course | undefined => {
    const taken = along(inputs);
    return taken && { kind, line: taken.line };
  };
}
