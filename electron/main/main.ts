/** The Electron shell, as a table of contents. */

import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { app, BrowserWindow, session } from 'electron';
import { createHandlers } from '../services/handlers.ts';
import { programFolder, windowFolder } from '../services/program.ts';
import { startServices } from '../services/start-services.ts';
import { registerScheme, serveWindow } from './app-protocol.ts';
import { connectWindow, openBridge } from './bridge.ts';
import { dialogsOver } from './dialogs.ts';
import { lockDown, lockDownSession } from './lockdown.ts';
import { setMenu } from './menu.ts';
import { createWindow, showPage } from './window.ts';

app.enableSandbox();
registerScheme();
lockDown(app);

if (app.requestSingleInstanceLock()) run();
else app.quit();

function run(): void {
  const services = startServices();
  /** Files that macOS asks for before the program is ready. */
  const early: string[] = [];

  const open = (file: string | null) => {
    const window = createWindow(programFolder(), {
      pageGone: () => {
        if (BrowserWindow.getAllWindows().length <= 1) services.recovery.disown();
      },
      reopen: () => open(null),
    });
    const greeting = { shell: 'electron', notice: null, locale: app.getLocale(), open: file } as const;
    connectWindow(
      window.webContents,
      createHandlers(services, { ...greeting, dialogs: dialogsOver(window) }),
    );
    void showPage(window);
  };

  app.on('open-file', (event, path) => {
    event.preventDefault();
    if (app.isReady()) open(path);
    else early.push(path);
  });
  app.on('second-instance', (_event, argv, folder) => open(fileAmong(argv, folder)));
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) open(null);
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  app.on('will-quit', (event) => {
    if (!services.files.isIdle()) {
      event.preventDefault();
      void services.files.idle().then(() => app.quit());
    }
  });

  void app.whenReady().then(async () => {
    lockDownSession(session.defaultSession);
    setMenu(process.platform);
    await serveWindow(windowFolder());
    openBridge();
    open(early[0] ?? fileAmong(process.argv, process.cwd()));
  });
}

/** The document named on a command line; switches and the program's own folder are not it. */
function fileAmong(argv: readonly string[], folder: string): string | null {
  const named = argv.slice(1).filter((word) => word.endsWith('.standlines') && !word.startsWith('-'));
  const path = named.map((word) => resolve(folder, word)).find((candidate) => existsSync(candidate));
  return path ?? null;
}
