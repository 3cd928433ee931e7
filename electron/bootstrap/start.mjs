/**
 * `npm start [-- [--no-open] [--port N] [--shell electron|loopback] [FILE]]`: opens the editor, whatever the machine
 * has: Electron's own window, else the same window in an installed Chromium, else an address to open by hand.
 * It always says which, and why.
 */

import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { canInstall, findBrowser, installPackages } from './tools.mjs';
import { ensureBuilt } from './build.mjs';
import { ensureDependencies } from './dependencies.mjs';
import { fetchElectron, findElectron } from './electron-runtime.mjs';
import { run, runScript } from './run.mjs';
import { hasDisplay, isRoot, requireNode, say } from './surroundings.mjs';

requireNode();

const REASONS = {
  asked: 'the loopback shell was asked for',
  root: "Electron's sandbox does not work for root",
  missing: "Electron's runtime is not on this machine and could not be fetched",
  failed: 'Electron did not run on this machine',
};

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    'no-open': { type: 'boolean', default: false },
    port: { type: 'string', default: '0' },
    shell: { type: 'string' },
  },
});
const files = positionals.slice(0, 1).map((file) => resolve(process.env['INIT_CWD'] ?? '.', file));

await ensureDependencies();
await ensureBuilt(['node', 'window']);

const show = hasDisplay() && !values['no-open'];
/** @type {{ program: string, reason?: Reason } | { reason?: Reason }} */
const electron = show ? await electronOrReason() : {};
if ('program' in electron) {
  say('Opening Standlines in its own window (Electron).');
  if ((await run(electron.program, ['.', ...files], { inherit: true })) === 0) process.exit(0);
  electron.reason = 'failed';
}
process.exitCode = await startLoopback(electron.reason ?? 'asked');

/**
 * Why it is not Electron. The window says it, too, in its own language (electron/loopback/why-browser.ts).
 * @typedef {keyof typeof REASONS} Reason
 */

/** @returns {Promise<{ program: string, reason?: Reason } | { reason: Reason }>} */
async function electronOrReason() {
  if (values.shell === 'loopback') return { reason: 'asked' };
  if (isRoot()) return { reason: 'root' };
  const program = findElectron() ?? (await fetchElectron());
  return program ? { program } : { reason: 'missing' };
}

/** @param {Reason} reason */
async function startLoopback(reason) {
  const browser = show ? await browserOrNull() : null;
  const options = ['--port', values.port, ...files];
  if (browser === null) {
    say(whyNoWindow());
    return (await runScript('dist/node/loopback.js', options, { inherit: true })) ?? 1;
  }
  say(`Opening Standlines in ${browser}, because ${REASONS[reason]}.`);
  const shown = ['--browser', browser, '--because', reason, ...options];
  return (await runScript('dist/node/loopback.js', shown, { inherit: true })) ?? 1;
}

async function browserOrNull() {
  const found = findBrowser();
  if (found !== null || !canInstall()) return found;
  return (await installPackages(['chromium'])) ? findBrowser() : null;
}

function whyNoWindow() {
  if (values['no-open']) return 'Serving the editor without opening a window, as asked. Ctrl+C ends it.';
  if (!hasDisplay())
    return 'There is no display here, so the editor is served for a browser on this machine. Ctrl+C ends it.';
  return 'No Chromium, Chrome or Edge was found here, so open the address in a browser yourself. Ctrl+C ends it.';
}
