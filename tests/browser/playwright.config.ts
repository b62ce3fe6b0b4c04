import { createServer } from 'node:net';
import path from 'node:path';
import { defineConfig } from '@playwright/test';
import { findChromium } from './chromium.ts';

const ROOT = path.resolve(import.meta.dirname, '../..');

// Taken once by the runner; its workers, which read this file again, inherit it.
process.env.SITE_PORT ??= String(await freePort());
const address = `http://127.0.0.1:${process.env.SITE_PORT}/`;
const chromium = findChromium();

/**
 * Tests run at the desktop unless they are tagged: `@phone` names the other project, `@desktop` beside it keeps the
 * desktop too. What has to be looked at in the dark turns dark where it stands (`axeColours`).
 */
export default defineConfig({
  testDir: '.',
  testMatch: '**/*.browser.ts',
  outputDir: path.join(ROOT, 'test-results/browser'),
  workers: 2,
  fullyParallel: true,
  forbidOnly: !!process.env.CI,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: process.env.PLAYWRIGHT_JSON_OUTPUT_FILE ? [['list'], ['json']] : 'list',
  use: {
    baseURL: address,
    locale: 'en-GB',
    screenshot: 'only-on-failure',
    launchOptions: {
      ...(chromium ? { executablePath: chromium } : {}),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--disable-quic',
      ],
    },
  },
  projects: [
    {
      name: 'desktop',
      grepInvert: /^(?!.*@desktop).*@phone/,
      use: { viewport: { width: 1280, height: 800 } },
    },
    {
      name: 'phone',
      grep: /@phone/,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 3 },
    },
  ],
  webServer: {
    command: `"${process.execPath}" "${path.join(import.meta.dirname, 'server.ts')}"`,
    url: address,
    cwd: ROOT,
  },
});

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
