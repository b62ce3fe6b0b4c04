import { evaluate } from '../../drafting/expression.ts';
import { isReserved } from '../../drafting/name.ts';
import type { Quantity } from '../../drafting/quantity.ts';
import { blockOf } from '../../garment/block.ts';
import { figureMeasures } from '../../garment/figure.ts';
import { houseMeasures } from '../../garment/house.ts';
import { houseRules } from '../../garment/house-rules.ts';
import { people } from '../../garment/people.ts';
import { sampleFigure } from '../../garment/sample.ts';
import { readStyle } from '../../garment/style.ts';
import { styleMeasureNamed } from '../../garment/style-measures.ts';
import { message } from '../../words/message.ts';
import type { Exercise, StyleGiven } from '../exercise.ts';
import { ownMeasures } from '../own-measures.ts';
import type { Fault } from '../reading/fault.ts';
import { unknownName } from '../reading/unknown.ts';
import { readings } from './text-faults.ts';

/** What keeps the exercise's own order from being laid on the table: its figure, its style and its house rules. */
export function orderFaults(exercise: Exercise): readonly Fault[] {
  const style = Object.entries(exercise.style).flatMap(([name, given]) => [
    ...nameFaults(name, given),
    ...styleFaults(name, given),
  ]);
  const house = style.length === 0 ? houseFaults(exercise) : [];
  return [...figureFaults(exercise), ...style, ...house, ...appliesFaults(exercise)];
}

function figureFaults({ figure }: Exercise): readonly Fault[] {
  if ('sampled' in figure) return [];
  const known = people.map(({ id }) => id);
  if (known.includes(figure.named)) return [];
  return [{ at: ['figure', 'named'], message: unknownName('what.person', figure.named, known) }];
}

const ends = ['value', 'from', 'to'] as const;

/** A measure of the course that is explained anew, or one of the exercise's own whose name means something already. */
function nameFaults(name: string, { about }: StyleGiven): readonly Fault[] {
  if (about === undefined) return [];
  if (styleMeasureNamed(name) !== null) {
    return [{ at: ['style', name, 'about'], message: message('author.style-about', { name }) }];
  }
  return isTaken(name) ? [{ at: ['style', name], message: message('author.style-taken', { name }) }] : [];
}

/** Whether a name is a word of the language, or of a measure, an object of the block, or a reading that texts may use. */
function isTaken(name: string): boolean {
  const body: readonly string[] = figureMeasures;
  return (
    isReserved(name) ||
    readings.includes(name) ||
    body.includes(name) ||
    houseRules.some(({ makes }) => makes === name) ||
    blockNames().includes(name)
  );
}

function blockNames(): readonly string[] {
  const block = blockOf(sampleFigure('author', 'anyone'));
  return block.ok ? [...block.shapes.keys()] : [];
}

function styleFaults(name: string, given: StyleGiven): readonly Fault[] {
  const own = ownMeasures({ style: { [name]: given } });
  const read = ends.map((end) => ({ end, reading: readStyle({ [name]: given[end] }, own) }));
  const faults = read.flatMap(({ end, reading }) =>
    reading.ok ? [] : reading.errors.map((error) => ({ at: ['style', name, end], message: error.message })),
  );
  // A measure that does not exist is said once, of the measure.
  if (faults.length === ends.length && own.length === 0 && styleMeasureNamed(name) === null) {
    return faults.slice(0, 1).map((fault) => ({
      at: ['style', name],
      message: message('author.style-new', { why: { said: fault.message } }),
    }));
  }
  if (faults.length === ends.length) return faults.slice(0, 1).map((fault) => ({ ...fault, at: ['style', name] }));
  return faults.length > 0 ? faults : rangeFaults(name, given);
}

function rangeFaults(name: string, given: StyleGiven): readonly Fault[] {
  const [value = 0, from = 0, to = 0] = ends.map((end) => {
    const worked = evaluate(given[end], new Map());
    return worked.ok ? worked.quantity.value : Number.NaN;
  });
  if (from === to && from === value) return [{ at: ['style', name], message: message('author.style-room') }];
  if (from <= value && value <= to) return [];
  const said = message('author.style-order', { from: { mm: from }, value: { mm: value }, to: { mm: to } });
  return [{ at: ['style', name], message: said }];
}

function houseFaults(exercise: Exercise): readonly Fault[] {
  const stated = Object.entries(exercise.style).map(([name, { value }]) => [name, value]);
  const style = readStyle(Object.fromEntries(stated), ownMeasures(exercise));
  const measures: ReadonlyMap<string, Quantity> = style.ok ? style.style : new Map();
  return Object.entries(exercise.house).flatMap(([rule, choice]) => {
    const made = houseMeasures({ [rule]: choice }, measures);
    return made.ok ? [] : [{ at: ['house', rule], message: made.message }];
  });
}

/** Rules that the learner is to apply have to be in force. */
function appliesFaults({ house, applies = [] }: Exercise): readonly Fault[] {
  const known = Object.keys(house);
  return applies.flatMap((rule, index) =>
    known.includes(rule) ? [] : [{ at: ['applies', index], message: unknownName('what.rule-in-force', rule, known) }],
  );
}
