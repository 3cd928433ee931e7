/** Where the program itself lies, and which version it is. */

import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
export { version } from '../../package.json';

/** The folder with package.json above this module: the checkout, or the packaged application. */
export function programFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder);
    if (above === folder) throw new Error('the program lies outside its package');
    folder = above;
  }
  return folder;
}

export function demoPath(): string {
  return join(programFolder(), 'assets', 'demo-concert.standlines');
}

export function windowFolder(): string {
  return join(programFolder(), 'dist', 'renderer');
}
