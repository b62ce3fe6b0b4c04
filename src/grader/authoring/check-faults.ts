import { evaluate } from '../../drafting/expression.ts';
import type { Quantity } from '../../drafting/quantity.ts';
import type { ShapeKind } from '../../drafting/shape.ts';
import type { Givens, Sheet } from '../../drafting/sheet.ts';
import { message, type Value } from '../../words/message.ts';
import type { Check, Exercise, MeasureName } from '../exercise.ts';
import type { Fault, Place } from '../reading/fault.ts';
import { unknownName } from '../reading/unknown.ts';
import { unitOf } from '../unit.ts';
import { eitherKind } from './kind.ts';
import { objectFaults } from './object-faults.ts';

/** What each measure can read. */
const reads: Readonly<Record<MeasureName, readonly ShapeKind[]>> = {
  position: ['point'],
  distance: ['point'],
  line: ['line'],
  squareness: ['line', 'curve'],
  parallel: ['line'],
  length: ['curve', 'length'],
  walk: ['curve'],
  through: ['curve'],
  level: ['point', 'line'],
  bow: ['curve'],
  shape: ['curve'],
  smoothness: ['curve'],
  inflection: ['curve'],
  bend: ['curve'],
  angle: ['angle'],
};

const point: readonly ShapeKind[] = ['point'];
const line: readonly ShapeKind[] = ['line'];
const seam: readonly ShapeKind[] = ['curve', 'length'];

interface Named {
  readonly field: Place;
  readonly name: string;
  readonly kinds: readonly ShapeKind[];
}

/** Checks of targets that are not there, of kinds that cannot be so measured, against objects that are not there, or with ranges that make no sense. */
export function checkFaults(exercise: Exercise, givens: Givens, reference: Sheet): readonly Fault[] {
  return exercise.checks.flatMap((check, index) => {
    const at = ['checks', index];
    const target = exercise.targets.find(({ name }) => name === check.target);
    if (target === undefined) {
      const known = exercise.targets.map(({ name }) => name);
      return [{ at: [...at, 'target'], message: unknownName('what.target', check.target, known) }];
    }
    return [
      ...kindFaults(check, target.makes, at),
      ...objectsOf(check).flatMap(({ field, ...named }) =>
        objectFaults({ at: [...at, ...field], ...named }, reference),
      ),
      ...rangeFaults(check, givens.measures, at),
    ];
  });
}

function kindFaults(check: Check, makes: ShapeKind, at: Place): readonly Fault[] {
  const readable = reads[check.measure];
  if (readable.includes(makes)) return [];
  const kinds = { said: eitherKind(readable) };
  const values = { measure: check.measure, kinds, name: check.target, found: { said: eitherKind([makes]) } };
  return [{ at: [...at, 'measure'], message: message('author.check-kind', values) }];
}

function objectsOf(check: Check): readonly Named[] {
  switch (check.measure) {
    case 'distance':
      return [{ field: ['from'], name: check.from, kinds: ['point', 'line'] }];
    case 'line':
      return check.between.map((name, end) => ({ field: ['between', end], name, kinds: point }));
    case 'squareness':
      return [{ field: ['to'], name: check.to, kinds: line }];
    case 'parallel':
      return [
        { field: ['from'], name: check.from, kinds: line },
        ...(typeof check.at === 'string'
          ? [{ field: ['at'], name: check.at, kinds: point }]
          : check.at.map((name, end) => ({ field: ['at', end], name, kinds: point }))),
      ];
    case 'walk':
      return [
        ...check.against.map((name, position) => ({ field: ['against', position], name, kinds: seam })),
        ...(check.between ?? [])
          .map((name, end) => ({ field: ['between', end], name, kinds: point }))
          .filter(({ name }) => name !== 'start' && name !== 'end'),
      ];
    case 'through':
      return [{ field: ['point'], name: check.point, kinds: point }];
    case 'smoothness':
      return (check.corners ?? []).map((name, position) => ({ field: ['corners', position], name, kinds: point }));
    default:
      return [];
  }
}

const bounds = ['least', 'most'] as const;

function rangeFaults(check: Check, known: ReadonlyMap<string, Quantity>, at: Place): readonly Fault[] {
  const given = bounds.filter((bound) => check[bound] !== undefined);
  const [first] = given;
  if (first === undefined) return [];
  const isAngle = unitOf(check.measure) === 'deg';
  // How sharply a curve may turn is a range of its own; another angle is wanted as it is.
  if (isAngle && check.measure !== 'bend') return [{ at: [...at, first], message: message('author.range-angle') }];
  const read = given.map((bound) => ({ bound, ...amountOf(check[bound] ?? '', known, isAngle ? 'angle' : 'length') }));
  const faults = read.flatMap(({ bound, fault }) => (fault === null ? [] : [{ at: [...at, bound], message: fault }]));
  const [least, most] = read.map(({ value }) => value);
  if (faults.length > 0 || least === undefined || most === undefined || least <= most) return faults;
  const shown = (value: number): Value => (isAngle ? { radians: value } : { mm: value });
  const said = message('author.range-order', { least: shown(least), most: shown(most) });
  return [{ at: [...at, 'least'], message: said }];
}

function amountOf(text: string, known: ReadonlyMap<string, Quantity>, wanted: 'length' | 'angle') {
  const worked = evaluate(text, known);
  const isLength = wanted === 'length';
  if (!worked.ok) {
    const key = isLength ? 'author.length' : 'author.angle';
    return { value: 0, fault: message(key, { text, why: { said: worked.message } }) };
  }
  const { dimension, value } = worked.quantity;
  const key = isLength ? 'author.not-a-length' : 'author.not-an-angle';
  return { value, fault: dimension === wanted ? null : message(key, { text }) };
}
