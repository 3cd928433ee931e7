/** The Electron shell, as a table of contents. */

import { app, session } from 'electron';
import { ENGINE_FLAGS } from '../services/engine-flags.ts';
import { speakTo } from '../services/language.ts';
import { windowFolder } from '../services/program.ts';
import { startServices } from '../services/start-services.ts';
import { registerScheme, serveWindow } from './app-protocol.ts';
import { openBridge } from './bridge.ts';
import { fileAmong } from './command-line.ts';
import { lockDown, lockDownSession } from './lockdown.ts';
import { setMenu } from './menu.ts';
import { anyWindowOpen, openWindow } from './window.ts';

app.enableSandbox();
app.commandLine.appendSwitch('js-flags', ENGINE_FLAGS);
registerScheme();
lockDown(app);

if (app.requestSingleInstanceLock()) run();
else app.quit();

function run(): void {
  const services = startServices();
  const open = (file: string | null) => openWindow(services, file);
  const speakNow = () => speakTo(services.fs, services.state, app.getPreferredSystemLanguages());
  /** A file that macOS asks for before the program is ready. */
  let first = fileAmong(process.argv, process.cwd());

  app.on('open-file', (event, file) => {
    event.preventDefault();
    if (app.isReady()) open(file);
    else first = file;
  });
  app.on('second-instance', (_event, argv, folder) => open(fileAmong(argv, folder)));
  app.on('activate', () => {
    if (!anyWindowOpen()) open(null);
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  app.on('will-quit', (event) => {
    if (services.files.isIdle()) return;
    event.preventDefault();
    void services.files.idle().then(() => app.quit());
  });

  void app.whenReady().then(async () => {
    lockDownSession(session.defaultSession);
    await speakNow();
    setMenu(process.platform);
    await serveWindow(windowFolder(), speakNow);
    openBridge();
    open(first);
    // While the window comes up.
    void services.firstPictures.ahead({ open: first, notice: null, locale: app.getLocale() });
  });
}
