/** Reads directions as people type them and as the program shows them: "20 SR", "40° towards SL", "upstage", "house". */

import { formatFacing } from '#model/document/measures.ts';
import type { Degrees } from '#model/document/records.ts';

export type FacingReading =
  | { readonly ok: true; readonly facing: Degrees }
  | { readonly ok: false; readonly problem: 'unreadable' | 'beyondHalfTurn' };

const WORDS: Readonly<Record<string, Degrees>> = {
  'straight at the house': 0,
  'at the house': 0,
  'the house': 0,
  house: 0,
  audience: 0,
  downstage: 0,
  ds: 0,
  upstage: 180,
  us: 180,
  'stage left': 90,
  sl: 90,
  'stage right': -90,
  sr: -90,
};

const LONGEST = 60;
const HALF_TURN = 180;

/** A sign, a figure, the word or mark for degrees, and the side it is turned to. */
const FIGURE =
  /^([+-]?)\s*(\d+(?:[.,]\d+)?|[.,]\d+)\s*(?:°|deg|degrees)?\s*(?:(?:towards|to)?\s*(sl|sr|stage left|stage right))?$/;

/** Bare numbers are degrees from straight at the house, positive towards stage left; a side takes the sign's place. */
export function readFacing(typed: string): FacingReading {
  if (typed.length > LONGEST) return unreadable();
  const plain = typed
    .trim()
    .toLowerCase()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\s+/g, ' ');
  const named = WORDS[plain.replace(/^towards /, '')];
  if (named !== undefined) return { ok: true, facing: named };
  const [, sign, figure, side] = FIGURE.exec(plain) ?? [];
  if (figure === undefined || (side && sign)) return unreadable();
  const degrees = Number(figure.replace(',', '.'));
  if (!(degrees <= HALF_TURN)) return { ok: false, problem: 'beyondHalfTurn' };
  const isToTheRight = sign === '-' || side === 'sr' || side === 'stage right';
  return { ok: true, facing: (isToTheRight ? -degrees : degrees) + 0 };
}

/** As it is shown everywhere else; with a tenth of a degree where it has one. */
export function facingWords(facing: Degrees): string {
  return formatFacing(facing, 1);
}

function unreadable(): FacingReading {
  return { ok: false, problem: 'unreadable' };
}
