// The built site in a real browser.
import { defineConfig } from '@playwright/test';
import { findChromium } from './chromium.ts';

const PORT = 4399;

export default defineConfig({
  testDir: './site',
  outputDir: '../node_modules/.cache/site-tests',
  timeout: 90_000, // a chapter hydrates dozens of calculators, and the machine may be slow
  expect: { timeout: 15_000 },
  retries: process.env['CI'] ? 1 : 0, // a browser that did not start is tried once more; what fails twice has failed
  fullyParallel: true,
  workers: 2,
  reporter: 'list',
  forbidOnly: !!process.env['CI'],
  use: {
    baseURL: `http://127.0.0.1:${PORT}`,
    browserName: 'chromium',
    serviceWorkers: 'block', // a worker fetches the whole book in every new context; its own tests allow it
    launchOptions: {
      executablePath: findChromium(),
      args: [
        '--no-sandbox',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: `node tests/serve.ts ${PORT}`,
    cwd: '..',
    url: `http://127.0.0.1:${PORT}/`,
    reuseExistingServer: false,
  },
});
