/** A sheet as an SVG document: millimetres, foreign text escaped, the same painting order as everywhere. */

import type {
  GroupPrimitive,
  PathItem,
  PathPrimitive,
  Primitive,
  Sheet,
  TextPrimitive,
} from './primitives.ts';

/** The typefaces by name; a viewer without them takes its own. */
const FAMILIES = "'Atkinson Hyperlegible Next', 'DejaVu Sans', sans-serif";

export function sheetToSvg(sheet: Sheet): string {
  const clips: string[] = [];
  const body = sheet.children.map((child) => primitiveToSvg(child, clips)).join('');
  const [width, height] = [number(sheet.width), number(sheet.height)];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>\n',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" `,
    `viewBox="0 0 ${width} ${height}" font-family="${escaped(FAMILIES)}" role="img">`,
    `<title>${escaped(sheet.title)}</title>`,
    clips.length > 0 ? `<defs>${clips.join('')}</defs>` : '',
    body,
    '</svg>\n',
  ].join('');
}

function primitiveToSvg(primitive: Primitive, clips: string[]): string {
  if (primitive.kind === 'path') return pathToSvg(primitive);
  return primitive.kind === 'text' ? textToSvg(primitive) : groupToSvg(primitive, clips);
}

function groupToSvg({ children, subject, clip, description }: GroupPrimitive, clips: string[]): string {
  const attributes = [
    subject === undefined ? '' : ` data-subject="${escaped(subject)}"`,
    clip === undefined ? '' : ` clip-path="url(#${addClip(clip, clips)})"`,
  ];
  const title = description === undefined ? '' : `<title>${escaped(description)}</title>`;
  const inner = children.map((child) => primitiveToSvg(child, clips)).join('');
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

function textToSvg({ text, x, y, size, weight, anchor, colour, turn }: TextPrimitive): string {
  const rotation = turn ? ` transform="rotate(${number(turn)} ${number(x)} ${number(y)})"` : '';
  const place = `x="${number(x)}" y="${number(y)}" font-size="${number(size)}"`;
  const look = `font-weight="${weight === 'bold' ? 700 : 400}" text-anchor="${anchor}" fill="${escaped(colour)}"`;
  return `<text ${place} ${look}${rotation} xml:space="preserve">${escaped(text)}</text>`;
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
