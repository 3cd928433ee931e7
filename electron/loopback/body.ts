/** The body of a call. */

import type { IncomingMessage } from 'node:http';

/** Room for the largest document (64 MB) with its escapes. */
export const LARGEST_BODY = 80 * 1024 * 1024;

export type Body =
  { readonly kind: 'json'; readonly value: unknown } | { readonly kind: 'tooLarge' | 'notJson' };

/** Stops collecting as soon as the limit is passed. Rejects when the connection breaks. */
export async function readBody(request: IncomingMessage): Promise<Body> {
  if (Number(request.headers['content-length'] ?? 0) > LARGEST_BODY) return { kind: 'tooLarge' };
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > LARGEST_BODY) return { kind: 'tooLarge' };
    chunks.push(chunk);
  }
  return parse(Buffer.concat(chunks));
}

function parse(bytes: Buffer): Body {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { kind: 'json', value: JSON.parse(text) };
  } catch {
    return { kind: 'notJson' };
  }
}
