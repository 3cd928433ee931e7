/** SVGs that carry what they are set in: of each typeface the letters that the drawing has, so that it looks the same everywhere. */

import type { Font, Glyph } from 'fontkit';
import type { FontWeight, Primitive, Sheet, TextPrimitive } from '#model/drawing/primitives.ts';
import type { SvgLettering } from '#model/drawing/to-svg.ts';
import { subsetFont, type KernPair } from './font-subset.ts';
import { loadFaces, runsOf, runWidth, wordsOf, type Face, type Faces, type Run } from './fonts.ts';

/** The names of what is carried: not the typefaces' own, so that a whole one that is installed comes after it. */
const CARRIED = ['Standlines Sheet', 'Standlines Sheet Wide'] as const;
const INSTALLED = ['Atkinson Hyperlegible Next', 'DejaVu Sans'] as const;

interface SheetLettering {
  readonly lettering: SvgLettering;
  /** Characters that no typeface has, each once; boxes stand for them. */
  readonly missing: ReadonlySet<string>;
}

/** For the texts of one sheet, and no others. */
export function letteringOf(sheet: Sheet, faces: Faces = loadFaces()): SheetLettering {
  const used = new Map<Face, Set<string>>();
  const missing = new Set<string>();
  for (const { text, weight } of textsOf(sheet.children)) {
    const cut = runsOf(faces, text, weight);
    cut.missing.forEach((character) => missing.add(character));
    for (const run of cut.runs) noteRun(used, run);
  }
  const weights: FontWeight[] = ['regular', 'bold'];
  const style = weights.flatMap((weight) =>
    faces[weight].map((face, which) =>
      ruleFor(used.get(face), { face, weight, family: CARRIED[which] ?? '' }),
    ),
  );
  const set: SvgLettering['set'] = (text, weight) => {
    const { runs } = runsOf(faces, text, weight);
    return {
      width: runs.reduce((sum, run) => sum + runWidth(run), 0),
      runs: runs.map((run) => ({ text: run.text, families: familiesOf(faces[weight].indexOf(run.face)) })),
    };
  };
  return { lettering: { families: familiesOf(0), style: style.join(''), set }, missing };
}

/** What is carried first; then, for programs that take no typeface from a drawing, what may be installed. */
function familiesOf(which: number): string {
  const order = which === 0 ? [0, 1] : [1, 0];
  const names = [...order.map((each) => CARRIED[each]), ...order.map((each) => INSTALLED[each])];
  return [...names.map((name) => `'${name}'`), 'sans-serif'].join(', ');
}

function* textsOf(children: readonly Primitive[]): Generator<TextPrimitive> {
  for (const child of children) {
    if (child.kind === 'text') yield child;
    else if (child.kind === 'group') yield* textsOf(child.children);
  }
}

/** The words that a face sets. */
type Words = ReadonlySet<string>;

interface Rule {
  readonly face: Face;
  readonly weight: FontWeight;
  readonly family: string;
}

/** A face as a rule of a style sheet; empty when nothing is set in it. */
function ruleFor(words: Words | undefined, { face, weight, family }: Rule): string {
  if (!words) return '';
  const { codePoints, pairs } = lettersOf(face, words);
  if (codePoints.size === 0) return '';
  const subset = subsetFont({ face, family, isBold: weight === 'bold', codePoints, pairs });
  const data = `data:font/ttf;base64,${Buffer.from(subset).toString('base64')}`;
  const look = `font-family:'${family}';font-weight:${CSS_WEIGHT[weight]}`;
  return `@font-face{${look};src:url(${data})}`;
}

const CSS_WEIGHT: Readonly<Record<FontWeight, number>> = { regular: 400, bold: 700 };

interface Letters {
  readonly codePoints: Set<number>;
  readonly pairs: Map<string, KernPair>;
}

/**
 * What a subset needs to set the words as the PDF has them. Letters that change with their neighbours, as in Arabic, are left
 * out: whoever looks at the drawing has a typeface that joins them, which a subset without such rules would not.
 */
function lettersOf({ font }: Face, words: Words): Letters {
  const letters: Letters = { codePoints: new Set(), pairs: new Map() };
  for (const word of words) {
    const points = Array.from(word, (character) => character.codePointAt(0) ?? 0);
    const { glyphs, positions } = font.layout(word);
    const isJoined = glyphs.length === points.length && !isPlain(font, glyphs, points);
    if (isJoined) continue;
    for (const point of points) letters.codePoints.add(point);
    if (glyphs.length !== points.length) continue;
    glyphs.forEach((glyph, index) => {
      const units = (positions[index]?.xAdvance ?? 0) - glyph.advanceWidth;
      const [left, right] = [points[index], points[index + 1]];
      if (units !== 0 && left !== undefined && right !== undefined)
        letters.pairs.set(`${left} ${right}`, { left, right, units });
    });
  }
  return letters;
}

function isPlain(font: Font, glyphs: readonly Glyph[], points: readonly number[]): boolean {
  return glyphs.every(({ id }, index) => id === font.glyphForCodePoint(points[index] ?? 0).id);
}

function noteRun(used: Map<Face, Set<string>>, { face, text }: Run): void {
  const words = used.get(face) ?? new Set();
  used.set(face, words);
  for (const word of wordsOf(text)) words.add(word);
}
