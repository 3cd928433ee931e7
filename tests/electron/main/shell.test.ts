/**
 * The Electron shell against the twenty points of Electron's security tutorial (electron/electron,
 * docs/tutorial/security.md), with a stand-in for Electron that records what the shell asks of it. The numbers are
 * those of the tutorial; the points that are about the built files are in built-files.test.ts.
 */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import * as electron from '../../helpers/electron-stub.ts';
import { eventually } from '../../helpers/eventually.ts';
import { windowIn } from '../../helpers/loopback.ts';

vi.mock('electron', () => import('../../helpers/electron-stub.ts'));

const state = mkdtempSync(join(tmpdir(), 'standlines-main-'));
const built = windowIn(join(state, 'window'));
vi.mock('../../../electron/services/program.ts', async (original) => ({
  ...(await original<object>()),
  windowFolder: () => built,
}));

type Listener = (event: unknown, ...args: unknown[]) => Promise<{ ok: boolean; error?: { code: string } }>;

let listener: Listener;
let window: electron.FakeWindow;

beforeAll(async () => {
  vi.stubEnv('STANDLINES_STATE_DIR', state);
  await import('../../../electron/main/main.ts');
  await eventually(() => expect(electron.FakeWindow.windows).toHaveLength(1));
  listener = electron.ipcMain.handle.mock.calls[0]?.[1] as Listener;
});

beforeEach(() => {
  window = electron.FakeWindow.windows[0] ?? new electron.FakeWindow({ webPreferences: {} });
});

afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(state, { recursive: true, force: true });
});

describe('2, 3, 4, 6, 8, 9, 10, 11: what a window may be', () => {
  it('is a page in a sandbox, with nothing of Node and nothing experimental', () => {
    expect(electron.app.enableSandbox).toHaveBeenCalledOnce();
    const { preload, ...preferences } = window.options.webPreferences;
    expect(preferences).toEqual({
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    });
    expect(preload).toMatch(/dist.preload.preload\.cjs$/);
    expect(window.loadURL.mock.calls).toEqual([['app://main/']]);
  });
});

describe('5: permissions', () => {
  it.each([
    'media',
    'geolocation',
    'notifications',
    'clipboard-read',
    'fullscreen',
    'openExternal',
    'unknown',
  ])('denies %s', (permission) => {
    const answer = vi.fn();
    electron.defaultSession.setPermissionRequestHandler.mock.calls[0]?.[0](null, permission, answer);
    expect(answer.mock.calls).toEqual([[false]]);
    expect(electron.defaultSession.setPermissionCheckHandler.mock.calls[0]?.[0](null, permission)).toBe(
      false,
    );
    expect(electron.defaultSession.setDevicePermissionHandler.mock.calls[0]?.[0]({})).toBe(false);
  });

  it('downloads nothing and asks nothing of any other place', () => {
    const event = { preventDefault: vi.fn() };
    electron.defaultSession.emit('will-download', event);
    expect(event.preventDefault).toHaveBeenCalled();
    const decide = electron.defaultSession.webRequest.onBeforeRequest.mock.calls[0]?.[0];
    const cancelled = (url: string) => {
      const answer = vi.fn();
      decide({ url }, answer);
      return answer.mock.calls[0]?.[0].cancel as boolean;
    };
    for (const url of [
      'app://main/',
      'app://main/assets/a.js',
      'blob:app://main/1',
      'data:image/png;base64,',
    ]) {
      expect([url, cancelled(url)]).toEqual([url, false]);
    }
    for (const url of [...FOREIGN, 'blob:http://evil.test/1', 'ws://127.0.0.1/', 'ftp://a/']) {
      expect([url, cancelled(url)]).toEqual([url, true]);
    }
  });
});

const FOREIGN = [
  'http://evil.test/',
  'https://evil.test/app://main/',
  'app://main.evil/',
  'app://evil/',
  'app://main:80/',
  'app://user@main/',
  'app:/main/',
  'APP2://main/',
  'file:///etc/passwd',
  'javascript:alert(1)',
  'about:blank',
  'not an address',
];

describe('12, 13, 14: where a window may go', () => {
  it.each(FOREIGN)('not to %s', (url) => {
    for (const name of ['will-navigate', 'will-redirect', 'will-frame-navigate']) {
      const event = { url, preventDefault: vi.fn() };
      window.webContents.emit(name, event);
      expect([name, event.preventDefault.mock.calls.length]).toEqual([name, 1]);
    }
  });

  it('within its own page', () => {
    const event = { url: 'app://main/#start', preventDefault: vi.fn() };
    window.webContents.emit('will-navigate', event);
    expect(event.preventDefault).not.toHaveBeenCalled();
  });

  it('opens no window and no web view', () => {
    const decide = window.webContents.setWindowOpenHandler.mock.calls[0]?.[0];
    expect(decide({ url: 'app://main/' })).toEqual({ action: 'deny' });
    const event = { preventDefault: vi.fn() };
    window.webContents.emit('will-attach-webview', event);
    expect(event.preventDefault).toHaveBeenCalled();
  });
});

describe('17: who may call', () => {
  const eventFrom = (change: Record<string, unknown> = {}) => ({
    sender: window.webContents,
    senderFrame: window.webContents.mainFrame,
    ...change,
  });

  it('listens under one name only, and the own page is answered', async () => {
    expect(electron.ipcMain.handle).toHaveBeenCalledOnce();
    expect(electron.ipcMain.on).not.toHaveBeenCalled();
    expect(await listener(eventFrom(), 'app.hello', [])).toMatchObject({
      ok: true,
      value: { shell: 'electron', nativeDialogs: true },
    });
  });

  it.each([
    ['a frame that has gone', { senderFrame: null }],
    ['a frame in the page', { senderFrame: { url: 'app://main/', parent: {} } }],
    ['another frame of the same address', { senderFrame: { url: 'app://main/', parent: null } }],
    ['a window of nobody', { sender: new electron.FakeContents() }],
  ])('turns away %s', async (_who, change) => {
    expect(await listener(eventFrom(change), 'app.hello', [])).toMatchObject({ ok: false });
  });

  it.each(FOREIGN)('turns away a page at %s', async (url) => {
    const { mainFrame } = window.webContents;
    const own = mainFrame.url;
    mainFrame.url = url;
    expect(await listener(eventFrom(), 'app.hello', [])).toMatchObject({
      ok: false,
      error: { code: 'call.stranger' },
    });
    mainFrame.url = own;
  });

  it.each([
    ['app.goodbye', [], 'call.unknownChannel'],
    ['constructor', [], 'call.unknownChannel'],
    [7, [], 'call.stranger'],
    ['files.read', ['/etc/passwd'], 'call.badArguments'],
    ['app.hello', ['more'], 'call.badArguments'],
    ['app.hello', null, 'call.badArguments'],
  ])('refuses %j with %j', async (channel, args, code) => {
    expect(await listener(eventFrom(), channel, args)).toMatchObject({ ok: false, error: { code } });
  });

  it('refuses more than a channel and its arguments', async () => {
    expect(await listener(eventFrom(), 'app.hello', [], 'more')).toMatchObject({ ok: false });
  });
});

describe('7, 18: the own address', () => {
  const answer = (url: string, method = 'GET') =>
    electron.protocol.handle.mock.calls[0]?.[1](new Request(url, { method })) as Promise<Response>;

  it('is a standard, secure scheme that bypasses nothing', () => {
    expect(electron.protocol.registerSchemesAsPrivileged.mock.calls).toEqual([
      [[{ scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } }]],
    ]);
  });

  it('serves the page with a strict policy', async () => {
    const response = await answer('app://main/');
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(response.headers.get('content-security-policy')).toContain(
      "default-src 'none'; script-src 'self'",
    );
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
    expect(await response.text()).toContain('Window');
    expect((await answer('app://main/assets/index.js')).status).toBe(200);
  });

  it.each([
    'app://main/secret.env',
    'app://main/../package.json',
    'app://main/%2e%2e/package.json',
    'app://main/assets/%2e%2e%2fsecret.env',
    'app://main/assets/index.js%00.html',
    'app://main/assets\\index.js%5c..',
    'app://main//etc/passwd',
    'app://main.evil/',
    'app://evil/index.html',
    'app2://main/',
  ])('not %s', async (url) => {
    expect((await answer(url)).status).toBe(404);
  });

  it('serves the page in the language of the system', async () => {
    electron.app.getPreferredSystemLanguages.mockReturnValueOnce(['fr-CH', 'de-CH']);
    expect(await (await answer('app://main/')).text()).toContain('Fenster');
    expect(await (await answer('app://main/')).text()).toContain('Window');
  });

  it('only reads', async () => {
    expect((await answer('app://main/', 'POST')).status).toBe(404);
  });
});

describe('20: what the page is given', () => {
  it('is one function that knows the channels, and nothing of Electron', async () => {
    await import('../../../electron/preload/preload.ts');
    const [[name, given]] = electron.contextBridge.exposeInMainWorld.mock.calls as [[string, object]];
    expect([name, Object.keys(given)]).toEqual(['standlines', ['call']]);
    const { call } = given as { call(channel: string, ...args: unknown[]): Promise<unknown> };
    await call('files.read', 'a');
    expect(electron.ipcRenderer.invoke.mock.calls).toEqual([['standlines:call', 'files.read', ['a']]]);
    await expect(call('app.goodbye')).rejects.toThrow('no call');
    expect(electron.ipcRenderer.invoke).toHaveBeenCalledOnce();
  });
});

describe('windows and work', () => {
  it('asks before unsaved work is left', () => {
    const event = { preventDefault: vi.fn() };
    electron.dialog.showMessageBoxSync.mockReturnValueOnce(0).mockReturnValueOnce(1);
    window.webContents.emit('will-prevent-unload', event);
    expect(event.preventDefault).not.toHaveBeenCalled();
    window.webContents.emit('will-prevent-unload', event);
    expect(event.preventDefault).toHaveBeenCalledOnce();
  });

  it('a second start opens its file in a window of this program', async () => {
    const file = join(state, 'trio.standlines');
    writeFileSync(file, '{}');
    electron.app.emit('second-instance', {}, ['electron', '.', '--inspect', 'trio.standlines'], state);
    const second = electron.FakeWindow.windows.at(-1);
    const event = { sender: second?.webContents, senderFrame: second?.webContents.mainFrame };
    const hello = (await listener(event, 'app.hello', [])) as { value?: { open: string | null } };
    expect(hello.value?.open).toMatch(/^[0-9a-f]{32}$/);
    second?.destroy();
  });

  it('a window that died can be opened again, and its kept work is offered', async () => {
    const event = { sender: window.webContents, senderFrame: window.webContents.mainFrame };
    const work = { name: 'Trio', handle: null, hash: null, text: '{}', recoveredFrom: null };
    await listener(event, 'recovery.keep', ['key', work]);
    expect(await listener(event, 'recovery.list', [])).toMatchObject({ value: [] });
    electron.dialog.showMessageBox.mockResolvedValueOnce({ response: 0 });
    window.webContents.emit('render-process-gone');
    await eventually(() => expect(electron.FakeWindow.windows).not.toContain(window));
    const again = electron.FakeWindow.windows[0];
    const next = { sender: again?.webContents, senderFrame: again?.webContents.mainFrame };
    expect(await listener(next, 'recovery.list', [])).toMatchObject({ value: [{ name: 'Trio' }] });
  });
});
