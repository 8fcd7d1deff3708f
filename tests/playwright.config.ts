// The built site in a real browser.
import { defineConfig } from '@playwright/test';
import { findChromium } from './chromium.ts';

const PORT = 4399;

export default defineConfig({
  testDir: './site',
  outputDir: '../node_modules/.cache/site-tests',
  fullyParallel: true,
  workers: 2,
  reporter: 'list',
  forbidOnly: !!process.env['CI'],
  use: {
    baseURL: `http://127.0.0.1:${PORT}`,
    browserName: 'chromium',
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
