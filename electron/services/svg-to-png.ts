/** Drawings as pictures made of dots, with the typefaces of the drawings and no others of the machine. */

import { initWasm, Resvg } from '@resvg/resvg-wasm';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { crc32 } from 'node:zlib';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import { fontFiles } from './font-files.ts';

/** Dots per inch. */
export const LEAST_DPI = 36;
export const MOST_DPI = 600;

/**
 * Most dots of one picture: 40 million hold A4 at 600 dots per inch, and take some 400 MB while they are painted and packed.
 */
const MOST_DOTS = 40e6;

const MM_PER_INCH = 25.4;

/** Of a drawing, mm. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Throws `FaultError`: fewer or more dots per inch than there may be, or more dots in all. */
export function refuseTooManyDots({ width, height }: Size, dpi: number): void {
  if (!(dpi >= LEAST_DPI && dpi <= MOST_DPI))
    throw new FaultError(
      'png.resolution',
      t`A picture can have ${LEAST_DPI} to ${MOST_DPI} dots per inch, not ${dpi}.`,
    );
  const squareInches = (width * height) / MM_PER_INCH ** 2;
  if (squareInches * dpi ** 2 <= MOST_DOTS) return;
  const most = Math.floor(Math.sqrt(MOST_DOTS / squareInches));
  throw new FaultError(
    'png.tooLarge',
    t`At ${dpi} dots per inch a sheet of ${Math.round(width)} x ${Math.round(height)} mm is too large a picture: take at most ${most}.`,
  );
}

/** Paints SVGs on white as PNGs that say their own resolution. `size` is the drawing's own. Throws `FaultError`. */
export type ToPng = (svg: string, size: Size, dpi: number) => Uint8Array;

let opened: Promise<ToPng> | null = null;

/** Loads the painter once, when it is wanted. */
export function openPngPainter(): Promise<ToPng> {
  opened ??= started();
  return opened;
}

async function started(): Promise<ToPng> {
  const { resolve } = createRequire(import.meta.url);
  await initWasm(readFileSync(resolve('@resvg/resvg-wasm/index_bg.wasm')));
  const files = [fontFiles('regular'), fontFiles('bold')].flatMap(({ family, wide }) => [family, wide]);
  const fontBuffers = files.map((file) => new Uint8Array(readFileSync(file)));
  return (svg, size, dpi) => {
    refuseTooManyDots(size, dpi);
    return withResolution(painted(svg, dpi, fontBuffers), dpi);
  };
}

/** What the painter holds lies outside the collected heap, so it is given back by hand. */
function painted(svg: string, dpi: number, fontBuffers: Uint8Array[]): Uint8Array {
  const drawing = new Resvg(svg, { dpi, background: '#ffffff', font: { fontBuffers } });
  try {
    const image = drawing.render();
    try {
      return image.asPng();
    } finally {
      image.free();
    }
  } finally {
    drawing.free();
  }
}

const METRES_PER_INCH = 0.0254;
/** The signature, and the header chunk that comes first. Source: PNG specification (W3C, third edition), 5.2 and 11.2.1. */
const HEADER = 8 + 25;

/** With a `pHYs` chunk, dots per metre (PNG specification, 11.3.4.3), so that it is printed at its true size. */
function withResolution(png: Uint8Array, dpi: number): Uint8Array {
  const chunk = Buffer.alloc(4 + 4 + 9 + 4);
  const perMetre = Math.round(dpi / METRES_PER_INCH);
  chunk.writeUInt32BE(9, 0);
  chunk.write('pHYs', 4, 'latin1');
  chunk.writeUInt32BE(perMetre, 8);
  chunk.writeUInt32BE(perMetre, 12);
  chunk.writeUInt8(1, 16);
  chunk.writeUInt32BE(crc32(chunk.subarray(4, 17)), 17);
  return Buffer.concat([png.subarray(0, HEADER), chunk, png.subarray(HEADER)]);
}
