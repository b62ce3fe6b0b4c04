import { readFileSync } from 'node:fs';
import path from 'node:path';

const ROOT = path.resolve(import.meta.dirname, '../../..');

/**
 * The words after `node` with which `npm run grade` starts the command: what it tells Node of memory, and the script, absolute.
 * A bench that starts it otherwise would measure something that nobody runs.
 */
export function gradeWords(): readonly string[] {
  const { scripts } = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8'));
  const [node, ...words]: readonly string[] = scripts.grade.split(' ');
  if (node !== 'node') throw new Error(`"npm run grade" does not begin with node: ${scripts.grade}`);
  return words.map((word) => (word.startsWith('-') ? word : path.join(ROOT, word)));
}
