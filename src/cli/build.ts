import { buildSite, SITE } from './site.ts';

await buildSite();
console.log(`The course is built: ${SITE}`);
