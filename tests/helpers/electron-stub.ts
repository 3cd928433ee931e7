/**
 * What the main process would find as `electron`, recording instead of acting. The package itself must never be
 * loaded in a test: it fetches its runtime when it is.
 */

import { EventEmitter } from 'node:events';
import { vi } from 'vitest';

export class FakeContents extends EventEmitter {
  readonly mainFrame = { url: 'app://main/', parent: null as object | null };
  readonly setWindowOpenHandler = vi.fn();
}

export class FakeWindow extends EventEmitter {
  static windows: FakeWindow[] = [];
  readonly webContents = new FakeContents();
  readonly show = vi.fn();
  readonly loadURL = vi.fn(async () => undefined);
  constructor(readonly options: { readonly webPreferences: Record<string, unknown> }) {
    super();
    FakeWindow.windows.push(this);
    app.emit('web-contents-created', {}, this.webContents);
  }
  destroy(): void {
    FakeWindow.windows = FakeWindow.windows.filter((window) => window !== this);
    this.emit('closed');
  }
  static getAllWindows(): readonly FakeWindow[] {
    return FakeWindow.windows;
  }
}

export const app = Object.assign(new EventEmitter(), {
  enableSandbox: vi.fn(),
  commandLine: { appendSwitch: vi.fn() },
  requestSingleInstanceLock: vi.fn(() => true),
  whenReady: vi.fn(async () => undefined),
  isReady: vi.fn(() => true),
  getLocale: vi.fn(() => 'en-GB'),
  getPreferredSystemLanguages: vi.fn(() => ['en-GB']),
  quit: vi.fn(),
});

export const protocol = { registerSchemesAsPrivileged: vi.fn(), handle: vi.fn() };

export const defaultSession = Object.assign(new EventEmitter(), {
  setPermissionRequestHandler: vi.fn(),
  setPermissionCheckHandler: vi.fn(),
  setDevicePermissionHandler: vi.fn(),
  webRequest: { onBeforeRequest: vi.fn() },
});

export const ipcMain = { handle: vi.fn(), on: vi.fn() };

export const dialog = {
  showOpenDialog: vi.fn(),
  showSaveDialog: vi.fn(),
  showMessageBoxSync: vi.fn(),
  showMessageBox: vi.fn(),
};

export const Menu = {
  setApplicationMenu: vi.fn(),
  buildFromTemplate: vi.fn((template: unknown) => template),
};

export const contextBridge = { exposeInMainWorld: vi.fn() };
export const ipcRenderer = { invoke: vi.fn(async () => ({ ok: true, value: null })) };

export const session = { defaultSession };
export { FakeWindow as BrowserWindow };
