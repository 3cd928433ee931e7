/**
 * Who may talk to the loopback server: a page of its own that knows the token. A foreign web page can make the
 * browser send requests here (also under another name that resolves to 127.0.0.1), but it can neither forge these
 * headers nor know the token.
 */

import { createHash, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders } from 'node:http';
import { TOKEN_HEADER } from './wire.ts';

export interface Refusal {
  readonly status: number;
  readonly code: string;
  readonly message: string;
}

/** Checks that hold for every request, files included. Null: let it in. */
export function refuseStranger(headers: IncomingHttpHeaders, port: number): Refusal | null {
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  if (!hosts.includes(headers.host ?? '')) {
    return { status: 421, code: 'loopback.host', message: 'This server answers only to its own address.' };
  }
  if (headers.origin !== undefined && headers.origin !== `http://${headers.host}`) {
    return { status: 403, code: 'loopback.origin', message: 'This server answers only to its own pages.' };
  }
  if (!['same-origin', 'none', undefined].includes(headers['sec-fetch-site'] as string | undefined)) {
    return { status: 403, code: 'loopback.site', message: 'This server answers only to its own pages.' };
  }
  return null;
}

/** Checks that hold for calls. Null: let it in. */
export function refuseCaller(
  method: string | undefined,
  headers: IncomingHttpHeaders,
  token: string,
): Refusal | null {
  if (method !== 'POST')
    return { status: 405, code: 'loopback.method', message: 'Calls are made with POST.' };
  if (!isToken(headers[TOKEN_HEADER], token)) {
    return {
      status: 401,
      code: 'loopback.token',
      message:
        'The address of this page lacks the right token. Start the program again and use the address it gives.',
    };
  }
  if (!/^application\/json(;\s*charset=utf-8)?$/i.test(headers['content-type'] ?? '')) {
    return { status: 415, code: 'loopback.contentType', message: 'Calls are made with JSON.' };
  }
  return null;
}

/** Compares digests, which have one length, in a time that does not tell how much was right. */
function isToken(given: string | string[] | undefined, token: string): boolean {
  return typeof given === 'string' && timingSafeEqual(digest(given), digest(token));
}

function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}
