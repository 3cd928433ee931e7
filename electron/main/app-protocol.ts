/** The window's own address, `app://main/`, instead of file://: it has an origin, headers and an allow-list. */

import { readFile } from 'node:fs/promises';
import { protocol } from 'electron';
import type { Language } from '#model/words/languages.ts';
import { t } from '#model/words/say.ts';
import { pageIn, windowFiles, type WindowFile } from '../services/window-files.ts';
import { headersOf, WINDOW_HEADERS } from '../services/window-headers.ts';

const SCHEME = 'app';
export const WINDOW_ORIGIN = `${SCHEME}://main`;

/** Must run before Electron is ready. */
export function registerScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** `speakNow`: the language of a page that is loaded now. */
export async function serveWindow(folder: string, speakNow: () => Promise<Language>): Promise<void> {
  const files = await windowFiles(folder);
  protocol.handle(SCHEME, (request) => answerRequest(request, files, speakNow));
}

export async function answerRequest(
  request: Request,
  files: ReadonlyMap<string, WindowFile>,
  speakNow: () => Promise<Language>,
): Promise<Response> {
  const path = request.method === 'GET' ? pathIn(request.url) : null;
  const file = path === '/' ? pageIn(await speakNow(), files) : files.get(path ?? '');
  if (!file) return new Response(t`There is no such file.`, { status: 404, headers: WINDOW_HEADERS });
  const headers = { ...headersOf(new URL(request.url).pathname), 'content-type': file.type };
  return new Response(await readFile(file.path), { headers });
}

/** Null for what is not of the window's own address. */
function pathIn(address: string): string | null {
  const url = URL.canParse(address) ? new URL(address) : null;
  return url?.protocol === `${SCHEME}:` && url.host === 'main' ? url.pathname : null;
}

/** Whether an address belongs to the program's own window; compared parsed, so `app://main.evil` does not. */
export function isOwnAddress(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const url = new URL(address);
  return url.protocol === `${SCHEME}:` && url.host === 'main' && url.username === '' && url.password === '';
}
