/**
 * Who may talk to the loopback server: a page of its own that knows the token. A foreign web page can make the
 * browser send requests here (also under another name that resolves to 127.0.0.1), but it can neither forge these
 * headers nor know the token.
 */

import { createHash, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders, IncomingMessage } from 'node:http';
import { t } from '#model/words/say.ts';
import { Refusal } from './refusal.ts';
import { TOKEN_HEADER } from './wire.ts';

/** Holds for every request, files included. Throws `Refusal`. */
export function turnStrangersAway(headers: IncomingHttpHeaders, port: number): void {
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  if (!hosts.includes(headers.host ?? '')) {
    throw new Refusal(421, 'loopback.host', t`This server answers only to its own address.`);
  }
  if (headers.origin !== undefined && headers.origin !== `http://${headers.host}`) {
    throw new Refusal(403, 'loopback.origin', t`This server answers only to its own pages.`);
  }
  if (!['same-origin', 'none', undefined].includes(headers['sec-fetch-site'] as string | undefined)) {
    throw new Refusal(403, 'loopback.site', t`This server answers only to its own pages.`);
  }
}

/** Holds for calls. Throws `Refusal`. */
export function requireCaller({ method, headers }: IncomingMessage, token: string): void {
  if (method !== 'POST') throw new Refusal(405, 'loopback.method', t`Calls are made with POST.`);
  if (!isToken(headers[TOKEN_HEADER], token)) {
    throw new Refusal(
      401,
      'loopback.token',
      t`The address of this page lacks the right token. Start the program again and use the address it gives.`,
    );
  }
  if (!/^application\/json(;\s*charset=utf-8)?$/i.test(headers['content-type'] ?? '')) {
    throw new Refusal(415, 'loopback.contentType', t`Calls are made with JSON.`);
  }
}

/** Compares digests, which have one length, in a time that does not tell how much was right. */
function isToken(given: string | string[] | undefined, token: string): boolean {
  return typeof given === 'string' && timingSafeEqual(digest(given), digest(token));
}

function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}
