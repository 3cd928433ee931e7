/** Contents that tell whether they are whole: a digest, then what it is the digest of. */

import { createHash } from 'node:crypto';

const SIZE = 3_000_000;

export function contentOf(round: number): Buffer {
  const body = Buffer.alloc(SIZE + (round % 7) * 1000, `round ${round}, `);
  return Buffer.concat([Buffer.from(digest(body)), body]);
}

export function isWhole(bytes: Buffer): boolean {
  return bytes.length > 64 && bytes.subarray(0, 64).toString() === digest(bytes.subarray(64));
}

function digest(bytes: Buffer): string {
  return createHash('sha256').update(bytes).digest('hex');
}
