/** The typefaces of the drawings: which one has a glyph, and how wide a text is. */

import { create, type Font, type GlyphRun } from 'fontkit';
import { readFileSync } from 'node:fs';
import type { FontWeight, MeasureText } from '#model/drawing/primitives.ts';
import { visualPieces } from './bidi.ts';
import { fontFiles } from './font-files.ts';

/** A typeface in one weight. `name` is unique. */
export interface Face {
  readonly name: string;
  readonly font: Font;
  /** As it lies on the disk. */
  readonly file: Uint8Array;
}

/** The faces of a weight, the preferred one first. */
export type Faces = Readonly<Record<FontWeight, readonly [Face, Face]>>;

/** A stretch of text that one face can set. */
export interface Run {
  readonly face: Face;
  readonly text: string;
}

/** Stands visibly for a character that no face has. */
export const REPLACEMENT = '□';

let loaded: Faces | null = null;

/** Reads the font files once. */
export function loadFaces(): Faces {
  loaded ??= { regular: facesOf('regular'), bold: facesOf('bold') };
  return loaded;
}

/** Widths as the PDF painter sets them, kerning included. */
export function createMeasure(faces: Faces = loadFaces()): MeasureText {
  const known: Readonly<Record<FontWeight, Map<string, number>>> = { regular: new Map(), bold: new Map() };
  return (text, size, weight) => {
    const width = known[weight].get(text) ?? widthOf(faces, text, weight);
    keep(known[weight], text, width);
    return width * size;
  };
}

function widthOf(faces: Faces, text: string, weight: FontWeight): number {
  const [family] = faces[weight];
  let units = 0;
  for (const word of wordsOf(text)) {
    if (!hasAll(family, word)) return widthInRuns(faces, text, weight);
    units += wordUnits(family, word);
  }
  return units / family.font.unitsPerEm;
}

const complete = new WeakMap<Face, Map<string, boolean>>();

/** Whether a face sets a word alone, so that the text need not be looked at letter by letter. */
function hasAll(face: Face, word: string): boolean {
  const known = complete.get(face) ?? new Map<string, boolean>();
  complete.set(face, known);
  const told = known.get(word) ?? Array.from(word).every((each) => has(face, each));
  keep(known, word, told);
  return told;
}

function has({ font }: Face, character: string): boolean {
  return font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0);
}

function widthInRuns(faces: Faces, text: string, weight: FontWeight): number {
  return setRuns(faces, text, weight).runs.reduce((sum, run) => sum + runWidth(run), 0);
}

export interface Runs {
  readonly runs: readonly Run[];
  /** Characters that no face has; each was replaced by `REPLACEMENT`. */
  readonly missing: readonly string[];
}

/** Cuts a text into runs: each character from the preferred face that has it. */
export function runsOf(faces: Faces, text: string, weight: FontWeight): Runs {
  const runs: { face: Face; text: string }[] = [];
  const missing: string[] = [];
  for (const character of text) {
    const current = runs.at(-1);
    const face = faceFor(faces[weight], character, current?.face);
    if (!face && isUnseen(character)) continue;
    if (!face) missing.push(character);
    const chosen = face ?? faces[weight][1];
    const letter = face ? character : REPLACEMENT;
    if (current?.face === chosen) current.text += letter;
    else runs.push({ face: chosen, text: letter });
  }
  return { runs, missing };
}

/** The same in the order in which they are set from left to right, words that are written from the right turned round. */
export function setRuns(faces: Faces, text: string, weight: FontWeight): Runs {
  const cut = visualPieces(text).map((piece) => {
    const { runs, missing } = runsOf(faces, piece.text, weight);
    return { runs: piece.rightToLeft ? runs.toReversed() : runs, missing };
  });
  return { runs: cut.flatMap(({ runs }) => runs), missing: cut.flatMap(({ missing }) => missing) };
}

/** Marks of direction, joiners and the like have no shape of their own. */
function isUnseen(character: string): boolean {
  return /^\p{Default_Ignorable_Code_Point}$/u.test(character);
}

/** Width of a run at size 1. */
export function runWidth({ face, text }: Run): number {
  let units = 0;
  for (const word of wordsOf(text)) units += wordUnits(face, word);
  return units / face.font.unitsPerEm;
}

function facesOf(weight: FontWeight): readonly [Face, Face] {
  const files = fontFiles(weight);
  return [faceFrom(files.family), faceFrom(files.wide)];
}

function faceFrom(path: string): Face {
  const file = readFileSync(path);
  const font = create(file);
  if (!('layout' in font)) throw new Error(`${path} is a collection of fonts, not a font`);
  return { name: font.postscriptName, font: remembering(font), file };
}

/**
 * Lays each word out once, for whoever asks: it is measured and then set, in sheet after sheet. Everybody gets a copy of the
 * positions, as pdfkit scales them in place.
 */
function remembering(font: Font): Font {
  const known = new Map<string, GlyphRun>();
  const layOut = font.layout.bind(font);
  font.layout = (text, ...features) => {
    if (features.some((feature) => feature !== undefined)) return layOut(text, ...features);
    const run = known.get(text) ?? layOut(text);
    keep(known, text, run);
    const positions = run.positions.map((position) => ({ ...position }));
    return Object.assign(Object.create(Object.getPrototypeOf(run) as object) as GlyphRun, run, { positions });
  };
  return font;
}

/** Spaces and punctuation stay in the face of what is before them, so that a foreign name is one run. */
function faceFor(
  [family, wide]: readonly [Face, Face],
  character: string,
  current: Face | undefined,
): Face | null {
  const codePoint = character.codePointAt(0) ?? 0;
  if (current === wide && /[\s\p{P}]/u.test(character) && wide.font.hasGlyphForCodePoint(codePoint))
    return wide;
  return [family, wide].find((face) => face.font.hasGlyphForCodePoint(codePoint)) ?? null;
}

/** pdfkit lays a line out word by word, each with the space behind it; no kerning crosses that border. */
export function wordsOf(text: string): string[] {
  return text.split(/(?<= )/);
}

const widths = new WeakMap<Face, Map<string, number>>();

function wordUnits(face: Face, word: string): number {
  const known = widths.get(face) ?? new Map<string, number>();
  widths.set(face, known);
  const width = known.get(word);
  if (width !== undefined) return width;
  const measured = face.font.layout(word).advanceWidth;
  keep(known, word, measured);
  return measured;
}

const MOST_KEPT = 20_000;

/** Remembers a width; forgets all when a document turns out to be all different words. */
function keep<T>(known: Map<string, T>, text: string, width: T): void {
  if (known.size >= MOST_KEPT) known.clear();
  known.set(text, width);
}
