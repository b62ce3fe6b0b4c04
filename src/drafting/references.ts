import { putInExpression } from './expression/put-in.ts';
import { namesIn } from './expression.ts';
import { formOf, type HalfStep } from './form.ts';
import { isDirection } from './name.ts';
import { isRecord } from './record.ts';
import type { Name } from './step.ts';
import type { Blank } from './verbs.ts';

/** Calls `visit` with every name that stands in a step's blanks, object by object and expression by expression. */
export function eachName(step: HalfStep, visit: (name: Name) => void): void {
  for (const { field, blank } of formOf(step)?.fields ?? []) eachNameIn(blank, step[field], visit);
}

function eachNameIn(blank: Blank, value: unknown, visit: (name: Name) => void): void {
  if (isAmount(blank)) for (const name of typeof value === 'string' ? namesIn(value) : []) visit(name);
  else if (holdsNames(blank)) {
    for (const name of namesAmong(value)) if (!isWay(blank, name)) visit(name);
  }
}

/** The texts in a value, however deep: a name, a list of names, an object whose fields are names. */
function namesAmong(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(namesAmong);
  return isRecord(value) ? Object.values(value).flatMap(namesAmong) : [];
}

/** The step with one name put for another, wherever it stands in its blanks; its own name and target are left. */
export function renamed<S extends HalfStep>(step: S, from: Name, to: Name): S {
  const changed = (formOf(step)?.fields ?? [])
    .filter(({ field }) => step[field] !== undefined)
    .map(({ field, blank }) => [field, renamedIn(blank, step[field], from, to)] as const)
    .filter(([field, value]) => value !== step[field]);
  return changed.length === 0 ? step : { ...step, ...Object.fromEntries(changed) };
}

function renamedIn(blank: Blank, value: unknown, from: Name, to: Name): unknown {
  if (isAmount(blank)) return typeof value === 'string' ? putInExpression(value, from, to) : value;
  if (!holdsNames(blank)) return value;
  if (typeof value === 'string') return value === from && !isWay(blank, value) ? to : value;
  if (Array.isArray(value)) return value.map((one) => renamedIn(blank, one, from, to));
  if (!isRecord(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, renamedIn(blank, one, from, to)]));
}

const isAmount = (blank: Blank): boolean =>
  blank.takes === 'length' || blank.takes === 'angle' || blank.takes === 'number';

const holdsNames = (blank: Blank): boolean =>
  blank.takes !== 'turn' && blank.takes !== 'place' && blank.takes !== 'shape' && !isAmount(blank);

/** A direction word where a way may stand is no name. */
const isWay = (blank: Blank, value: string): boolean =>
  (blank.takes === 'toward' || blank.takes === 'near') && isDirection(value);
