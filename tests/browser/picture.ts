import path from 'node:path';
import { chromium } from '@playwright/test';
import { host } from '../../src/cli/host.ts';
import { ROOT, siteFolder } from '../../src/cli/site.ts';
import type { Step } from '../../src/drafting/step.ts';
import { writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { findChromium } from './chromium.ts';

/** Takes the README's picture of the built site: a roll line ruled through the neck point, marked. `node tests/browser/picture.ts` */
const steps: readonly Step[] = [
  { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left', answers: 'overlap-edge' },
  { verb: 'parallel', name: 'level', to: 'waist', distance: 'break-rise', side: 'up' },
  { verb: 'cross', name: 'break', one: 'edge', other: 'level', answers: 'break-point' },
  {
    verb: 'along',
    name: 'past-neck',
    on: 'shoulder-line',
    from: 'neck-point',
    distance: 'stand-by-rule',
    toward: 'left',
    answers: 'stand-point',
  },
  { verb: 'rule', name: 'roll', from: 'break', to: 'neck-point', answers: 'roll-line' },
];
const draft = writeHandIn({
  student: '',
  number: '',
  set: null,
  exercise: 'roll-line',
  order: { figure: { named: 'amara' }, style: {}, house: {} },
  strictness: 'workroom',
  unit: 'cm',
  steps,
  shown: [],
  hints: {},
  checks: 0,
  begun: null,
  saved: null,
});

const { server, address } = await host({ folder: siteFolder(), under: '/' }, 0);
const executablePath = findChromium();
const browser = await chromium.launch({ args: ['--no-sandbox'], ...(executablePath ? { executablePath } : {}) });
const page = await browser.newPage({ viewport: { width: 1280, height: 1180 }, deviceScaleFactor: 1.25 });
await page.goto(`${address}exercises/roll-line/`, { waitUntil: 'networkidle' });
await page
  .locator('input[type=file]')
  .setInputFiles({ name: 'draft.json', mimeType: 'application/json', buffer: Buffer.from(draft) });
await page.getByRole('button', { name: 'Check the draft' }).click();
await page.evaluate(() => window.scrollTo({ top: 0, behavior: 'instant' }));
await page.waitForTimeout(500);
await page.screenshot({ path: path.join(ROOT, 'docs/table.png') });
await browser.close();
server.close();
