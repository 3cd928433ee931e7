/**
 * Reads lengths as people type them: "820", "2.4 m", "2,4 m", "7' 6\"", `2'-8 1/4"`, "2.4 m + 30 cm", "3 × 90 cm"; in
 * English and in German, whichever of the two is shown.
 */

import { language } from '#model/words/catalogue.ts';
import type { Units } from '#model/document/measures.ts';

export type LengthReading =
  | { readonly ok: true; readonly millimetres: number; readonly side: Side | null }
  | { readonly ok: false; readonly problem: 'unreadable' | 'wrongSide' };

/** A compass word of the stage after the figure: stage left and right, up- and downstage. */
export type Side = 'SL' | 'SR' | 'US' | 'DS';

const INCH = 25.4;

const UNIT_LENGTHS: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: INCH,
  '"': INCH,
  ft: 12 * INCH,
  "'": 12 * INCH,
};

/** One fraction, or figure with an optional fraction, and a unit: `7/8` or `2`, ` 1/4`, `"`. */
const TERM = /^(?:(\d+)\/(\d+)|(\d+(?:[.,]\d+)?|[.,]\d+)(?:\s+(\d+)\s*\/\s*(\d+))?)\s*(mm|cm|m|in|ft|"|')?/i;

/** So many times the length that follows, or that stands before: a figure alone, for a length times a length is none. */
const TIMES_BEFORE = /^(\d+(?:[.,]\d+)?)\s*[×x*·]\s*/i;
const TIMES_AFTER = /^([×x*·÷])\s*(\d+(?:[.,]\d+)?)\s*/i;

const SIDE = /\s*(SL|SR|US|DS|re|rechts|li|links|hi|hinten|vo|vorne?)\s*$/i;

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

/** A point before three digits parts thousands in German, where who is used to English means tenths. */
const MAYBE_THOUSANDS = /(?<![\d.,])[1-9]\d{0,2}\.\d{3}(?!\d)/;

const LONGEST = 60;

const UNREADABLE: LengthReading = { ok: false, problem: 'unreadable' };

/**
 * A figure without a unit counts as millimetres in metric documents and inches in imperial ones; between a foot
 * mark and an inch mark a hyphen joins and does not subtract. In German "2.400" is refused: nobody knows which is meant.
 */
export function readLength(typed: string, units: Units): LengthReading {
  if (typed.length > LONGEST || (language() === 'de' && MAYBE_THOUSANDS.test(typed))) return UNREADABLE;
  const side = SIDE.exec(typed);
  const sum = sumOfTerms(plainMarks(side ? typed.slice(0, side.index) : typed), units);
  if (sum === null || !Number.isFinite(sum)) return UNREADABLE;
  return { ok: true, millimetres: sum, side: SIDES[side?.[1]?.toLowerCase() ?? ''] ?? null };
}

/** Curly and prime marks as the plain ones, German units as the English; the hyphen of `2'-8"` as a space. */
function plainMarks(typed: string): string {
  return typed
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/[\u201c\u201d\u2033]/g, '"')
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/zoll/gi, 'in')
    .replace(/fu(?:ß|ss)/gi, 'ft')
    .replace(/'\s*-\s*(?=\d)/g, "' ");
}

function sumOfTerms(text: string, units: Units): number | null {
  let rest = text.trim();
  if (rest === '') return null;
  let sum = 0;
  for (let first = true; rest !== ''; first = false) {
    const mark = /^[+-]?/.exec(rest)?.[0] ?? '';
    if (!first && mark === '') return null;
    const summand = readSummand(rest.slice(mark.length).trim(), units, first);
    if (!summand) return null;
    sum += mark === '-' ? -summand.value : summand.value;
    rest = summand.rest;
  }
  return sum;
}

interface Summand {
  readonly value: number;
  /** What follows it, from the next sign on. */
  readonly rest: string;
}

/** One length, many times or a part of it: `3 × 7' 6" ÷ 2`. */
function readSummand(text: string, units: Units, first: boolean): Summand | null {
  const before = TIMES_BEFORE.exec(text);
  const times = before ? numberOf(before[1] ?? '') : 1;
  let rest = text.slice(before?.[0].length ?? 0);
  let length = 0;
  let unitBefore: string | null = null;
  do {
    const term = TERM.exec(rest);
    if (!term || (unitBefore !== null && !continuesFeet(unitBefore))) return null;
    const [whole, aloneOver, aloneUnder, figure = '0', over, under, unit] = term;
    // Some write 8-1/4 for eight and a quarter: nothing is taken away there, and nothing guessed.
    if (aloneOver && !first && unitBefore === null) return null;
    const value = numberOf(figure) + fraction(aloneOver ?? over, aloneUnder ?? under);
    length += value * lengthOfUnit(unit ?? impliedUnit(unitBefore, units));
    unitBefore = (unit ?? '').toLowerCase();
    rest = rest.slice(whole.length).trim();
  } while (rest !== '' && !/^[+\-×x*·÷]/i.test(rest));
  const after = timesAfter(rest);
  return { value: times * length * after.times, rest: after.rest };
}

function timesAfter(text: string): { readonly times: number; readonly rest: string } {
  let [times, rest] = [1, text];
  for (let match = TIMES_AFTER.exec(rest); match; match = TIMES_AFTER.exec(rest)) {
    const factor = numberOf(match[2] ?? '');
    times *= match[1] === '÷' ? 1 / factor : factor;
    rest = rest.slice(match[0].length);
  }
  return { times, rest };
}

/** Only inches may follow feet without a sign between them. */
function continuesFeet(unitBefore: string | null): boolean {
  return unitBefore === "'" || unitBefore === 'ft';
}

function impliedUnit(unitBefore: string | null, units: Units): string {
  if (continuesFeet(unitBefore)) return 'in';
  return units === 'metric' ? 'mm' : 'in';
}

function lengthOfUnit(unit: string): number {
  return UNIT_LENGTHS[unit.toLowerCase()] ?? Number.NaN;
}

function numberOf(figure: string): number {
  return Number(figure.replace(',', '.'));
}

function fraction(over: string | undefined, under: string | undefined): number {
  return over && under ? Number(over) / Number(under) : 0;
}

export interface Axis {
  readonly positive: Side;
  readonly negative: Side;
}

export const ACROSS: Axis = { positive: 'SL', negative: 'SR' };
export const DEPTH: Axis = { positive: 'US', negative: 'DS' };

/**
 * A coordinate with its side: "820 SR" is -820 across. Without a side the figure's own sign counts, and without a sign
 * it stays on the side where it is `now`; a side of the other axis is refused.
 */
export function readCoordinate(typed: string, units: Units, axis: Axis, now = 0): LengthReading {
  const centred = AT_NOUGHT.test(typed) ? '0' : typed;
  const reading = readLength(centred, units);
  if (!reading.ok) return reading;
  if (reading.side === null) {
    const isSigned = /^\s*[+\-−]/.test(typed);
    return now < 0 && !isSigned ? { ...reading, millimetres: -reading.millimetres || 0 } : reading;
  }
  if (reading.side === axis.positive) return reading;
  if (reading.side === axis.negative) return { ...reading, millimetres: -reading.millimetres };
  return { ok: false, problem: 'wrongSide' };
}
