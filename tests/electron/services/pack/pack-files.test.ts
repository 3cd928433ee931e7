/** A pack as many files: their names, what is in them, and pictures beside poppler's picture of the same page. */

import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { documentOf } from '#model/document/document.ts';
import { writePack, type FilesOrder } from '../../../../electron/services/pack-files.ts';
import { openPngPainter, refuseTooManyDots } from '../../../../electron/services/svg-to-png.ts';
import { EVENING } from '../../../shared-model/drawing/pack/pack-request.ts';
import { greyOfPng, meanDifference, popplerGrey } from './grey.ts';
import { readDxf } from '../../../shared-model/drawing/dxf/reading.ts';

const DPI = 100;
const A4 = { width: 210, height: 297 };

async function written(order: Partial<FilesOrder>) {
  const files = new Map<string, Buffer>();
  const asked: string[] = [];
  const whole: FilesOrder = {
    document: EVENING,
    paper: 'A4',
    scale: null,
    sheets: ['cover', 'plot-1'],
    dpi: DPI,
    formats: ['pdf'],
    now: new Date('2027-02-13T12:00:00'),
    ...order,
  };
  const pack = await writePack(whole, {
    willTake: (names) => Promise.resolve(void asked.push(...names)),
    take: (name, bytes) => Promise.resolve(void files.set(name, Buffer.from(bytes))),
  });
  return { ...pack, files, asked };
}

function fileIn(files: ReadonlyMap<string, Buffer>, name: string): Buffer {
  const file = files.get(name);
  if (!file) throw new Error(`no ${name} among ${[...files.keys()].join(', ')}`);
  return file;
}

/** Attributes of the outermost tag; throws at anything that is not well formed. */
function outermost(svg: string): Record<string, string> {
  const tags: Record<string, string>[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ attributes }) => void tags.push(attributes));
  parser.write(svg).close();
  return tags[0] ?? {};
}

describe('the files of a pack', () => {
  it('are named by sheet and setup, and all announced before the first is made', async () => {
    const { files, asked } = await written({ formats: ['pdf', 'svg', 'png', 'dxf', 'csv'] });
    expect([...files.keys()].sort()).toEqual(
      [
        ...['01-cover.png', '01-cover.svg', '02-plot-1.png', '02-plot-1.svg', 'inventory.csv'],
        ...['marks-1.csv', 'pack.pdf', 'plan-1.dxf'],
      ].sort(),
    );
    expect([...asked].sort()).toEqual([...files.keys()].sort());
  });

  it('plans and tables are of the setups that have a sheet in the pack, of the programme where none has', async () => {
    const namesWith = async (sheets: FilesOrder['sheets']) =>
      [...(await written({ formats: ['dxf'], sheets })).files.keys()].sort();
    expect(await namesWith(null)).toEqual(['plan-1.dxf', 'plan-2.dxf']);
    expect(await namesWith(['marks-2b'])).toEqual(['plan-2b.dxf']);
    expect(await namesWith(['cover'])).toEqual(['plan-1.dxf', 'plan-2.dxf']);
  });

  it('SVGs are well formed and as large as the paper, in millimetres', async () => {
    const { files } = await written({ formats: ['svg'] });
    for (const svg of files.values()) {
      const { width = '', height = '' } = outermost(svg.toString());
      expect([width, height].sort()).toEqual(['210mm', '297mm']);
    }
    expect(files.size).toBe(2);
  });

  it('plans and tables need no sheets', async () => {
    const { files, sheets } = await written({ formats: ['dxf', 'csv'], sheets: null });
    expect(sheets).toBe(0);
    expect(readDxf(fileIn(files, 'plan-1.dxf').toString()).entities.length).toBeGreaterThan(5);
    expect(fileIn(files, 'marks-1.csv').toString()).toContain('Clarinet');
    expect(fileIn(files, 'marks-2.csv').toString()).not.toContain('Clarinet');
  });

  it.each(['pdf', 'svg', 'png'] as const)(
    'a character that no typeface has is told of with %s',
    async (format) => {
      const [concert, ...others] = [...EVENING.records.values()];
      if (concert?.kind !== 'concert') throw new Error('no concert');
      const document = documentOf([{ ...concert, name: 'Evening 𓀀' }, ...others]);
      const { notes } = await written({ document, formats: [format], sheets: ['cover'], dpi: 40 });
      expect(notes).toEqual(['No font has 𓀀: printed as a box.']);
    },
  );

  it('nothing is made when one of them cannot be taken', async () => {
    const order: FilesOrder = {
      ...{ document: EVENING, paper: 'A4', scale: null, sheets: ['cover'], dpi: DPI, formats: ['svg'] },
      now: new Date(0),
    };
    const taken: string[] = [];
    const taker = {
      willTake: () => Promise.reject(new Error('there already')),
      take: (name: string) => Promise.resolve(void taken.push(name)),
    };
    await expect(writePack(order, taker)).rejects.toThrow('there already');
    expect(taken).toEqual([]);
  });
});

describe('pictures of a pack', () => {
  // Letter at 100 dots per inch is a whole number of dots, so that neither painter has to cut one.
  it('show what poppler shows of the PDF at the same resolution', async () => {
    const { files } = await written({ formats: ['pdf', 'png'], paper: 'Letter' });
    for (const [page, name] of ['01-cover.png', '02-plot-1.png'].entries()) {
      const theirs = popplerGrey(fileIn(files, 'pack.pdf'), page + 1, DPI);
      if (!theirs) return;
      const ours = greyOfPng(fileIn(files, name));
      expect([ours.width, ours.height].sort()).toEqual([1100, 850]);
      expect([theirs.width, theirs.height]).toEqual([ours.width, ours.height]);
      const difference = meanDifference(ours, theirs);
      // Of 255. Seen: 2.4 and 3.0, as each smooths edges in its own way; moved down by one dot 6.1 and more, blank 6.4 and more.
      expect(difference).toBeLessThan(3.5);
      expect(meanDifference(ours, theirs, 1)).toBeGreaterThan(1.5 * difference);
    }
  });

  it('say their resolution in dots per metre', async () => {
    const { files } = await written({ formats: ['png'], sheets: ['cover'], dpi: 72 });
    const png = fileIn(files, '01-cover.png');
    const at = png.indexOf('pHYs');
    // 72 / 0.0254 = 2834.6; the unit 1 is the metre.
    expect([png.readUInt32BE(at + 4), png.readUInt32BE(at + 8), png[at + 12]]).toEqual([2835, 2835, 1]);
  });

  it.each([35, 601, 0, NaN])('are refused at %s dots per inch', async (dpi) => {
    await expect(written({ formats: ['png'], dpi })).rejects.toThrow(/36 to 600 dots per inch/);
  });

  it('are refused when they are too large, and what is said to fit does fit', async () => {
    const A3 = { width: 297, height: 420 };
    expect(() => refuseTooManyDots(A4, 600)).not.toThrow();
    let most = 0;
    try {
      refuseTooManyDots(A3, 600);
    } catch (error) {
      most = Number(/at most (\d+)/.exec(String(error))?.[1]);
    }
    expect(most).toBeGreaterThan(400);
    expect(() => refuseTooManyDots(A3, most)).not.toThrow();
    expect(() => refuseTooManyDots(A3, most + 1)).toThrow('too large');
    const toPng = await openPngPainter();
    expect(() => toPng('<svg/>', A3, 600)).toThrow('too large');
  });
});
