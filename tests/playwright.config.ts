// The built site in real browsers: everything in Chromium, and the book's main ways in Firefox too, where there is one.
import { join } from 'node:path';
import { defineConfig } from '@playwright/test';
import { findChromium } from './chromium.ts';
import { findFirefox } from './firefox.ts';

process.env['SITE_TEST_RUN'] ??= String(process.pid); // the workers of one run share its folder
const firefox = findFirefox();
if (!firefox && process.env['TEST_WORKER_INDEX'] === undefined)
  console.log(
    'There is no Firefox here, so nothing is tested in it (on Debian: apt-get install firefox-esr).',
  );

export default defineConfig({
  testDir: './site',
  globalSetup: './while-tested.ts', // which says where the site is
  outputDir: `../node_modules/.cache/site-tests/${process.env['SITE_TEST_RUN']}`, // two runs may go on at once
  timeout: 90_000, // a chapter hydrates dozens of calculators, and the machine may be slow
  expect: { timeout: 15_000 },
  retries: process.env['CI'] ? 1 : 0, // a browser that did not start is tried once more; what fails twice has failed
  fullyParallel: true,
  workers: 2,
  reporter: 'list',
  forbidOnly: !!process.env['CI'],
  use: {
    baseURL: process.env['SITE'],
  },
  projects: [
    {
      name: 'chromium',
      use: {
        browserName: 'chromium',
        serviceWorkers: 'block', // a worker fetches the whole book in every new context; its own tests allow it
        launchOptions: {
          executablePath: findChromium(),
          args: [
            '--no-sandbox',
            '--disable-gpu',
            '--font-render-hinting=none', // letters as wide as on a phone's screen, in the headless shell too
            '--disable-quic',
            '--no-first-run',
            '--disable-background-networking',
            '--disable-component-update',
            '--disable-sync',
          ],
        },
      },
    },
    ...(firefox
      ? [
          {
            name: 'firefox',
            testMatch: /(figures-follow|kept-in-browser|search|sums)\.spec\.ts/,
            use: {
              baseURL: process.env['SITE_WITHOUT_POLICY'],
              browserName: 'firefox' as const,
              channel: 'moz-firefox',
              launchOptions: { executablePath: join(import.meta.dirname, 'firefox-bridge.ts') },
            },
          },
        ]
      : []),
  ],
});
