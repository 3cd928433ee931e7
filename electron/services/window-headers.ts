/** What every answer to the window carries; a single file other than the rest. */

const policyWith = (scripts: string): string =>
  [
    "default-src 'none'",
    `script-src ${scripts}`,
    "style-src 'self'",
    "img-src 'self' blob: data:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self' blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; ');

/**
 * The worker that draws pages of parts also unpacks scans, with WebAssembly that comes with the program. It alone may
 * compile any: a worker goes by the policy of its own file.
 */
const PDF_WORKER = /^\/assets\/pdf\.worker[\w.-]*\.js$/;

export const WINDOW_HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': policyWith("'self'"),
  'x-content-type-options': 'nosniff',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
  'permissions-policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=(), midi=()',
  'cache-control': 'no-store',
};

/** For the file that is asked for by that path. */
export function headersOf(path: string): Readonly<Record<string, string>> {
  if (!PDF_WORKER.test(path)) return WINDOW_HEADERS;
  return { ...WINDOW_HEADERS, 'content-security-policy': policyWith("'self' 'wasm-unsafe-eval'") };
}
