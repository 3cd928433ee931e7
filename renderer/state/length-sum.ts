/** The arithmetic of typed lengths: `3 × 7' 6" ÷ 2 + 30 cm`. */

import type { Units } from '#model/document/measures.ts';
import { atMost } from '#model/words/numbers.ts';
import { figureAt } from './figure.ts';

/** A part of the text that may mean two things, and how to write either without a doubt. */
export interface Doubt {
  readonly from: number;
  readonly to: number;
  readonly readings: readonly [string, string];
}

type Unit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

const LENGTHS: Readonly<Record<Unit, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 12 * 25.4 };

const UNITS: readonly (readonly [Unit, RegExp])[] = [
  ['mm', /^(?:mm|millimet(?:re|er)s?n?)(?!\p{L})/iu],
  ['cm', /^(?:cm|(?:c|z)entimet(?:re|er)s?n?)(?!\p{L})/iu],
  ['m', /^(?:m|met(?:re|er)s?n?)(?!\p{L})/iu],
  ['in', /^(?:"|(?:in|inch|inches|zoll)(?!\p{L}))/iu],
  ['ft', /^(?:'|(?:ft|foot|feet|fuß|fuss)(?!\p{L}))/iu],
];

/** What is being read, and how far it has been. */
interface Scan {
  readonly text: string;
  readonly units: Units;
  at: number;
  doubt: Doubt | null;
}

/** Millimetres; null: not to be read. The first doubt that there is is told besides. */
export function sumOf(
  text: string,
  units: Units,
): { readonly sum: number | null; readonly doubt: Doubt | null } {
  const hyphen = hyphenDoubt(text, units);
  if (hyphen) return { sum: 0, doubt: hyphen };
  const scan: Scan = { text, units, at: 0, doubt: null };
  const sum = text === '' ? null : readSum(scan);
  return { sum, doubt: scan.doubt };
}

/**
 * Some write 8-1/4 for eight and a quarter and 7-6 for seven feet six, and with spaces nobody knows whether a hyphen
 * behind a foot mark joins or subtracts.
 */
function hyphenDoubt(text: string, units: Units): Doubt | null {
  const whole = (one: string, other: string): Doubt => ({ from: 0, to: text.length, readings: [one, other] });
  const [, number = '', part, mark] = /^(\d+)-(\d+\/\d+)\s*("|in)?$/.exec(text) ?? [];
  if (part !== undefined && (mark !== undefined || units === 'imperial'))
    return whole(`${number} ${part}"`, `${number}" - ${part}"`);
  const [, feet = '', inches] = /^(\d+)-(\d|1[01])$/.exec(text) ?? [];
  if (inches !== undefined && units === 'imperial')
    return whole(`${feet}' ${inches}"`, `${feet}" - ${inches}"`);
  const [, before = '', after] = /^(\d+)'\s*-\s*(\d+(?:\s+\d+\/\d+)?)"?$/.exec(text) ?? [];
  return after === undefined ? null : whole(`${before}' ${after}"`, `${before} ft - ${after} in`);
}

function readSum(scan: Scan): number | null {
  let sum = 0;
  for (let first = true; first || rest(scan) !== ''; first = false) {
    const sign = taken(scan, /^[+-]/);
    if (!first && sign === null) return null;
    // 1' 8-1/4" takes nothing away, and nothing is guessed.
    const isTight = /\d-$/.test(scan.text.slice(0, scan.at)) && /^\d/.test(scan.text.slice(scan.at));
    if (isTight && fractionAt({ ...scan }) !== null) return null;
    const summand = readSummand(scan);
    if (summand === null) return null;
    sum += sign === '-' ? -summand : summand;
  }
  return sum;
}

/** One length, many times or a part of it. A factor is a figure alone, for a length times a length is none. */
function readSummand(scan: Scan): number | null {
  const times = factorBefore(scan);
  const length = readLengths(scan);
  if (length === null) return null;
  let product = times * length;
  for (let sign = taken(scan, /^[×x*·÷/]/i); sign !== null; sign = taken(scan, /^[×x*·÷/]/i)) {
    const factor = readFactor(scan);
    if (factor === null) return null;
    product *= sign === '÷' || sign === '/' ? 1 / factor : factor;
  }
  return product;
}

function factorBefore(scan: Scan): number {
  const start = scan.at;
  const factor = readFactor(scan);
  if (factor !== null && taken(scan, /^[×x*·]/i) !== null) return factor;
  scan.at = start;
  return 1;
}

/** One that may be thousands or thousandths is none. */
function readFactor(scan: Scan): number | null {
  const figure = figureAt(rest(scan));
  if (!figure || figure.otherwise !== null) return null;
  scan.at = startOf(scan) + figure.length;
  return figure.value;
}

/** Lengths that follow one another without a sign, each in a smaller unit than the one before: 2 m 30 cm, 7' 6". */
function readLengths(scan: Scan): number | null {
  let sum = 0;
  let before: Unit | null = null;
  do {
    const term = readTerm(scan, before);
    if (!term) return null;
    sum += term.millimetres;
    before = term.unit;
  } while (/^[\d.,]/.test(rest(scan)));
  return sum;
}

interface Term {
  readonly millimetres: number;
  readonly unit: Unit;
}

/** What may follow without a sign. */
const SMALLER: Readonly<Record<Unit, readonly Unit[]>> = {
  m: ['cm', 'mm'],
  cm: ['mm'],
  ft: ['in'],
  mm: [],
  in: [],
};

function readTerm(scan: Scan, before: Unit | null): Term | null {
  const from = startOf(scan);
  const figure = readFigure(scan);
  if (!figure) return null;
  const typed = unitAt(scan);
  const unit = typed ?? impliedUnit(scan, figure, before, from);
  if (unit === null || (before !== null && !SMALLER[before].includes(unit))) return null;
  doubtFigure(scan, { ...figure, from, unit, isBare: typed === null && before === null });
  return { millimetres: figure.value * LENGTHS[unit], unit };
}

interface Read {
  readonly value: number;
  readonly otherwise: number | null;
  /** As it is written. */
  readonly text: string;
}

/** A figure, a fraction, or both: `2`, `7/8`, `2 1/4`. */
function readFigure(scan: Scan): Read | null {
  const from = startOf(scan);
  const alone = fractionAt(scan);
  if (alone !== null) return { value: alone, otherwise: null, text: scan.text.slice(from, scan.at) };
  const figure = figureAt(rest(scan));
  if (!figure) return null;
  scan.at = startOf(scan) + figure.length;
  const spaced = /^\s/.test(scan.text.slice(scan.at));
  const part = spaced ? fractionAt(scan) : null;
  const text = scan.text.slice(from, scan.at);
  return { value: figure.value + (part ?? 0), otherwise: part === null ? figure.otherwise : null, text };
}

function fractionAt(scan: Scan): number | null {
  const [all, over, under] = /^(\d+)\s*\/\s*(\d+)(?![\d.,])/.exec(rest(scan)) ?? [];
  if (all === undefined) return null;
  scan.at = startOf(scan) + all.length;
  return Number(over) / Number(under);
}

function unitAt(scan: Scan): Unit | null {
  for (const [unit, pattern] of UNITS) if (taken(scan, pattern) !== null) return unit;
  return null;
}

/** Of a figure without one. Behind metres two digits are centimetres and three millimetres; one may be either. */
function impliedUnit(scan: Scan, { value, text }: Read, before: Unit | null, from: number): Unit | null {
  if (before === null) return scan.units === 'metric' ? 'mm' : 'in';
  if (before === 'ft') return value < 12 ? 'in' : null;
  const digits = /^\d+/.exec(text)?.[0].length ?? 0;
  if (before === 'cm') return digits === 1 ? 'mm' : null;
  if (before !== 'm') return null;
  if (digits === 1) doubt(scan, from, [`${text} cm`, `${text}0 cm`]);
  if (digits > 3) return null;
  return digits === 3 ? 'mm' : 'cm';
}

/** Below this a bare figure with decimals is more likely metres than parts of a millimetre. */
const LIKELY_METRES = 200;

interface Told extends Read {
  readonly from: number;
  readonly unit: Unit;
  readonly isBare: boolean;
}

function doubtFigure(scan: Scan, { value, otherwise, from, unit, isBare }: Told): void {
  const as = (figure: number, of: Unit): string => `${atMost(figure, 6)} ${of}`;
  if (otherwise !== null) {
    const thousands = Math.max(value, otherwise);
    const isThousands = value === thousands;
    // Nobody means thousandths of a millimetre, nor thousands of anything longer; where the language agrees, it is clear.
    if (isThousands === (unit === 'mm')) return;
    const small = Math.min(value, otherwise);
    return doubt(scan, from, [as(small, unit), as(thousands, unit)]);
  }
  if (isBare && unit === 'mm' && !Number.isInteger(value) && value < LIKELY_METRES)
    doubt(scan, from, [as(value, 'm'), as(value, 'mm')]);
}

function doubt(scan: Scan, from: number, readings: readonly [string, string]): void {
  scan.doubt ??= { from, to: scan.at, readings };
}

/** What follows, without the space before it. */
function rest(scan: Scan): string {
  return scan.text.slice(startOf(scan));
}

function startOf({ text, at }: Scan): number {
  return at + (/^\s*/.exec(text.slice(at))?.[0].length ?? 0);
}

function taken(scan: Scan, pattern: RegExp): string | null {
  const found = pattern.exec(rest(scan))?.[0];
  if (found === undefined) return null;
  scan.at = startOf(scan) + found.length;
  return found;
}
