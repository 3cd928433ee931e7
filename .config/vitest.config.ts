import { defineConfig } from 'vitest/config';
import { fileURLToPath } from 'node:url';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
    environment: 'node',
    setupFiles: ['tests/helpers/seed.ts'],
    maxWorkers: 2,
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
