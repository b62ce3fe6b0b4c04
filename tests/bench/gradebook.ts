import { chromium, type Page } from '@playwright/test';
import { loadExercise } from '../../src/cli/exercises.ts';
import { host } from '../../src/cli/host.ts';
import { siteFolder } from '../../src/cli/site.ts';
import type { ProblemSet } from '../../src/exchange/set.ts';
import { setOrder } from '../../src/exchange/set-order.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import { setMark, writeSet } from '../../src/exchange/write-set.ts';
import { ensureChromium, findChromium } from '../browser/chromium.ts';

/**
 * How the marking desk bears a large class: a thousand students (or as many as the first word says), four exercises each.
 * Prints how long it is until the gradebook is first seen and until all is marked, how long frames take while the table
 * is scrolled from end to end, and how long an arrow key takes until it is painted. Wants a built site (`npm run build`).
 */
const STUDENTS = Number(process.argv[2] ?? 1000);
const FRAMES = 300;

const set: ProblemSet = {
  title: 'A large class',
  note: '',
  exercises: ['overlap', 'break-point', 'roll-line', 'notch-level'].map((exercise) => ({ exercise, marks: 10 })),
  figures: { each: 'anyone' },
  seed: 'bench',
  strictness: 'workroom',
  house: {},
  feedback: 'place',
  checks: null,
  hints: true,
  due: null,
};

/** Every fifth piece lacks its last step, so that the class does not all earn the same. */
function handIns(): string {
  const exercises = set.exercises.map(({ exercise }) => loadExercise(exercise));
  const lines = Array.from({ length: STUDENTS }, (_, at) =>
    exercises.map((exercise, place) => {
      const who = { student: `Student ${at}`, number: String(at) };
      const { reference } = exercise;
      return JSON.stringify(
        handInJson({
          ...who,
          set: setMark(set),
          exercise: exercise.id,
          order: setOrder(set, exercise, who),
          strictness: 'workroom',
          unit: 'cm',
          steps: (at + place) % 5 === 0 ? reference.slice(0, -1) : reference,
          shown: [],
          hints: {},
          checks: 1,
          begun: null,
          saved: '2026-03-05T10:00:00.000Z',
        }),
      );
    }),
  );
  return lines.flat().join('\n');
}

/** The times between frames, ms, while the table is scrolled by steps from its top to its end. */
function scrolled(page: Page): Promise<readonly number[]> {
  return page.evaluate(async (frames) => {
    const frame = document.querySelector('.book-frame') as HTMLElement;
    const next = (): Promise<number> => new Promise((resolve) => requestAnimationFrame(resolve));
    const times: number[] = [];
    let before = await next();
    for (let at = 1; at <= frames; at++) {
      frame.scrollTop = ((frame.scrollHeight - frame.clientHeight) * at) / frames;
      const now = await next();
      times.push(now - before);
      before = now;
    }
    return times;
  }, FRAMES);
}

/** How long it is from an arrow key until the frame after it, ms. */
function walked(page: Page): Promise<readonly number[]> {
  return page.evaluate(async () => {
    const first =
      document.querySelector<HTMLElement>('.book [tabindex="0"]') ??
      document.querySelector<HTMLElement>('.book button');
    first?.focus();
    const times: number[] = [];
    for (let at = 0; at < 60; at++) {
      const begun = performance.now();
      document.activeElement?.dispatchEvent(
        new KeyboardEvent('keydown', { key: 'ArrowDown', bubbles: true, cancelable: true }),
      );
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
      times.push(performance.now() - begun);
    }
    return times;
  });
}

function part(times: readonly number[], share: number): string {
  const sorted = times.toSorted((a, b) => a - b);
  return (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN).toFixed(1);
}

ensureChromium();
const { server, address } = await host({ folder: siteFolder(), under: '/' }, 0);
const executable = findChromium();
const browser = await chromium.launch(executable === null ? {} : { executablePath: executable });
const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
await page.addInitScript(() => {
  const tasks: number[] = [];
  Object.assign(window, { tasks });
  new PerformanceObserver((list) => tasks.push(...list.getEntries().map(({ duration }) => duration))).observe({
    type: 'longtask',
  });
});
await page.goto(new URL('desk/mark/', address).href);
// The desk is on the page before it is awake.
await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0);
const file = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
const begun = performance.now();
await page
  .locator('.intray input[type=file]')
  .first()
  .setInputFiles([file('set.json', writeSet(set)), file('class.ndjson', handIns())]);
await page.locator('.book tbody tr').first().waitFor();
const first = performance.now() - begun;
await page.locator('.class-view').waitFor({ timeout: 600_000 });
const whole = performance.now() - begun;
await page.waitForTimeout(2000);
const tasks = await page.evaluate(() => (window as unknown as { readonly tasks: readonly number[] }).tasks);
await page.locator('.book-frame').scrollIntoViewIfNeeded();
// Time on the processor, which other work on the machine does not lengthen.
const session = await page.context().newCDPSession(page);
await session.send('Performance.enable', { timeDomain: 'threadTicks' });
const busy = async (): Promise<number> => {
  const { metrics } = await session.send('Performance.getMetrics');
  return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN) * 1000;
};
const idle = await busy();
const scroll = await scrolled(page);
const scrolledBusy = (await busy()) - idle;
const keys = await walked(page);
const walkedBusy = (await busy()) - idle - scrolledBusy;
const elements = await page.evaluate(() => document.querySelectorAll('.book *').length);
console.table({
  students: STUDENTS,
  exercises: set.exercises.length,
  'elements in the table': elements,
  'first line of the table, ms': Math.round(first),
  'all marked, ms': Math.round(whole),
  'longest task of the page meanwhile, ms': Math.round(Math.max(0, ...tasks)),
  'scroll frame, median, ms': part(scroll, 0.5),
  'scroll frame, 95 %, ms': part(scroll, 0.95),
  'scroll frame, longest, ms': part(scroll, 1),
  'processor a scroll frame, mean, ms': (scrolledBusy / scroll.length).toFixed(1),
  'arrow key to paint, median, ms': part(keys, 0.5),
  'arrow key to paint, longest, ms': part(keys, 1),
  'processor an arrow key, mean, ms': (walkedBusy / keys.length).toFixed(1),
});
await browser.close();
server.close();
