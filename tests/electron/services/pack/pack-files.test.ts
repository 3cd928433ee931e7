/** A pack as many files: their names, what is in them, and pictures beside poppler's picture of the same page. */

import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { writePack, type FilesOrder } from '../../../../electron/services/pack-files.ts';
import { openPngPainter, refuseTooManyDots } from '../../../../electron/services/svg-to-png.ts';
import { temporaryFolder } from '../../../helpers/folders.ts';
import { EVENING } from '../../../shared-model/drawing/pack/pack-request.ts';
import { readDxf } from '../../../shared-model/drawing/dxf/reading.ts';

const DPI = 100;
const A4 = { width: 210, height: 297 };

async function written(order: Partial<FilesOrder>) {
  const files = new Map<string, Buffer>();
  const asked: string[] = [];
  const whole: FilesOrder = {
    document: EVENING,
    paper: 'A4',
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
        ...['marks-1.csv', 'marks-2.csv', 'marks-2b.csv', 'pack.pdf'],
        ...['plan-1.dxf', 'plan-2.dxf', 'plan-2b.dxf'],
      ].sort(),
    );
    expect([...asked].sort()).toEqual([...files.keys()].sort());
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

  it('nothing is made when one of them cannot be taken', async () => {
    const order: FilesOrder = {
      ...{ document: EVENING, paper: 'A4', sheets: ['cover'], dpi: DPI, formats: ['svg'] },
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

/** Brightness from 0 to 255 of every dot. */
interface Grey {
  readonly width: number;
  readonly height: number;
  readonly dots: Uint8Array;
}

/** 8-bit RGBA without interlacing (PNG specification, 9.2: filters), all of it opaque. */
function greyOfPng(png: Buffer): Grey {
  const [width, height] = [png.readUInt32BE(16), png.readUInt32BE(20)];
  expect([...png.subarray(24, 29)]).toEqual([8, 6, 0, 0, 0]);
  const parts: Buffer[] = [];
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at))
    if (png.toString('latin1', at + 4, at + 8) === 'IDAT')
      parts.push(png.subarray(at + 8, at + 8 + png.readUInt32BE(at)));
  const rows = inflateSync(Buffer.concat(parts));
  const stride = width * 4;
  const plain = new Uint8Array(stride * height);
  for (let y = 0; y < height; y++) {
    const filter = rows[y * (stride + 1)] ?? 0;
    for (let x = 0; x < stride; x++) {
      const at = y * stride + x;
      const left = x < 4 ? 0 : (plain[at - 4] ?? 0);
      const up = y === 0 ? 0 : (plain[at - stride] ?? 0);
      const corner = x < 4 || y === 0 ? 0 : (plain[at - stride - 4] ?? 0);
      const guess = [0, left, up, (left + up) >> 1, paeth(left, up, corner)][filter] ?? 0;
      plain[at] = (rows[y * (stride + 1) + 1 + x] ?? 0) + guess;
    }
  }
  const dots = Uint8Array.from({ length: width * height }, (_, dot) =>
    brightness(plain[dot * 4] ?? 0, plain[dot * 4 + 1] ?? 0, plain[dot * 4 + 2] ?? 0),
  );
  return { width, height, dots };
}

function paeth(left: number, up: number, corner: number): number {
  const [a, b, c] = [Math.abs(up - corner), Math.abs(left - corner), Math.abs(left + up - 2 * corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}

/** ITU-R BT.601, as poppler greys (from memory). */
function brightness(red: number, green: number, blue: number): number {
  return Math.round(0.299 * red + 0.587 * green + 0.114 * blue);
}

/** A page painted by poppler; null when it is not on this machine. */
function popplerGrey(pdf: Buffer, page: number): Grey | null {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'a.pdf'), pdf);
  const [from, out] = [join(folder, 'a.pdf'), join(folder, 'page')];
  try {
    const pages = ['-f', String(page), '-l', String(page), '-singlefile'];
    execFileSync('pdftoppm', ['-r', String(DPI), '-gray', ...pages, from, out]);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    console.warn('NOT RUN: pdftoppm of poppler is not on this machine, so no picture was compared.');
    return null;
  }
  const pgm = readFileSync(`${out}.pgm`);
  const head = /^P5\s(\d+)\s(\d+)\s255\s/.exec(pgm.toString('latin1', 0, 40));
  if (!head) throw new Error('pdftoppm wrote something else than a grey map');
  return { width: Number(head[1]), height: Number(head[2]), dots: pgm.subarray(head[0].length) };
}

/** Over the dots that both have; the second one moved down by some rows. */
function meanDifference(a: Grey, b: Grey, down = 0): number {
  const [width, height] = [Math.min(a.width, b.width), Math.min(a.height, b.height) - down];
  let sum = 0;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      sum += Math.abs((a.dots[y * a.width + x] ?? 0) - (b.dots[(y + down) * b.width + x] ?? 0));
  return sum / (width * height);
}

describe('pictures of a pack', () => {
  // Letter at 100 dots per inch is a whole number of dots, so that neither painter has to cut one.
  it('show what poppler shows of the PDF at the same resolution', async () => {
    const { files } = await written({ formats: ['pdf', 'png'], paper: 'Letter' });
    for (const [page, name] of ['01-cover.png', '02-plot-1.png'].entries()) {
      const theirs = popplerGrey(fileIn(files, 'pack.pdf'), page + 1);
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
