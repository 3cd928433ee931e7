/** Builds what runs in Node: the Electron main process, the loopback shell and the command line, as ES modules. */

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const repository = new URL('..', import.meta.url);
const source = (path: string) => fileURLToPath(new URL(path, repository));

export default defineConfig({
  root: source('electron'),
  build: {
    ssr: true,
    outDir: source('dist/node'),
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    rolldownOptions: {
      input: {
        electron: source('electron/main/main.ts'),
        loopback: source('electron/loopback/main.ts'),
        cli: source('electron/cli/main.ts'),
      },
      output: {
        entryFileNames: '[name].js',
        chunkFileNames: 'chunks/[name]-[hash].js',
        // As `var`, constants of modules are not constant to the engine; the sight check takes 1.3 times as long.
        topLevelVar: false,
      },
    },
  },
  ssr: { external: ['electron'] },
});
