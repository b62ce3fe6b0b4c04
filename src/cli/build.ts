import { buildSite, siteFolder } from './site.ts';

await buildSite();
console.log(`The course is built: ${siteFolder()}`);
