import { expect, type Page, test } from '@playwright/test';
import { layoutShift } from './budget.ts';
import { watch } from './watch.ts';

interface Fault {
  readonly name: string;
  readonly commit: (page: Page) => Promise<unknown>;
  readonly told: RegExp;
}

/** What every browser test watches for, committed on purpose: the watch has to see each. */
const FAULTS: readonly Fault[] = [
  {
    name: 'a page of another site',
    commit: (page) => page.goto('https://elsewhere.example/').catch(() => null),
    told: /a request left the site: https:\/\/elsewhere/,
  },
  {
    name: 'a request to another site',
    commit: (page) => page.evaluate(() => fetch('https://elsewhere.example/').catch(() => null)),
    told: /policy connect-src breached by https:\/\/elsewhere/,
  },
  {
    name: 'an answer that is an error',
    commit: (page) => page.evaluate(() => fetch('/none').then(({ status }) => status)),
    told: /404 for .*\/none/,
  },
  {
    name: 'an error in the console',
    commit: (page) => page.evaluate(() => console.error('told')),
    told: /console: told/,
  },
  {
    name: 'an error thrown in the page',
    commit: (page) => page.evaluate(() => setTimeout(() => JSON.parse('{'))),
    told: /thrown: SyntaxError/,
  },
  {
    name: 'a promise refused in the page',
    commit: (page) => page.evaluate(() => setTimeout(() => Promise.reject(new Error('refused')))),
    told: /thrown: Error: refused/,
  },
  {
    name: 'a style attribute',
    commit: (page) => page.evaluate(() => document.body.setAttribute('style', 'color: red')),
    told: /policy style-src-attr breached/,
  },
  {
    name: 'a script written into the page',
    commit: (page) =>
      page.evaluate(() => {
        const script = document.createElement('script');
        script.textContent = 'window.name = "written"';
        document.head.append(script);
      }),
    told: /policy script-src-elem breached by inline/,
  },
  {
    name: 'code made from text',
    commit: (page) => page.evaluate(() => setTimeout(() => new Function('return 1')())),
    told: /policy script-src breached by eval/,
  },
];

for (const { name, commit, told } of FAULTS) {
  test(`the watch sees ${name}`, async ({ page, context, baseURL }) => {
    const faults = await watch(context, new URL(baseURL ?? '').hostname);
    await page.goto('/');
    expect(faults).toEqual([]);
    await commit(page);
    await expect.poll(() => faults.join('\n')).toMatch(told);
  });
}

test('what moves late is measured as a layout shift', async ({ page }) => {
  await page.goto('/');
  await page.evaluate(async () => {
    await new Promise((resolve) => setTimeout(resolve, 300));
    const late = document.createElement('div');
    late.append(...Array.from({ length: 12 }, () => document.createElement('br')));
    document.body.prepend(late);
  });
  expect(await layoutShift(page)).toBeGreaterThan(0);
});
