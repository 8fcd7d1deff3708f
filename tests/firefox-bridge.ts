#!/usr/bin/env node
// Starts Firefox for Playwright and stands between them: Debian's Firefox does not know some commands of WebDriver BiDi that Playwright sends to every page.
import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { WebSocket, WebSocketServer } from 'ws';
import { findFirefox } from './firefox.ts';

const UNKNOWN = 'unknown command'; // an error by the standard's name; tests that need dark colours, print or downloads run in Chromium
const LISTENS = 'WebDriver BiDi listening on ';

const firefox = spawn(findFirefox()!, process.argv.slice(2), { stdio: ['ignore', 'inherit', 'pipe'] });
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => firefox.kill(signal));
firefox.on('exit', (code) => process.exit(code ?? 0));

/** What Playwright is told: a command that this Firefox does not know does nothing. */
function answer(text: string): string {
  if (!text.includes(UNKNOWN)) return text;
  const { type, id, error } = JSON.parse(text) as { type: string; id: number; error?: string };
  return type === 'error' && error === UNKNOWN ? JSON.stringify({ type: 'success', id, result: {} }) : text;
}

/** Passes every message on. */
function bridge(playwright: WebSocket, address: string): void {
  const browser = new WebSocket(address);
  const opened = new Promise((resolve) => browser.once('open', resolve));
  playwright.on('message', (data) => void opened.then(() => browser.send(String(data))));
  browser.on('message', (data) => playwright.send(answer(String(data))));
  browser.on('close', () => playwright.close());
  browser.on('error', () => playwright.close());
  playwright.on('close', () => browser.close());
}

createInterface({ input: firefox.stderr }).on('line', (line) => {
  if (!line.startsWith(LISTENS)) return void process.stderr.write(`${line}\n`);
  const address = line.slice(LISTENS.length);
  const server = new WebSocketServer({ host: '127.0.0.1', port: 0 }, () => {
    const { port } = server.address() as { port: number };
    process.stderr.write(`${LISTENS}ws://127.0.0.1:${port}\n`);
  });
  server.on('connection', (playwright, { url }) => bridge(playwright, address + (url === '/' ? '' : url)));
});
