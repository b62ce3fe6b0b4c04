import { buildSite, siteFolder } from './site.ts';

try {
  await buildSite();
  console.log(`The course is built: ${siteFolder()}`);
} catch (error) {
  // What an author of an exercise or a lesson can mend is all there is to say. The pages are built in modules of their own,
  // so the error is known by its name and not by its class.
  const { name, message } = error instanceof Error ? error : new Error(String(error));
  if (name !== 'CommandError' && name !== 'AuthoringError') throw error;
  console.error(message);
  process.exitCode = 1;
}
