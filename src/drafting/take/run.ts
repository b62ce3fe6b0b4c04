import { message } from '../../words/message.ts';
import { partOf } from '../make/part-of.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import { isRecord } from '../record.ts';
import type { Scope } from '../scope.ts';
import type { Name } from '../step.ts';
import type { RunPiece } from '../taken.ts';
import { takeObject } from './object.ts';
import { unreadable } from './unreadable.ts';

/** One entry of a seam's run: a point, a curve, or a part of a line or curve between two points on it. */
export function takeRunPiece(value: unknown, scope: Scope): Outcome<RunPiece> {
  if (typeof value === 'string') return takeWhole(value, scope);
  if (!isRecord(value)) return unreadable({ takes: 'run' });
  const { along: alongName, from: fromName, to: toName } = value;
  const along = takeObject(alongName, ['line', 'curve'], scope);
  if (!along.ok) return along;
  const from = takeObject(fromName, ['point'], scope);
  if (!from.ok) return from;
  const to = takeObject(toName, ['point'], scope);
  if (!to.ok) return to;
  const name = alongName as Name;
  const path = partOf(along.value, from.value.point, to.value.point);
  if (path === null) return failed(null, message('problem.part-empty', { along: { named: name } }));
  return made({ kind: 'path', name, path });
}

function takeWhole(name: Name, scope: Scope): Outcome<RunPiece> {
  const taken = takeObject(name, ['point', 'line', 'curve'], scope);
  if (!taken.ok) return taken;
  if (taken.value.kind === 'point') return made({ kind: 'point', name, point: taken.value.point });
  if (taken.value.kind === 'curve') return made({ kind: 'path', name, path: taken.value.path });
  return failed(null, message('problem.ends-join', { name: { named: name } }));
}
