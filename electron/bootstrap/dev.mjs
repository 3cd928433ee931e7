/** `npm run dev`: serves the editor without opening it and builds the window again whenever its sources change. */

import { ensureBuilt } from './build.mjs';
import { ensureDependencies } from './dependencies.mjs';
import { runScript } from './run.mjs';
import { requireNode } from './surroundings.mjs';

requireNode();
await ensureDependencies();
await ensureBuilt(['node', 'window']);

const window = ['build', '--watch', '-c', '.config/vite.renderer.config.ts'];
await Promise.race([
  runScript('node_modules/vite/bin/vite.js', window),
  runScript('dist/node/loopback.js', process.argv.slice(2), { inherit: true }),
]);
process.exit();
