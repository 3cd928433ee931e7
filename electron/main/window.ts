/** A window of the program. */

import { join } from 'node:path';
import { BrowserWindow, type BrowserWindowConstructorOptions } from 'electron';
import { createHandlers, type Services } from '../services/handlers.ts';
import { programFolder } from '../services/program.ts';
import { WINDOW_ORIGIN } from './app-protocol.ts';
import { connectWindow } from './bridge.ts';
import { askToLeave, askToReopen, dialogsOver } from './dialogs.ts';

/** `file` is what the window is to open, null for none. */
export function openWindow(services: Services, file: string | null): void {
  const window = new BrowserWindow(windowOptions());
  const handlers = createHandlers(services, {
    shell: 'electron',
    notice: null,
    open: file,
    dialogs: dialogsOver(window),
  });
  connectWindow(window.webContents, handlers);
  keepWorkSafe(window, services);
  window.once('ready-to-show', () => window.show());
  void window.loadURL(`${WINDOW_ORIGIN}/`);
}

export function anyWindowOpen(): boolean {
  return BrowserWindow.getAllWindows().length > 0;
}

/** Asks before unsaved work is left, and offers what a page kept as soon as that page has gone. */
function keepWorkSafe(window: BrowserWindow, services: Services): void {
  const pageGone = () => {
    if (BrowserWindow.getAllWindows().every((other) => other === window)) services.recovery.disown();
  };
  window.webContents.on('will-prevent-unload', (event) => {
    if (askToLeave(window)) event.preventDefault();
  });
  window.webContents.on('did-start-navigation', ({ isMainFrame, isSameDocument }) => {
    if (isMainFrame && !isSameDocument) pageGone();
  });
  window.webContents.on('render-process-gone', () => {
    pageGone();
    void askToReopen().then((again) => {
      if (again) openWindow(services, null);
      window.destroy();
    });
  });
  window.on('closed', pageGone);
}

function windowOptions(): BrowserWindowConstructorOptions {
  return {
    width: 1440,
    height: 920,
    minWidth: 900,
    minHeight: 600,
    show: false,
    title: 'Standlines',
    webPreferences: {
      preload: join(programFolder(), 'dist', 'preload', 'preload.cjs'),
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  };
}
