/** Which file of the window may do what. What `wasm-unsafe-eval` allows: Content Security Policy Level 3, 6.3.2. */

import { describe, expect, it } from 'vitest';
import { headersOf, WINDOW_HEADERS } from '../../../electron/services/window-headers.ts';

const policyOf = (path: string) => headersOf(path)['content-security-policy'];

describe('headers of the files of the window', () => {
  it('let the PDF worker alone compile WebAssembly, and nothing else besides', () => {
    const own = WINDOW_HEADERS['content-security-policy'] ?? '';
    expect(own).toContain("script-src 'self';");
    expect(policyOf('/assets/pdf.worker.min-a1_B-2.js')).toBe(
      own.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'"),
    );
    for (const path of [
      '/',
      '/index.html',
      '/assets/index-a1.js',
      '/assets/checks.worker-a1.js',
      '/assets/pdf-a1.js',
      '/assets/pdf.worker.html',
      '/assets/pdf.worker.js/../index.html',
      '/other/assets/pdf.worker.js',
      '/call/pdf.worker.js',
    ])
      expect(policyOf(path), path).toBe(own);
  });
});
