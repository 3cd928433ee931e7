/** Where the program keeps its own things for this user: settings, recent files, unsaved work. */

import { homedir } from 'node:os';
import { join } from 'node:path';

interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly home: string;
}

/**
 * `STANDLINES_STATE_DIR` if set; otherwise the platform's place for state (the XDG base directory specification
 * on Linux, where `XDG_STATE_HOME` must be absolute to count).
 */
export function stateFolder({ platform, env, home }: Surroundings = here()): string {
  if (env['STANDLINES_STATE_DIR']) return env['STANDLINES_STATE_DIR'];
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Standlines');
  if (platform === 'win32') return join(env['LOCALAPPDATA'] ?? join(home, 'AppData', 'Local'), 'Standlines');
  const base = env['XDG_STATE_HOME'];
  return join(base?.startsWith('/') ? base : join(home, '.local', 'state'), 'standlines');
}

function here(): Surroundings {
  return { platform: process.platform, env: process.env, home: homedir() };
}
