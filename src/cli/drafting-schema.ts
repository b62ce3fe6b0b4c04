import { writeFileSync } from 'node:fs';
import { draftSchema } from '../drafting/schema.ts';

/** Writes `docs/drafting-language.schema.json` afresh from the forms of the language. */
const file = new URL('../../docs/drafting-language.schema.json', import.meta.url);
writeFileSync(file, `${JSON.stringify(draftSchema(), null, 2)}\n`);
