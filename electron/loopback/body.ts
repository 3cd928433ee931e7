/** The body of a call. */

import type { IncomingMessage } from 'node:http';

/** Room for the largest document (64 MB) with its escapes. */
export const LARGEST_BODY = 80 * 1024 * 1024;

export type Body =
  { readonly kind: 'json'; readonly value: unknown } | { readonly kind: 'tooLarge' | 'notJson' };

/**
 * Past the limit nothing more is kept, but the rest is let in: a browser that is cut off while it sends never reads
 * why. Rejects when the connection breaks or the server's time limit ends it.
 */
export async function readBody(request: IncomingMessage): Promise<Body> {
  let chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size <= LARGEST_BODY) chunks.push(chunk);
    else chunks = [];
  }
  return size > LARGEST_BODY ? { kind: 'tooLarge' } : parse(Buffer.concat(chunks));
}

function parse(bytes: Buffer): Body {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { kind: 'json', value: JSON.parse(text) };
  } catch {
    return { kind: 'notJson' };
  }
}
