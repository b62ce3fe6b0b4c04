import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';

/**
 * Runs the benchmarks, each in a process of its own: all of them, or those that are named. What else is said goes on to
 * them: `--long` for those that can take longer.
 */
const PARTS = ['engine', 'replay', 'grading', 'curves', 'cores', 'memory', 'frame'] as const;

const words = process.argv.slice(2);
const asked = words.filter((word) => !word.startsWith('-'));
const unknown = asked.find((word) => !(PARTS as readonly string[]).includes(word));
if (unknown !== undefined) {
  console.error(`There is no benchmark “${unknown}”. There are: ${PARTS.join(', ')}.`);
  process.exit(2);
}

for (const part of PARTS) {
  if (asked.length > 0 && !asked.includes(part)) continue;
  console.log(`\n━━ ${part} ${'━'.repeat(60 - part.length)}`);
  const file = path.join(import.meta.dirname, `${part}.ts`);
  const child = spawn(process.execPath, [file, ...words.filter((word) => word.startsWith('-'))], { stdio: 'inherit' });
  const [code] = await once(child, 'close');
  if (code !== 0) process.exitCode = 1;
}
