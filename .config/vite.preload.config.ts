/** Builds the preload script: one CommonJS file, which is all that a sandboxed window may load. */

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const repository = new URL('..', import.meta.url);

export default defineConfig({
  root: fileURLToPath(new URL('electron', repository)),
  build: {
    outDir: fileURLToPath(new URL('dist/preload', repository)),
    emptyOutDir: true,
    target: 'chrome120',
    minify: false,
    lib: {
      entry: fileURLToPath(new URL('electron/preload/preload.ts', repository)),
      formats: ['cjs'],
      fileName: () => 'preload.cjs',
    },
    rolldownOptions: { external: ['electron'] },
  },
});
