/**
 * The built window as an allow-list: only what was found in the folder is served, under exactly the path that was
 * found, so that no spelling of a path can lead out of it.
 */

import { readdir } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import type { Language } from '#model/words/languages.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ttf': 'font/ttf',
  '.pfb': 'application/octet-stream',
  '.wasm': 'application/wasm',
};

export interface WindowFile {
  readonly path: string;
  readonly type: string;
}

/** URL path ("/", "/assets/a.js") to file. Files of other types are left out. */
export async function windowFiles(folder: string): Promise<ReadonlyMap<string, WindowFile>> {
  const found = new Map<string, WindowFile>();
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    const type = TYPES[extname(entry.name)];
    if (!entry.isFile() || type === undefined) continue;
    found.set(`/${relative(folder, path).split(sep).join('/')}`, { path, type });
  }
  return found;
}

/** What a page in this language begins with: `/` stands for it. */
export function pageIn(language: Language, files: ReadonlyMap<string, WindowFile>): WindowFile | undefined {
  return files.get(language === 'en' ? '/index.html' : `/index.${language}.html`);
}
