/** Making foreign text fit to print: one line, no controls, no wider than its box. */

import type { FontWeight, MeasureText, TextPrimitive } from './primitives.ts';

export interface Type {
  readonly size: number;
  readonly weight: FontWeight;
}

/** Text beyond this is cut before it is measured: nobody reads more of it on a plot. */
const LONGEST_LINE = 400;
const LONGEST_TEXT = 4000;
const LONGEST_WORD = 200;

const ELLIPSIS = '…';

/**
 * One line of printable text. Line breaks and tabs become spaces; controls, marks that turn the writing direction
 * of what follows, and other invisible characters go, for they could make a label say something else than it holds.
 */
export function oneLine(text: string): string {
  const cut = text.length > LONGEST_LINE ? `${text.slice(0, LONGEST_LINE)}${ELLIPSIS}` : text;
  return printable(cut);
}

/** The text, or as much of its beginning as fits into `width` with an ellipsis behind it; empty if nothing does. */
export function fitted(text: string, width: number, type: Type, measure: MeasureText): string {
  const whole = oneLine(text);
  if (measure(whole, type.size, type.weight) <= width) return whole;
  const letters = Array.from(whole);
  const shortened = (count: number): string => letters.slice(0, count).join('').trimEnd() + ELLIPSIS;
  let [low, high] = [0, letters.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (measure(shortened(middle), type.size, type.weight) <= width) low = middle;
    else high = middle - 1;
  }
  return low > 0 ? shortened(low) : '';
}

/**
 * Lines no wider than `width`, broken at spaces, and inside a word only when it is wider than a whole line. A figure
 * with its fraction, its unit and its side of the stage is one word: `2'-8 1/4" SL` is never torn.
 */
export function wrapped(text: string, width: number, type: Type, measure: MeasureText): string[] {
  const lines: string[] = [];
  for (const paragraph of text.slice(0, LONGEST_TEXT).split(/\r\n|[\n\r\u2028\u2029]/)) {
    wrapParagraph(printable(paragraph), width, (line) => measure(line, type.size, type.weight)).forEach(
      (line) => lines.push(line),
    );
  }
  return lines.length > 1 ? lines.filter((line) => line !== '') : lines;
}

export function textLine(
  text: string,
  at: { readonly x: number; readonly y: number },
  look: Type & { readonly colour: string; readonly anchor?: TextPrimitive['anchor']; readonly turn?: number },
): TextPrimitive {
  const { size, weight, colour, anchor = 'start', turn } = look;
  return {
    kind: 'text',
    text: withNamesApart(text),
    x: at.x,
    y: at.y,
    size,
    weight,
    anchor,
    colour,
    ...(turn === undefined || turn === 0 ? {} : { turn }),
  };
}

const FROM_RIGHT = String.raw`[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]`;
const NAME_THEN_FIGURE = new RegExp(String.raw`(?<=${FROM_RIGHT})(?=[^\p{L}\p{N}]*\p{Nd})`, 'gu');
/** Unseen, and counts as a letter written from the left. */
const FROM_LEFT = '\u200e';

/** In an English line a figure behind a name written from the right belongs to the line, not to the name. */
function withNamesApart(text: string): string {
  return /\p{Script=Latin}/u.test(text) ? text.replace(NAME_THEN_FIGURE, FROM_LEFT) : text;
}

function printable(text: string): string {
  return (
    text
      .replace(/\s+/gu, ' ')
      .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}]/gu, '')
      // A pile of accents would reach into the lines above.
      .replace(/(\p{M}{3})\p{M}+/gu, '$1')
      .replace(/ {2,}/g, ' ')
      .trim()
  );
}

function wrapParagraph(text: string, width: number, widthOf: (line: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words(text, width, widthOf).flatMap((part) => pieces(part, width, widthOf))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || widthOf(longer) <= width) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  lines.push(line);
  return lines;
}

/** Spaces within a figure: before the fraction of an inch, a unit, or the side it is measured to. */
const WITHIN_FIGURE =
  /(?<=\d) (?=\d\/\d")|(?<=[\d"]) (?=(?:SL|SR|US|DS|re|li|hi|vo|mm|m|s|%)(?![\p{L}\d]))/gu;
/** Holds the parts of a figure together; printable text has none. */
const TIE = '\u00a0';

/** The words of a text; a figure that would not fit on a line by itself is broken at its spaces after all. */
function words(text: string, width: number, widthOf: (line: string) => number): string[] {
  return unbreakable(text).flatMap((word) => (widthOf(word) <= width ? [word] : word.split(' ')));
}

/** What `wrapped` never breaks as long as a line has room for it. */
export function unbreakable(text: string): string[] {
  return text
    .replace(WITHIN_FIGURE, TIE)
    .split(' ')
    .map((word) => word.replaceAll(TIE, ' '));
}

/** A word too wide for any line, cut into pieces that fit; at least one letter each. */
function pieces(word: string, width: number, widthOf: (line: string) => number): string[] {
  if (word.length <= LONGEST_WORD && widthOf(word) <= width) return [word];
  const found: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && widthOf(piece + letter) > width) {
      found.push(piece);
      piece = '';
    }
    piece += letter;
  }
  if (piece !== '') found.push(piece);
  return found;
}
