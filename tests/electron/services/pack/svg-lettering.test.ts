/** SVGs in a browser that has none of their typefaces: as wide as planned, and as poppler shows the PDF. */

import type { Page } from '@playwright/test';
import { create } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { countPack, packSheets } from '#model/drawing/pack/pack.ts';
import type { Primitive, Sheet, TextPrimitive } from '#model/drawing/primitives.ts';
import { sheetToSvg } from '#model/drawing/to-svg.ts';
import { createMeasure } from '../../../../electron/services/fonts.ts';
import { packRequest } from '../../../../electron/services/pack.ts';
import { paintPdf } from '../../../../electron/services/pdf-painter.ts';
import { letteringOf } from '../../../../electron/services/svg-lettering.ts';
import { openBrowser } from '../../../helpers/browser.ts';
import { textsIn } from '../../../shared-model/drawing/drawings.ts';
import { EVENING } from '../../../shared-model/drawing/pack/pack-request.ts';
import { meanDifference, popplerGrey, type Grey } from './grey.ts';

const NOW = new Date('2027-02-13T12:00:00');
const DPI = 100;
const measure = createMeasure();

/** Letter, so that at 100 dots per inch it is a whole number of dots. */
function sheetsOfPack(names: readonly string[]): Sheet[] {
  const request = packRequest({ document: EVENING, paper: 'Letter', scale: null, sheets: names, now: NOW });
  const steps = countPack(request);
  for (;;) {
    const step = steps.next();
    if (step.done) return Array.from(packSheets(request, step.value), ({ sheet }) => sheet);
  }
}

const WORDS = [
  ...['AVATAR, To 12.5 m', 'office 1/2" SL', 'Łukasz Żółć', 'Αθηνά', 'Щедрин', 'Chor ♭♯ two'],
  ...['Ὀρφεὺς ἐν ᾍδου', 'Mr. Щ. (2) & Co', 'ﬁne ½ 𝄞', 'e\u0301tude'],
];

function sheetOf(texts: readonly string[]): Sheet {
  const lines = texts.flatMap((text, line): TextPrimitive[] =>
    (['regular', 'bold'] as const).map((weight, side) => ({
      ...{ kind: 'text', text, weight, anchor: 'start', colour: '#000000' },
      ...{ x: 10 + 90 * side, y: 10 + 7 * line, size: 4 },
    })),
  );
  return { title: 'Words', width: 216, height: 279, children: lines satisfies Primitive[] };
}

/** With what it carries, and otherwise something of quite another width. */
function withoutInstalled(svg: string): string {
  const other = svg.replace(
    /(&#39;Atkinson Hyperlegible Next&#39;|&#39;DejaVu Sans&#39;)[^"<]*sans-serif/g,
    'monospace',
  );
  expect(other).not.toMatch(/(Atkinson|DejaVu)[^"<]*"/);
  return other;
}

const withoutLengths = (svg: string): string => svg.replace(/ textLength="[^"]*" lengthAdjust="[^"]*"/g, '');

/** How wide each text is set, mm. */
async function widthsIn(page: Page, svg: string): Promise<number[]> {
  await page.setContent(`<body>${svg.replace(/^<\?xml.*\?>/, '')}</body>`);
  return page.evaluate(async () => {
    // Looked at larger, so that no advance is rounded to a dot of the screen.
    document.querySelector('svg')?.setAttribute('width', '6000');
    document.querySelector('svg')?.removeAttribute('height');
    document.body.getBoundingClientRect();
    await document.fonts.ready;
    return [...document.querySelectorAll('text')].map((text) => text.getComputedTextLength());
  });
}

/** As an image, which may fetch nothing and sees no typeface of the page. */
async function pictureIn(page: Page, svg: string, size: { width: number; height: number }): Promise<Grey> {
  const address = `data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`;
  const dots = await page.evaluate(
    async ({ address: from, width, height }) => {
      const image = new Image();
      image.src = from;
      await image.decode();
      const canvas = Object.assign(document.createElement('canvas'), { width, height });
      const context = canvas.getContext('2d');
      if (!context) throw new Error('no canvas');
      context.fillStyle = '#ffffff';
      context.fillRect(0, 0, width, height);
      context.drawImage(image, 0, 0, width, height);
      const { data } = context.getImageData(0, 0, width, height);
      let grey = '';
      for (let at = 0; at < data.length; at += 4) {
        const [red = 0, green = 0, blue = 0] = data.subarray(at, at + 3);
        grey += String.fromCharCode(Math.round(0.299 * red + 0.587 * green + 0.114 * blue));
      }
      return btoa(grey);
    },
    { address, ...size },
  );
  return { ...size, dots: Buffer.from(dots, 'base64') };
}

describe('the lettering of an SVG', () => {
  it('is as wide as in the PDF, within 1 %, with nothing but what the SVG carries', async (context) => {
    const browser = await openBrowser(context);
    const page = await browser.newPage();
    for (const sheet of [sheetOf(WORDS), ...sheetsOfPack(['cover', 'plot-1', 'marks-1', 'figures-1'])]) {
      const svg = sheetToSvg(sheet, letteringOf(sheet).lettering);
      const widths = await widthsIn(page, withoutLengths(withoutInstalled(svg)));
      const texts = textsIn(sheet.children);
      expect(widths.length).toBe(texts.length);
      const wrong = texts.flatMap(({ text, size, weight }, index) => {
        const [asked, found] = [measure(text, size, weight), widths[index] ?? 0];
        return Math.abs(found - asked) > 0.01 * asked ? [{ text, weight, asked, found }] : [];
      });
      expect(wrong).toEqual([]);
      expect(texts.length).toBeGreaterThan(15);
    }
  });

  it('is as wide as planned even where nothing that is carried is taken', async (context) => {
    const browser = await openBrowser(context);
    const page = await browser.newPage();
    const sheet = sheetOf(WORDS);
    const svg = sheetToSvg(sheet, letteringOf(sheet).lettering);
    const bare = withoutInstalled(svg).replace(/<style>.*<\/style>/, '');
    expect(bare.length).toBeLessThan(svg.length / 2);
    const widths = await widthsIn(page, bare);
    textsIn(sheet.children).forEach(({ text, size, weight }, index) => {
      const asked = measure(text, size, weight);
      expect(Math.abs((widths[index] ?? 0) - asked), text).toBeLessThan(0.01 * asked);
    });
  });

  it('looks in an image as poppler shows the PDF', async (context) => {
    const browser = await openBrowser(context);
    const page = await browser.newPage();
    const [sheet] = sheetsOfPack(['cover']);
    if (!sheet) throw new Error('no cover');
    const pdf = await paintPdf([sheet], { title: 'a', author: '', created: NOW, language: 'en' });
    const theirs = popplerGrey(Buffer.from(pdf.bytes), 1, DPI);
    if (!theirs) return;
    const svg = withoutInstalled(sheetToSvg(sheet, letteringOf(sheet).lettering));
    const difference = meanDifference(await pictureIn(page, svg, theirs), theirs);
    const bare = await pictureIn(page, svg.replace(/<style>.*<\/style>/, ''), theirs);
    // Of 255. Seen: 2.6, and 3.7 in a typeface that is not carried, though every text is as wide as planned.
    expect(difference).toBeLessThan(3);
    expect(meanDifference(bare, theirs)).toBeGreaterThan(1.3 * difference);
  });

  it('carries typefaces that say whose they are, and few letters', () => {
    const sheet = sheetOf(['Viola']);
    const { style } = letteringOf(sheet).lettering;
    const [regular = '', ...others] = [...style.matchAll(/base64,([^)]*)/g)].map(([, data = '']) => data);
    expect(others.length).toBe(1);
    const font = create(Buffer.from(regular, 'base64'));
    if (!('characterSet' in font)) throw new Error('not one font');
    expect(String.fromCodePoint(...font.characterSet)).toBe('Vailo');
    expect(font.copyright).toContain('Atkinson Hyperlegible Next Project Authors');
    expect(font.getName('licenseURL', 'en')).toBe('https://openfontlicense.org');
    expect(regular.length).toBeLessThan(6000);
  });

  it('has none for what is not set', () => {
    expect(letteringOf(sheetOf([])).lettering.style).toBe('');
    expect([...letteringOf(sheetOf(['a 𓀀'])).missing]).toEqual(['𓀀']);
  });
});
