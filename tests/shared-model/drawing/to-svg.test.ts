import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { circle } from '#model/drawing/outline.ts';
import type { Primitive, Sheet } from '#model/drawing/primitives.ts';
import { sheetToSvg } from '#model/drawing/to-svg.ts';
import { aDocument, aPlayer } from '../../helpers/build.ts';
import { pathsIn, textsIn } from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';

interface Seen {
  readonly tags: { readonly name: string; readonly attributes: Record<string, string> }[];
  readonly texts: string[];
}

/** Reads with a strict XML parser; throws at anything that is not well formed. */
function read(svg: string): Seen {
  const seen: Seen = { tags: [], texts: [] };
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => void seen.tags.push({ name, attributes }));
  parser.on('text', (text) => void seen.texts.push(text));
  parser.write(svg).close();
  return seen;
}

const sheet = (children: readonly Primitive[], title = 'Plan'): Sheet => ({
  title,
  width: 297,
  height: 210,
  children,
});

describe('sheetToSvg', () => {
  it('is as large as the sheet, in millimetres', () => {
    const [svg] = read(sheetToSvg(sheet([]))).tags;
    expect(svg?.attributes).toMatchObject({ width: '297mm', height: '210mm', viewBox: '0 0 297 210' });
  });

  it('escapes foreign text, and drops what XML cannot hold', () => {
    const text: Primitive = {
      kind: 'text',
      text: `</text><script>alert("1")</script> & ' \u0000\u0008\ud800 ♭`,
      x: 1,
      y: 2,
      size: 3,
      weight: 'bold',
      anchor: 'middle',
      colour: '#000000',
      turn: 90,
    };
    const evil = '"><script>';
    const seen = read(
      sheetToSvg(sheet([{ kind: 'group', subject: evil, description: evil, children: [text] }], evil)),
    );
    expect(seen.tags.map(({ name }) => name)).not.toContain('script');
    expect(seen.texts).toContain(`</text><script>alert("1")</script> & '  ♭`);
    expect(seen.tags.find(({ name }) => name === 'g')?.attributes['data-subject']).toBe(evil);
  });

  it('holds every path and every text of a plot', () => {
    const document = aDocument(aPlayer({ name: 'Viola & friends' }));
    for (const each of sheetsOf(plotRequest(document)).sheets) {
      const seen = read(sheetToSvg(each));
      const count = (name: string) => seen.tags.filter((tag) => tag.name === name).length;
      expect(count('text')).toBe(textsIn(each.children).length);
      expect(count('path')).toBe(pathsIn(each.children).filter(({ path }) => path.length > 0).length);
    }
  });

  it('clips groups and writes no number with an exponent', () => {
    const tiny: Primitive = { kind: 'path', path: circle({ x: 1e-9, y: 1e-9 }, 1), fill: '#000000' };
    const svg = sheetToSvg(
      sheet([{ kind: 'group', children: [tiny], clip: { x: 0, y: 0, width: 5, height: 5 } }]),
    );
    expect(svg).toContain('clip-path="url(#clip1)"');
    expect(svg).not.toMatch(/\de-\d/);
  });

  it('throws at a number that is not finite: a drawing must not hold one', () => {
    const broken: Primitive = { kind: 'path', path: [['M', NaN, 0]], fill: '#000000' };
    expect(() => sheetToSvg(sheet([broken]))).toThrow('finite');
  });
});
