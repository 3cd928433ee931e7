/** Opens an installed Chromium as the program's window. */

import { spawn, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import { ENGINE_FLAGS } from '../services/engine-flags.ts';

/** `--app` gives a window without tabs and address bar; the profile is the program's own. */
export function browserArguments(address: string, state: string, root: boolean): string[] {
  return [
    `--app=${address}`,
    `--user-data-dir=${join(state, 'browser')}`,
    '--no-first-run',
    '--no-default-browser-check',
    '--disable-background-networking',
    '--disable-component-update',
    '--window-size=1440,920',
    `--js-flags=${ENGINE_FLAGS}`,
    // Chromium refuses to start as root with its sandbox.
    ...(root ? ['--no-sandbox'] : []),
  ];
}

export function openBrowser(executable: string, address: string, state: string): ChildProcess {
  const args = browserArguments(address, state, process.getuid?.() === 0);
  return spawn(executable, args, { stdio: 'ignore', detached: false });
}
