/**
 * Reads directions as people type them and as the program shows them: "20 SR", "40° towards SL", "upstage", "house"; in
 * English and in German ("20 li", "40° nach re", "nach hinten", "Saal"), whichever of the two is shown.
 */

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
  'gerade zum saal': 0,
  saal: 0,
  publikum: 0,
  vorn: 0,
  vo: 0,
  hinten: 180,
  hi: 180,
  // As seen from the house.
  rechts: 90,
  re: 90,
  links: -90,
  li: -90,
};

const LONGEST = 60;
const HALF_TURN = 180;

/** A sign, a figure, the word or mark for degrees, and the side it is turned to. */
const FIGURE =
  /^([+-]?)\s*(\d+(?:[.,]\d+)?|[.,]\d+)\s*(?:°|deg|degrees|grad)?\s*(?:(?:towards|to|nach)?\s*(sl|sr|stage left|stage right|re|li|rechts|links))?$/;

/** Bare numbers are degrees from straight at the house, positive towards stage left; a side takes the sign's place. */
export function readFacing(typed: string): FacingReading {
  if (typed.length > LONGEST) return unreadable();
  const plain = typed
    .trim()
    .toLowerCase()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\s*\(vom saal\)$/, '')
    .replace(/\s+/g, ' ');
  const named = WORDS[plain.replace(/^(towards|nach|zum) /, '')];
  if (named !== undefined) return { ok: true, facing: named };
  const [, sign, figure, side] = FIGURE.exec(plain) ?? [];
  if (figure === undefined || (side && sign)) return unreadable();
  const degrees = Number(figure.replace(',', '.'));
  if (!(degrees <= HALF_TURN)) return { ok: false, problem: 'beyondHalfTurn' };
  const isToStageRight = sign === '-' || (side !== undefined && WORDS[side] === -90);
  return { ok: true, facing: (isToStageRight ? -degrees : degrees) + 0 };
}

/** As it is shown everywhere else; with a tenth of a degree where it has one. */
export function facingWords(facing: Degrees): string {
  return formatFacing(facing, 1);
}

function unreadable(): FacingReading {
  return { ok: false, problem: 'unreadable' };
}
