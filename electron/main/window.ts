/** A window of the program. */

import { join } from 'node:path';
import { BrowserWindow, type BrowserWindowConstructorOptions } from 'electron';
import { WINDOW_ORIGIN } from './app-protocol.ts';
import { askToLeave, askToReopen } from './dialogs.ts';

export function windowOptions(programFolder: string): BrowserWindowConstructorOptions {
  return {
    width: 1440,
    height: 920,
    minWidth: 900,
    minHeight: 600,
    show: false,
    title: 'Standlines',
    webPreferences: {
      preload: join(programFolder, 'dist', 'preload', 'preload.cjs'),
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

export interface WindowEvents {
  /** The page has gone, by a crash, a reload or the end of the window: what it kept is nobody's now. */
  readonly pageGone: () => void;
  readonly reopen: () => void;
}

/** The page is loaded by `showPage`, after the window has been connected. */
export function createWindow(programFolder: string, { pageGone, reopen }: WindowEvents): BrowserWindow {
  const window = new BrowserWindow(windowOptions(programFolder));
  window.once('ready-to-show', () => window.show());
  window.webContents.on('will-prevent-unload', (event) => {
    if (askToLeave(window)) event.preventDefault();
  });
  window.webContents.on('render-process-gone', () => {
    pageGone();
    window.destroy();
    void askToReopen().then((again) => again && reopen());
  });
  window.webContents.on('did-start-navigation', ({ isMainFrame, isSameDocument }) => {
    if (isMainFrame && !isSameDocument) pageGone();
  });
  window.on('closed', pageGone);
  return window;
}

export async function showPage(window: BrowserWindow): Promise<void> {
  await window.loadURL(`${WINDOW_ORIGIN}/`);
}
