import { writeFileSync } from 'node:fs';
import { exerciseSchema, handInSchema } from './file-schemas.ts';

/** Writes the schemas of exercise files and hand-ins afresh from their forms. */
const made = { exercise: exerciseSchema(), 'hand-in': handInSchema() };
for (const [name, schema] of Object.entries(made)) {
  writeFileSync(new URL(`../../docs/${name}.schema.json`, import.meta.url), `${JSON.stringify(schema, null, 2)}\n`);
}
