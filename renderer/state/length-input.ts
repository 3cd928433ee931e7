/**
 * Reads lengths as people type them: "820", "1 200", "2.4 m", "2,4 m", "2 m 30", "7' 6\"", `2'-8 1/4"`, "½ in",
 * "2.4 m + 30 cm", "3 × 90 cm"; in English and in German, whichever of the two is shown. What may mean two things is
 * not guessed at: both are offered.
 */

import type { Units } from '#model/document/measures.ts';
import { sumOf, type Doubt } from './length-sum.ts';

export type LengthReading =
  | { readonly ok: true; readonly millimetres: number; readonly side: Side | null }
  | { readonly ok: false; readonly problem: 'unreadable' | 'wrongSide' }
  /** The two ways to write it that leave no doubt. */
  | { readonly ok: false; readonly problem: 'ambiguous'; readonly readings: readonly [string, string] };

/** A compass word of the stage after the figure: stage left and right, up- and downstage. */
export type Side = 'SL' | 'SR' | 'US' | 'DS';

const SIDE = /\s*(?<![\p{L}])(SL|SR|US|DS|re|rechts|li|links|hi|hinten|vo|vorne?)\s*$/iu;

/** German tells sides as seen from the house: stage left is on the right. */
const SIDES: Readonly<Record<string, Side>> = {
  sl: 'SL',
  re: 'SL',
  rechts: 'SL',
  sr: 'SR',
  li: 'SR',
  links: 'SR',
  us: 'US',
  hi: 'US',
  hinten: 'US',
  ds: 'DS',
  vo: 'DS',
  vorn: 'DS',
  vorne: 'DS',
};

const AT_NOUGHT = /^\s*(on centre|at edge|auf der Mitte|an der Kante)\s*$/i;

const LONGEST = 60;

const UNREADABLE: LengthReading = { ok: false, problem: 'unreadable' };

/**
 * A figure without a unit counts as millimetres in metric documents and inches in imperial ones; between a foot
 * mark and an inch mark a hyphen joins and does not subtract.
 */
export function readLength(typed: string, units: Units): LengthReading {
  if (typed.length > LONGEST) return UNREADABLE;
  const side = SIDE.exec(typed);
  const text = plainMarks(side ? typed.slice(0, side.index) : typed);
  const { sum, doubt } = sumOf(text, units);
  if (sum === null || !Number.isFinite(sum)) return UNREADABLE;
  if (doubt) return doubted(text, doubt, side?.[1] ?? null);
  return { ok: true, millimetres: sum, side: SIDES[side?.[1]?.toLowerCase() ?? ''] ?? null };
}

/** Both readings in full, so that either can be typed as it stands. */
function doubted(text: string, { from, to, readings }: Doubt, side: string | null): LengthReading {
  const written = (reading: string): string =>
    `${text.slice(0, from)}${reading}${text.slice(to)}${side === null ? '' : ` ${side}`}`;
  return { ok: false, problem: 'ambiguous', readings: [written(readings[0]), written(readings[1])] };
}

/** Curly and prime marks as the plain ones, ½ as 1/2, and the hyphen of `2'-8"` as a space. */
function plainMarks(typed: string): string {
  return typed
    .trim()
    .replace(
      /(\d?)([\u00bc-\u00be\u2150-\u215e])/g,
      (_, before: string, sign: string) =>
        `${before}${before && ' '}${sign.normalize('NFKD').replace('\u2044', '/')}`,
    )
    .replace(/[\u00b4\u2018\u2019\u2032]/g, "'")
    .replace(/[\u201c\u201d\u2033]|''/g, '"')
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\u2044/g, '/')
    .replace(/'-(?=\d+(?:\s+\d+\/\d+|\/\d+)?\s*(?:"|in|$|[+\-×*÷]))/g, "' ");
}

export interface Axis {
  readonly positive: Side;
  readonly negative: Side;
}

export const ACROSS: Axis = { positive: 'SL', negative: 'SR' };
export const DEPTH: Axis = { positive: 'US', negative: 'DS' };

/**
 * A coordinate with its side: "820 SR" is -820 across. Without a side the figure's own sign counts, and without a sign
 * it stays on the side where it is `now`; a side of the other axis is refused, and so is a side behind a minus.
 */
export function readCoordinate(typed: string, units: Units, axis: Axis, now = 0): LengthReading {
  const centred = AT_NOUGHT.test(typed) ? '0' : typed;
  const reading = readLength(centred, units);
  if (!reading.ok) return reading;
  const { side, millimetres } = reading;
  if (side === null) {
    const isSigned = /^\s*[+\-−–]/.test(typed);
    return now < 0 && !isSigned ? { ...reading, millimetres: -millimetres || 0 } : reading;
  }
  if (side !== axis.positive && side !== axis.negative) return { ok: false, problem: 'wrongSide' };
  if (millimetres < 0) return UNREADABLE;
  return side === axis.positive ? reading : { ...reading, millimetres: -millimetres || 0 };
}
