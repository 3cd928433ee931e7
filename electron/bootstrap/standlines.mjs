/** `npm run -s standlines -- VERB FILE ...`: the program without a window. Built first when its sources changed. */

import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { ensureBuilt } from './build.mjs';
import { ensureDependencies } from './dependencies.mjs';
import { requireNode, root } from './surroundings.mjs';

requireNode();
await ensureDependencies();
await ensureBuilt(['node']);
// npm runs scripts in the package's folder; file names are meant from where the user stands.
process.chdir(process.env['INIT_CWD'] ?? process.cwd());
await import(pathToFileURL(join(root, 'dist', 'node', 'cli.js')).href);
