/** The loopback shell as a program: started, found, opened, ended. */

import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { chmodSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { beforeAll, expect, it, onTestFinished } from 'vitest';
import { findBrowser } from '../../../electron/bootstrap/tools.mjs';
import { root } from '../../helpers/built.ts';
import { eventually } from '../../helpers/eventually.ts';
import { temporaryFolder } from '../../helpers/folders.ts';
import { TOKEN } from '../../helpers/loopback.ts';

beforeAll(() => {
  const { status, stderr } = spawnSync(process.execPath, [join(root, 'electron/bootstrap/build.mjs')], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`the program could not be built: ${stderr}`);
});

interface Started {
  readonly child: ChildProcess;
  /** All that it has printed so far. */
  readonly printed: () => string;
  readonly state: string;
  readonly ended: Promise<number | null>;
}

function start(
  words: readonly string[],
  state = temporaryFolder(),
  script = 'dist/node/loopback.js',
): Started {
  const surroundings = {
    STANDLINES_STATE_DIR: state,
    STANDLINES_TOKEN: TOKEN,
    DISPLAY: '',
    WAYLAND_DISPLAY: '',
  };
  const child = spawn(process.execPath, [join(root, script), ...words], {
    env: { ...process.env, ...surroundings },
  });
  let printed = '';
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => (printed += String(chunk)));
  const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
  onTestFinished(() => void child.kill('SIGKILL'));
  return { child, printed: () => printed, state, ended };
}

async function addressOf({ printed }: Started): Promise<URL> {
  return eventually(() => {
    const [address] = /http:\/\/127\.0\.0\.1:\d+\/#token=\S+/.exec(printed()) ?? [];
    if (address === undefined) throw new Error(`no address in: ${printed()}`);
    return new URL(address);
  });
}

async function call(address: URL, channel: string, ...args: unknown[]): Promise<unknown> {
  const headers = { 'content-type': 'application/json', 'x-standlines-token': TOKEN };
  const body = JSON.stringify({ args });
  return (await fetch(new URL(`/call/${channel}`, address), { method: 'POST', headers, body })).json();
}

it('prints its address, greets with the notice and the file, and ends when told to', async () => {
  const file = join(temporaryFolder(), 'trio.standlines');
  writeFileSync(file, readFileSync(join(root, 'assets/demo-concert.standlines')));
  const started = start(['--notice', 'Because of a test.', file]);
  const address = await addressOf(started);
  expect(address.hash).toBe(`#token=${TOKEN}`);
  const hello = (await call(address, 'app.hello')) as { value: { open: string } };
  expect(hello).toMatchObject({ ok: true, value: { shell: 'loopback', notice: 'Because of a test.' } });
  expect(await call(address, 'files.read', hello.value.open)).toMatchObject({
    ok: true,
    value: { name: 'trio.standlines' },
  });
  started.child.kill('SIGTERM');
  expect(await started.ended).toBe(0);
});

it('npm start says why there is no window, serves the editor, and passes on its own ending', async (context) => {
  if (process.platform !== 'linux') return context.skip('only Linux can be without a display: not tried');
  const started = start([], temporaryFolder(), 'electron/bootstrap/start.mjs');
  const address = await addressOf(started);
  expect(started.printed()).toMatch(/There is no display here, so the editor is served for a browser/);
  expect(await call(address, 'files.demo')).toMatchObject({ ok: true });
  started.child.kill('SIGTERM');
  expect(await started.ended).toBe(0);
  await expect(fetch(address)).rejects.toThrow();
});

it('unsaved work survives a kill and is offered at the next start, but not to another program meanwhile', async () => {
  const first = start([]);
  const kept = await call(await addressOf(first), 'recovery.keep', 'key', {
    name: 'Trio',
    handle: null,
    hash: null,
    text: 'half done',
    recoveredFrom: null,
  });
  expect(kept).toEqual({ ok: true, value: null });
  const beside = start([], first.state);
  expect(await call(await addressOf(beside), 'recovery.list')).toEqual({ ok: true, value: [] });
  first.child.kill('SIGKILL');
  await first.ended;
  const next = await addressOf(start([], first.state));
  const { value } = (await call(next, 'recovery.list')) as { value: { id: string; name: string }[] };
  expect(value.map(({ name }) => name)).toEqual(['Trio']);
  expect(await call(next, 'recovery.read', value[0]?.id)).toMatchObject({ value: { text: 'half done' } });
});

it('goes on serving, and says where, when the browser does not start', async () => {
  const started = start(['--browser', join(temporaryFolder(), 'no-browser')]);
  const address = await addressOf(started);
  expect(started.printed()).toMatch(/no-browser did not start\. Open this address in a browser: /);
  expect(await call(address, 'app.hello')).toMatchObject({ ok: true });
});

it('opens the window in the browser, keeps its token off the command line, and ends with the window', async (context) => {
  const browser = findBrowser();
  if (browser === null) return context.skip('no Chromium, Chrome or Edge was found: not tried in a browser');
  const folder = temporaryFolder();
  const wrapper = join(folder, 'browser');
  writeFileSync(
    wrapper,
    `#!/bin/sh\necho "$@" > ${folder}/words\necho $$ > ${folder}/pid\nexec ${browser} --headless=new --remote-debugging-port=0 "$@"\n`,
  );
  chmodSync(wrapper, 0o755);
  const started = start(['--browser', wrapper]);
  // Had the window not come up, the program would go on serving when the browser dies.
  await windowIsUp(join(started.state, 'browser'));
  expect(started.child.exitCode).toBeNull();
  const words = readFileSync(join(folder, 'words'), 'utf8');
  expect(words).toContain(`--user-data-dir=${join(started.state, 'browser')}`);
  expect(words).toMatch(/--app=http:\/\/127\.0\.0\.1:\d+\/enter\/\S{43}/);
  expect(words).not.toContain(TOKEN);
  process.kill(Number(readFileSync(join(folder, 'pid'), 'utf8')));
  expect(await started.ended).toBe(0);
});

/** Waits until the window in the browser with this profile shows what its workers found: by then the program knows of it. */
async function windowIsUp(profile: string): Promise<void> {
  const port = await eventually(() =>
    Number(readFileSync(join(profile, 'DevToolsActivePort'), 'utf8').split('\n')[0]),
  );
  const debugged = `http://127.0.0.1:${port}`;
  // Whoever connects while the page is still on its way may wait for ever: its title comes with the window.
  await eventually(async () => {
    const pages = (await (await fetch(`${debugged}/json/list`)).json()) as { readonly title: string }[];
    expect(pages.map(({ title }) => title).join()).toContain(' – Standlines');
  });
  const browser = await eventually(() => chromium.connectOverCDP(debugged, { timeout: 15_000 }));
  const page = await eventually(() => {
    const found = browser.contexts().flatMap((each) => each.pages())[0];
    if (!found) throw new Error('the browser has no page');
    return found;
  });
  await page.getByRole('button', { name: /^Worst seen/ }).waitFor({ timeout: 100_000 });
}
