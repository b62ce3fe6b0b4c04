import { exercises } from './_exercises.ts';

/** Every exercise by name, for the desk: what it marks by comes with the site, and from nowhere else. */
export function GET(): Response {
  return Response.json(Object.fromEntries(exercises));
}
