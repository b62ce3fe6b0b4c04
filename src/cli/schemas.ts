import { writeFileSync } from 'node:fs';
import { exerciseSchema, handInSchema, markingSchema, setSchema } from './file-schemas.ts';

/** Writes the schemas of exercise files, hand-ins, problem sets and marking files afresh from their forms. */
const made = { exercise: exerciseSchema(), 'hand-in': handInSchema(), set: setSchema(), marking: markingSchema() };
for (const [name, schema] of Object.entries(made)) {
  writeFileSync(new URL(`../../docs/${name}.schema.json`, import.meta.url), `${JSON.stringify(schema, null, 2)}\n`);
}
