/** Jumps that are only printed in words. Source of the words: common practice, no source. */

import type { JumpKind } from '../score.ts';

const DA_CAPO = /(?<!\p{L})(?:da\s+capo|d\s?\.\s*c(?!\p{L})|dc(?!\p{L}))/iu;
const DAL_SEGNO = /(?<!\p{L})(?:dal\s+segno|d\s?\.\s*s(?!\p{L})|ds(?!\p{L}))/iu;
const FINE = /^[^\p{L}]*fine[^\p{L}]*$/iu;
const TO_CODA = /(?<!\p{L})to\s+(?:the\s+)?coda(?!\p{L})/iu;
const CODA = /^[^\p{L}]*coda[^\p{L}]*$/iu;
const TRIO = /^[^\p{L}]*trio(?!\p{L})/iu;

/** The jump that a direction's words mean; null: none. */
export function jumpInWords(text: string): JumpKind | null {
  if (DA_CAPO.test(text)) return 'dacapo';
  if (DAL_SEGNO.test(text)) return 'dalsegno';
  if (TO_CODA.test(text)) return 'tocoda';
  if (FINE.test(text)) return 'fine';
  return CODA.test(text) ? 'coda' : null;
}

export function isTrio(text: string): boolean {
  return TRIO.test(text);
}

/** Where words such as "D.C. al Fine" say that the jump leads; null: they do not. */
export function destinationInWords(text: string): 'fine' | 'coda' | null {
  if (/(?<!\p{L})coda(?!\p{L})/iu.test(text)) return 'coda';
  return /(?<!\p{L})fine(?!\p{L})/iu.test(text) ? 'fine' : null;
}
