/**
 * The loopback shell: serves the window on 127.0.0.1 and, when it is given a browser, opens it and ends with it.
 *
 *     loopback.js [--port N] [--browser PROGRAM [--because REASON]] [--notice TEXT] [FILE]
 *
 * `STANDLINES_TOKEN` fixes the token for tests.
 */

import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { createHandlers, type WindowShell } from '../services/handlers.ts';
import { speakTo } from '../services/language.ts';
import { windowFolder } from '../services/program.ts';
import { startServices } from '../services/start-services.ts';
import { openBrowser } from './browser.ts';
import { startLoopback, type Loopback } from './server.ts';
import { whyBrowser } from './why-browser.ts';

/** A reload closes the page's connection for a moment. */
const RELOAD_MS = 4_000;
const HAND_OVER_MS = 15_000;
const LAST_SAVES_MS = 1_000;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    port: { type: 'string', default: '0' },
    browser: { type: 'string' },
    because: { type: 'string' },
    notice: { type: 'string' },
  },
});

const services = startServices();
const token = process.env['STANDLINES_TOKEN'];
delete process.env['STANDLINES_TOKEN'];

const shell: WindowShell = {
  shell: 'loopback',
  // Said when a page asks, for its language is not known before.
  get notice() {
    return values.notice ?? whyBrowser(values.browser, values.because);
  },
  open: positionals[0] === undefined ? null : resolve(positionals[0]),
  dialogs: null,
};

const loopback = await startLoopback({
  handlers: createHandlers(services, shell),
  windowFolder: windowFolder(),
  port: Number(values.port),
  ...(token ? { token } : {}),
  allPagesGone,
  report: (bug) => console.error(bug),
  speakTo: (preferred) => speakTo(services.fs, services.state, preferred),
});

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void end());

if (values.browser === undefined) console.log(`Standlines is at ${loopback.address}`);
else openWindow(values.browser, loopback);
// While the browser comes up.
const { locale } = Intl.DateTimeFormat().resolvedOptions();
void speakTo(services.fs, services.state, [locale]).then(() =>
  services.firstPictures.ahead({ ...shell, locale }),
);

function allPagesGone(): void {
  services.recovery.disown();
  if (values.browser !== undefined) endIfEmptyAfter(RELOAD_MS);
}

function endIfEmptyAfter(delay: number): void {
  setTimeout(() => {
    if (loopback.pages() === 0) void end();
  }, delay);
}

/** A browser that hands over to one that runs already ends at once, and its page comes a little later. */
function openWindow(browser: string, server: Loopback): void {
  const child = openBrowser(browser, server.entrance(), services.state);
  const serveInstead = () => {
    console.error(`${browser} did not start. Open this address in a browser: ${server.address}`);
  };
  child.on('error', serveInstead);
  child.on('exit', (code) => {
    if (code === 0) endIfEmptyAfter(HAND_OVER_MS);
    else if (server.pages() === 0) serveInstead();
  });
}

/** Lets saves under way finish. */
async function end(): Promise<void> {
  await Promise.race([services.files.idle(), new Promise((done) => setTimeout(done, LAST_SAVES_MS))]);
  await loopback.close();
  process.exit(0);
}
