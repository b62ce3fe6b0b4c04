import { rmSync } from 'node:fs';
import path from 'node:path';
import { type Count, noCount, plus } from './run/count.ts';
import { isStage, RUN, runStage, STAGES, type Stage } from './run/stages.ts';

/**
 * The one test command. `node tests/run.ts` runs every stage in order; stage names run only those, and whatever follows
 * them is passed on to the last: `node tests/run.ts unit tests/geometry`.
 */
async function run(words: readonly string[]): Promise<number> {
  const firstOther = words.findIndex((word) => !isStage(word));
  const asked = (firstOther < 0 ? words : words.slice(0, firstOther)).filter(isStage);
  const rest = firstOther < 0 ? [] : words.slice(firstOther);
  const stages: readonly Stage[] = asked.length > 0 ? asked : STAGES;

  // A build of this run's own: `dist` may be open in a browser, and two runs may go at a time.
  if (stages.includes('build')) process.env.SITE_OUT ??= path.join(RUN, 'site');
  let total = noCount;
  const lines: string[] = [];
  for (const [index, stage] of stages.entries()) {
    console.log(`\n━━ ${stage} ${'━'.repeat(Math.max(0, 70 - stage.length))}\n`);
    const started = performance.now();
    const count = await runStage(stage, index === stages.length - 1 ? rest : []);
    total = plus(total, count);
    lines.push(summaryLine(stage, count, (performance.now() - started) / 1000));
    if (stage === 'build' && count.failed > 0) {
      lines.push('  The stages after the build were not run: there is no site to look at.');
      break;
    }
  }

  console.log(`\n━━ summary ${'━'.repeat(63)}\n\n${lines.join('\n')}\n`);
  console.log(closingLine(total));
  return total.failed === 0 && total.passed > 0 ? 0 : 1;
}

function summaryLine(stage: Stage, count: Count, seconds: number): string {
  const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : '';
  const sign = count.failed === 0 && count.passed > 0 ? '✓' : '✗';
  return `${sign} ${stage.padEnd(9)} ${count.passed} passed, ${count.failed} failed${skipped}  (${seconds.toFixed(1)} s)`;
}

function closingLine({ passed, failed, skipped }: Count): string {
  if (passed + failed === 0) return 'Nothing was run: no test has such a title. Look how the name after -t is spelt.';
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

process.on('exit', () => rmSync(RUN, { recursive: true, force: true }));
process.exitCode = await run(process.argv.slice(2));
