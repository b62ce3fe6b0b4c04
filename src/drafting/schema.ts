import { SEEN_PATTERN } from '../words/unseen.ts';
import {
  DRAFT_LENGTH,
  EXPRESSION_LENGTH,
  HANDLE_LEAST,
  HANDLE_REACH,
  LIST_LENGTH,
  NAME_LENGTH,
  SHEET_REACH,
} from './limits.ts';
import { directions, NAME_PATTERN, unitWords } from './name.ts';
import type { Blank, Form } from './verbs.ts';
import { forms } from './verbs.ts';

/** A JSON Schema, or a part of one. */
export type Schema = Readonly<Record<string, unknown>>;

/**
 * The JSON Schema (draft 2020-12) of a draft, made from the forms. It accepts what `readSteps` accepts, but for one
 * rule that JSON Schema cannot state: no two steps have the same name.
 */
export function draftSchema(): Schema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'The steps of a draft',
    description: 'No two steps have the same name. See drafting-language.md.',
    type: 'array',
    maxItems: DRAFT_LENGTH,
    items: { anyOf: forms.map((form) => ({ $ref: `#/$defs/${form.id}` })) },
    $defs: { ...shared, ...Object.fromEntries(forms.map((form) => [form.id, stepSchema(form)])) },
  };
}

const ref = (name: string): Schema => ({ $ref: `#/$defs/${name}` });

const record = (properties: Readonly<Record<string, Schema>>, optional: readonly string[] = []): Schema => ({
  type: 'object',
  properties,
  required: Object.keys(properties).filter((field) => !optional.includes(field)),
  additionalProperties: false,
});

const list = (items: Schema, least: number): Schema => ({
  type: 'array',
  items,
  minItems: least,
  maxItems: LIST_LENGTH,
});

/** What the forms have in common; none of these names is the id of a form. */
const shared: Readonly<Record<string, Schema>> = {
  object: {
    description: 'The name of an object or of a target.',
    type: 'string',
    pattern: NAME_PATTERN.source,
    maxLength: NAME_LENGTH,
  },
  'own-name': {
    description: 'The name of what the step makes.',
    $ref: '#/$defs/object',
    not: { enum: [...directions, ...unitWords] },
  },
  toward: { description: 'left, right, up, down or the name of a point.', $ref: '#/$defs/object' },
  expression: {
    description: 'An expression, such as 3.2 cm, 1 1/4 in or stand + 6 mm.',
    type: 'string',
    minLength: 1,
    maxLength: EXPRESSION_LENGTH,
    pattern: SEEN_PATTERN,
  },
  place: {
    description: 'Across and up from where the centre front crosses the waist, in mm.',
    type: 'array',
    items: { type: 'number', minimum: -SHEET_REACH, maximum: SHEET_REACH },
    minItems: 2,
    maxItems: 2,
  },
  heading: {
    description: 'The line to run along, or square to.',
    anyOf: [record({ along: ref('object') }), record({ square: ref('object') })],
  },
  passing: {
    description: 'A turn in radians, and handle lengths as fractions of the chords before and after.',
    ...record({
      turn: { type: 'number', minimum: -2 * Math.PI, maximum: 2 * Math.PI },
      before: { type: 'number', minimum: HANDLE_LEAST, maximum: HANDLE_REACH },
      after: { type: 'number', minimum: HANDLE_LEAST, maximum: HANDLE_REACH },
    }),
  },
  'part-of': {
    description: 'The part of a line or curve between two points on it.',
    ...record({ along: ref('object'), from: ref('object'), to: ref('object') }),
  },
};

function stepSchema(form: Form): Schema {
  const own = form.fields.map(({ field, blank }) => [field, blankSchema(blank)] as const);
  const optional = form.fields.filter((field) => field.optional).map(({ field }) => field);
  const head = { verb: { const: form.verb }, name: ref('own-name'), answers: ref('object') };
  return record({ ...head, ...Object.fromEntries(own) }, ['answers', ...optional]);
}

function blankSchema(blank: Blank): Schema {
  switch (blank.takes) {
    case 'objects':
      return list(ref('object'), blank.least);
    case 'run':
      return list({ anyOf: [ref('object'), ref('part-of')] }, 1);
    case 'length':
    case 'angle':
    case 'number':
      return ref('expression');
    case 'near':
      return { anyOf: [ref('toward'), ref('place')] };
    case 'turn':
      return { enum: ['clockwise', 'anticlockwise'] };
    case 'shape':
      return list({ anyOf: [{ type: 'null' }, ref('passing')] }, 0);
    default:
      return ref(blank.takes);
  }
}
