import fc from 'fast-check';
import { type Blank, type Form, forms } from '../../src/drafting/verbs.ts';
import { block } from './block.ts';

/** Names that are on the block, that other steps may make, and that nothing has. */
const given = [...block.shapes.keys(), ...block.measures.keys()];
const made = ['a', 'b', 'mark-1', 'mark-2', 'edge', 'roll', 'c-1', 'len', 'lean'];
export const anyName = fc.constantFrom(...given, ...made, ...made, 'left', 'nothing');

const amount = fc.constantFrom(
  'overlap',
  'stand + fall',
  'fall - stand',
  '-stand',
  '25 mm',
  '3.2 cm',
  '1 1/4 in',
  '¾ in',
  '0 mm',
  'len',
  'len / 2',
  '1000 m',
  '99999 mm',
  'shoulder-slope',
  'lean',
  'fall * lean',
  'fall / stand * 1 rad',
  '22.5 deg',
  '90°',
  '-400 deg',
  '1/3',
  '2',
  '-0.5',
  '',
  'stand +',
  'fall-stand',
  '1/0',
);
export const place = fc.tuple(
  fc.oneof(fc.integer({ min: -300, max: 600 }), fc.double({ min: -1e5, max: 1e5, noNaN: true })),
  fc.oneof(fc.integer({ min: -300, max: 600 }), fc.double({ min: -1e5, max: 1e5, noNaN: true })),
);
const direction = fc.constantFrom('left', 'right', 'up', 'down');
export const passing = fc.record({
  turn: fc.double({ min: -6, max: 6, noNaN: true }),
  before: fc.double({ min: 0.01, max: 10, noNaN: true }),
  after: fc.double({ min: 0.01, max: 10, noNaN: true }),
});

/** What fits in a blank by its form, whatever it names. */
export function filling(blank: Blank): fc.Arbitrary<unknown> {
  switch (blank.takes) {
    case 'object':
      return anyName;
    case 'objects':
      return fc.array(anyName, { minLength: blank.least, maxLength: 5 });
    case 'run':
      return fc.array(fc.oneof(anyName, fc.record({ along: anyName, from: anyName, to: anyName })), {
        minLength: 1,
        maxLength: 4,
      });
    case 'length':
    case 'angle':
    case 'number':
      return amount.filter((text) => text !== '');
    case 'toward':
      return fc.oneof(direction, anyName);
    case 'near':
      return fc.oneof(direction, anyName, place);
    case 'turn':
      return fc.constantFrom('clockwise', 'anticlockwise');
    case 'place':
      return place;
    case 'heading':
      return fc.oneof(fc.record({ along: anyName }), fc.record({ square: anyName }));
    case 'shape':
      return fc.array(fc.option(passing), { maxLength: 5 });
  }
}

/** A step of a form that fits by its form, whatever it names; `names` are what it may be called. */
export function stepOf(form: Form, names: fc.Arbitrary<unknown>): fc.Arbitrary<Record<string, unknown>> {
  const required = form.fields.filter((field) => !field.optional).map(({ field }) => field);
  return fc.record(
    {
      verb: fc.constant(form.verb),
      name: names,
      answers: fc.constantFrom('break-point', 'roll-line'),
      ...Object.fromEntries(form.fields.map(({ field, blank }) => [field, filling(blank)])),
    },
    { requiredKeys: ['verb', 'name', ...required] as 'verb'[], noNullPrototype: true },
  );
}

export const wellFormed = (
  names: fc.Arbitrary<unknown> = fc.constantFrom(...made),
): fc.Arbitrary<Record<string, unknown>> => fc.constantFrom(...forms).chain((form) => stepOf(form, names));

/** A draft of well-formed steps, no two of one name. */
export const drafts = (maxLength: number): fc.Arbitrary<Record<string, unknown>[]> =>
  fc.uniqueArray(wellFormed(), { maxLength, selector: (step) => step.name });

/** A step with something wrong: a field left out, put in, renamed or filled with anything at all. */
export const spoilt: fc.Arbitrary<unknown> = fc
  .tuple(
    wellFormed(),
    fc.constantFrom(
      'verb',
      'name',
      'answers',
      'on',
      'to',
      'from',
      'distance',
      'near',
      'through',
      'run',
      'shape',
      'at',
      'odd',
      '__proto__',
    ),
    fc.oneof(fc.constant(undefined), fc.jsonValue(), amount, fc.constantFrom(0, -1, '', null, [], {}, [1, 2], ['a'])),
  )
  .map(([step, field, value]) => {
    const { [field]: _, ...rest } = step;
    return value === undefined ? rest : { ...rest, [field]: value };
  });
