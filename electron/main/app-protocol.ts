/** The window's own address, `app://main/`, instead of file://: it has an origin, headers and an allow-list. */

import { readFile } from 'node:fs/promises';
import { protocol } from 'electron';
import { windowFiles, type WindowFile } from '../services/window-files.ts';
import { headersOf, WINDOW_HEADERS } from '../services/window-headers.ts';

const SCHEME = 'app';
export const WINDOW_ORIGIN = `${SCHEME}://main`;

/** Must run before Electron is ready. */
export function registerScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

export async function serveWindow(folder: string): Promise<void> {
  const files = await windowFiles(folder);
  protocol.handle(SCHEME, (request) => answerRequest(files, request));
}

export async function answerRequest(
  files: ReadonlyMap<string, WindowFile>,
  request: Request,
): Promise<Response> {
  const file = request.method === 'GET' ? fileFor(files, request.url) : undefined;
  if (!file) return new Response('There is no such file.', { status: 404, headers: WINDOW_HEADERS });
  const headers = { ...headersOf(new URL(request.url).pathname), 'content-type': file.type };
  return new Response(await readFile(file.path), { headers });
}

function fileFor(files: ReadonlyMap<string, WindowFile>, address: string): WindowFile | undefined {
  const url = URL.canParse(address) ? new URL(address) : null;
  return url?.protocol === `${SCHEME}:` && url.host === 'main' ? files.get(url.pathname) : undefined;
}

/** Whether an address belongs to the program's own window; compared parsed, so `app://main.evil` does not. */
export function isOwnAddress(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const url = new URL(address);
  return url.protocol === `${SCHEME}:` && url.host === 'main' && url.username === '' && url.password === '';
}
