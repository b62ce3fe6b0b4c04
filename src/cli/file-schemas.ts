import { type ConversionConfig, toJsonSchema } from '@valibot/to-json-schema';
import type { GenericSchema } from 'valibot';
import { handInForm } from '../exchange/hand-in-form.ts';
import { markingForm } from '../exchange/marking-file/marking-form.ts';
import { setForm } from '../exchange/set-form.ts';
import { figureMeasures, measureRanges } from '../garment/figure.ts';
import { exerciseForm } from '../grader/authoring/form.ts';
import { wantedOf } from '../grader/reading/fields.ts';
import { en } from '../words/en/index.ts';
import type { Entry } from '../words/entry.ts';

export type JsonSchema = Readonly<Record<string, unknown>>;

/** The JSON Schema of exercise files, `docs/exercise.schema.json`. */
export function exerciseSchema(): JsonSchema {
  return schemaOf(exerciseForm, 'An exercise', 'What a schema cannot say, the reader checks. See exercises.md.');
}

/** The JSON Schema of hand-ins and saved drafts, `docs/hand-in.schema.json`. */
export function handInSchema(): JsonSchema {
  return schemaOf(
    handInForm,
    'A hand-in, or a saved draft',
    'What a schema cannot say, the reader checks. See files.md.',
  );
}

/** The JSON Schema of problem sets, `docs/set.schema.json`. */
export function setSchema(): JsonSchema {
  return schemaOf(setForm, 'A problem set', 'What a schema cannot say, the reader checks. See files.md.');
}

/** The JSON Schema of marking files, `docs/marking.schema.json`. */
export function markingSchema(): JsonSchema {
  return schemaOf(markingForm, 'A marking file', 'What a schema cannot say, the reader checks. See files.md.');
}

/** Parts of files that have a reader and a schema of their own. */
const elsewhere: Readonly<Record<string, string>> = {
  'wants.steps': 'drafting-language.schema.json',
  'wants.filed-hand-in': 'hand-in.schema.json',
  'wants.filed-set': 'set.schema.json',
};

const config: ConversionConfig = {
  target: 'draft-2020-12',
  errorMode: 'ignore',
  overrideSchema: ({ valibotSchema, jsonSchema }) => {
    const wanted = wantedOf(valibotSchema);
    const schema = wanted === null ? undefined : elsewhere[wanted];
    // What may be null wants what its inside wants, and is not itself elsewhere.
    const own = schema === undefined || valibotSchema.type === 'nullable' ? jsonSchema : { $ref: schema };
    if (wanted === 'wants.measures') return figureSchema();
    const described = wanted === null ? undefined : (en as Readonly<Record<string, Entry>>)[wanted]?.text;
    return described === undefined ? own : { description: described, ...own };
  },
};

/** The schema of a figure's measures, which have a reader of their own. */
function figureSchema() {
  const properties = figureMeasures.map((name) => {
    const { unit, least, most } = measureRanges[name];
    return [name, { description: unit, type: 'number' as const, minimum: least, maximum: most }] as const;
  });
  const required = figureMeasures.filter((name) => measureRanges[name].otherwise === null);
  return {
    description: 'the body’s measures by name',
    type: 'object' as const,
    properties: Object.fromEntries(properties),
    required,
    additionalProperties: false,
  };
}

function schemaOf(form: GenericSchema, title: string, description: string): JsonSchema {
  const { $schema, description: _wanted, ...rest } = toJsonSchema(form, config);
  return { $schema, title, description, ...rest };
}
