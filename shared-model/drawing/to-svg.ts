/** A sheet as an SVG document: millimetres, foreign text escaped, the same painting order as everywhere. */

import { language } from '../words/catalogue.ts';
import type {
  FontWeight,
  GroupPrimitive,
  PathItem,
  PathPrimitive,
  Primitive,
  Sheet,
  TextPrimitive,
} from './primitives.ts';

/** What texts are set in where the drawing is looked at. Families are lists as in a style sheet. */
export interface SvgLettering {
  /** Of all texts for which nothing else is said. */
  readonly families: string;
  /** Rules for a style sheet: the typefaces that the drawing carries. */
  readonly style: string;
  readonly set: (text: string, weight: FontWeight) => SetText;
}

interface SetText {
  /** At font size 1: whatever a viewer sets it in, it gets no wider. */
  readonly width: number;
  readonly runs: readonly { readonly text: string; readonly families: string }[];
}

/** The typefaces by name alone; a viewer without them takes its own. */
const INSTALLED: SvgLettering = {
  families: "'Atkinson Hyperlegible Next', 'DejaVu Sans', sans-serif",
  style: '',
  set: (text) => ({ width: 0, runs: [{ text, families: INSTALLED.families }] }),
};

interface Painting {
  readonly clips: string[];
  readonly lettering: SvgLettering;
}

export function sheetToSvg(sheet: Sheet, lettering: SvgLettering = INSTALLED): string {
  const clips: string[] = [];
  const painting: Painting = { clips, lettering };
  const body = sheet.children.map((child) => primitiveToSvg(child, painting)).join('');
  const [width, height] = [number(sheet.width), number(sheet.height)];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>\n',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" `,
    `viewBox="0 0 ${width} ${height}" font-family="${escaped(lettering.families)}" role="img" xml:lang="${language()}">`,
    `<title>${escaped(sheet.title)}</title>`,
    lettering.style === '' ? '' : `<style>${escaped(lettering.style)}</style>`,
    clips.length > 0 ? `<defs>${clips.join('')}</defs>` : '',
    body,
    '</svg>\n',
  ].join('');
}

function primitiveToSvg(primitive: Primitive, painting: Painting): string {
  if (primitive.kind === 'path') return pathToSvg(primitive);
  if (primitive.kind === 'text') return textToSvg(primitive, painting.lettering);
  return groupToSvg(primitive, painting);
}

function groupToSvg({ children, subject, clip, description }: GroupPrimitive, painting: Painting): string {
  const attributes = [
    subject === undefined ? '' : ` data-subject="${escaped(subject)}"`,
    clip === undefined ? '' : ` clip-path="url(#${addClip(clip, painting.clips)})"`,
  ];
  const title = description === undefined ? '' : `<title>${escaped(description)}</title>`;
  const inner = children.map((child) => primitiveToSvg(child, painting)).join('');
  return `<g${attributes.join('')}>${title}${inner}</g>`;
}

function addClip(clip: { x: number; y: number; width: number; height: number }, clips: string[]): string {
  const id = `clip${clips.length + 1}`;
  const box = `x="${number(clip.x)}" y="${number(clip.y)}" width="${number(clip.width)}" height="${number(clip.height)}"`;
  clips.push(`<clipPath id="${id}"><rect ${box}/></clipPath>`);
  return id;
}

function pathToSvg({ path, fill, stroke }: PathPrimitive): string {
  if (path.length === 0 || (!fill && !stroke)) return '';
  const pen = stroke
    ? ` stroke="${escaped(stroke.colour)}" stroke-width="${number(stroke.width)}" stroke-linecap="round" stroke-linejoin="round"` +
      (stroke.dash ? ` stroke-dasharray="${stroke.dash.map(number).join(' ')}"` : '')
    : '';
  return `<path d="${path.map(itemToSvg).join('')}" fill="${fill ? escaped(fill) : 'none'}"${pen}/>`;
}

function itemToSvg(item: PathItem): string {
  const [letter, ...numbers] = item;
  return letter + numbers.map(number).join(' ');
}

function textToSvg(
  { text, x, y, size, weight, anchor, colour, turn }: TextPrimitive,
  { families, set }: SvgLettering,
): string {
  const { width, runs } = set(text, weight);
  const rotation = turn ? ` transform="rotate(${number(turn)} ${number(x)} ${number(y)})"` : '';
  const place = `x="${number(x)}" y="${number(y)}" font-size="${number(size)}"`;
  const look = `font-weight="${weight === 'bold' ? 700 : 400}" text-anchor="${anchor}" fill="${escaped(colour)}"`;
  const length = width > 0 ? ` textLength="${number(width * size)}" lengthAdjust="spacingAndGlyphs"` : '';
  const inner = runs.map((run) =>
    run.families === families
      ? escaped(run.text)
      : `<tspan font-family="${escaped(run.families)}">${escaped(run.text)}</tspan>`,
  );
  return `<text ${place} ${look}${length}${rotation} xml:space="preserve">${inner.join('')}</text>`;
}

/** Thousandths of a millimetre are enough, and no exponents. */
function number(value: number): string {
  if (!Number.isFinite(value)) throw new Error('a drawing holds a number that is not finite');
  return String(Math.round(value * 1000) / 1000 || 0);
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Also drops what XML 1.0 cannot hold at all: most controls and lone surrogates. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replace(/[&<>"']/g, (character) => ESCAPES[character] ?? character);
}
