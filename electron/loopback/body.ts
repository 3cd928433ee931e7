/** The body of a call. */

import type { IncomingMessage } from 'node:http';
import * as v from 'valibot';
import { t } from '#model/words/say.ts';
import { Refusal } from './refusal.ts';

/** Room for the largest document (64 MB) with its escapes. */
export const LARGEST_BODY = 80 * 1024 * 1024;

const CALL = v.strictObject({ args: v.array(v.unknown()) });

/** The arguments of a call, of any form. Throws `Refusal`; rejects when the connection breaks. */
export async function readArguments(request: IncomingMessage): Promise<unknown[]> {
  const call = v.safeParse(CALL, parse(await readBody(request)));
  if (call.success) return call.output.args;
  throw new Refusal(400, 'loopback.body', t`A call is {"args": [...]}.`);
}

/**
 * Past the limit nothing more is kept, but the rest is let in: a browser that is cut off while it sends never reads
 * why. The server's time limit ends what never ends.
 */
async function readBody(request: IncomingMessage): Promise<Buffer> {
  let chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size <= LARGEST_BODY) chunks.push(chunk);
    else chunks = [];
  }
  if (size > LARGEST_BODY) throw new Refusal(413, 'loopback.tooLarge', t`That is too large.`);
  return Buffer.concat(chunks);
}

/** Undefined for what is no JSON in UTF-8. */
function parse(bytes: Buffer): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
}
