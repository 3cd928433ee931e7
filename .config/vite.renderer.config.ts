/** Builds the window: `renderer/` to `dist/renderer/`, files only, nothing inline, so that the strict CSP holds. */

import { svelte } from '@sveltejs/vite-plugin-svelte';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { fetchedEarly, FIRST_SCRIPTS } from './first-scripts.ts';

const repository = new URL('..', import.meta.url);

export default defineConfig({
  root: fileURLToPath(new URL('renderer', repository)),
  base: './',
  plugins: [svelte({ configFile: false }), fetchedEarly()],
  // As `var`, constants of modules are not constant to the engine; the sight check takes 1.3 times as long.
  worker: { format: 'es', rolldownOptions: { output: { topLevelVar: false } } },
  build: {
    outDir: fileURLToPath(new URL('dist/renderer', repository)),
    emptyOutDir: true,
    target: 'chrome120',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // What is bundled is not packaged as a package of its own, whose licence would be beside it.
    license: { fileName: 'licences.md' },
    chunkSizeWarningLimit: 1500,
    rolldownOptions: {
      // A page for each language: the words of another come before everything else.
      input: ['index.html', 'index.de.html'].map((page) =>
        fileURLToPath(new URL(`renderer/${page}`, repository)),
      ),
      checks: { pluginTimings: false },
      output: { topLevelVar: false, codeSplitting: FIRST_SCRIPTS },
    },
  },
});
