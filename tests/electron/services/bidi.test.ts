/** Names written from the right, on paper: the order of UAX 9, read back by poppler and by pdf.js. */

import { describe, expect, it } from 'vitest';
import type { Sheet } from '#model/drawing/primitives.ts';
import { textLine } from '#model/drawing/text.ts';
import { visualPieces } from '../../../electron/services/bidi.ts';
import { createMeasure } from '../../../electron/services/fonts.ts';
import { paintPdf } from '../../../electron/services/pdf-painter.ts';
import { openPdf, pageTexts, poppler } from './pdf-reading.ts';

const order = (text: string): string[] => visualPieces(text).map((piece) => piece.text);

describe('the order in which pieces of a line are set', () => {
  it('leaves a line alone that is written from the left', () => {
    expect(order('Viola (player 2)')).toEqual(['Viola (player 2)']);
  });

  // Unicode Standard Annex 9, rules W7, N1, L2 and L4, worked by hand.
  it('sets words from the right with their spaces, figures from the left, brackets turned', () => {
    expect(order('P2 הכנר עוזי')).toEqual(['P2 ', 'עוזי', ' ', 'הכנר']);
    expect(order('א 12 ב')).toEqual(['ב', ' ', '12', ' ', 'א']);
    expect(order('a (א ב) c')).toEqual(['a (', 'ב', ' ', 'א', ') c']);
    expect(order('א (ב) ג')).toEqual(['ג', ' ', ')ב(', ' ', 'א']);
  });
});

const NAMES = ['עוזי הכנר', 'أول كمان'];
const LINES = [...NAMES, 'Desk of עוזי הכנר, set', 'הכנר עוזי, 2 pages', 'كمان أول, 3 pages, and more'];

function sheetOf(lines: readonly string[]): Sheet {
  const look = { size: 4, weight: 'regular', colour: '#000000' } as const;
  const children = lines.map((words, index) => textLine(words, { x: 20, y: 20 + 10 * index }, look));
  return { title: 'Names', width: 210, height: 297, children };
}

const META = { title: 'Names', author: '', created: new Date('2027-02-13T12:00:00'), language: 'en' };
/** What tells readers about directions, and is no letter. */
const plain = (text: string): string => text.replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, '').trim();

describe('a PDF with names written from the right', () => {
  it('is read back word for word', async ({ skip }) => {
    // Enough English that poppler takes the page for one that is read from the left.
    const english = 'Marks are measured from the centre line and from the front edge of the platform';
    const { bytes } = await paintPdf([sheetOf([...LINES, english, english, english])], META);
    const told = poppler('pdftotext', bytes, '-layout');
    if (told === null) return skip('pdftotext is not installed');
    expect(plain(told).split(/\n+/).map(plain).slice(0, LINES.length)).toEqual(LINES);
  });

  it('sets the first word farthest right, with a space between, as wide as it was measured', async () => {
    const { bytes } = await paintPdf([sheetOf(['Of עוזי הכנר'])], META);
    const texts = await pageTexts(await (await openPdf(bytes)).getPage(1));
    const [first, second] = ['הכנר', 'עוזי'].map((word) => {
      const found = texts.find(({ text }) => plain(text).includes(word));
      if (!found) throw new Error(`"${word}" is not on the page`);
      return found;
    });
    if (!first || !second) throw new Error('two words were looked for');
    // In the sentence "עוזי" is read first, so it stands farthest right.
    expect(second.x - (first.x + first.width)).toBeGreaterThan(2);
    const right = Math.max(...texts.map(({ x, width }) => x + width));
    const measured = createMeasure()('Of עוזי הכנר', 4, 'regular');
    expect(right).toBeCloseTo(((20 + measured) * 72) / 25.4, 1);
  });

  it('sets a figure behind a name where the sentence has it', async () => {
    const { bytes } = await paintPdf([sheetOf(['הכנר, 2 pages'])], META);
    const texts = await pageTexts(await (await openPdf(bytes)).getPage(1));
    const at = (words: RegExp): number => texts.find(({ text }) => words.test(text))?.x ?? Number.NaN;
    expect(at(/הכנר|רנכה/)).toBeLessThan(at(/2/));
  });
});
