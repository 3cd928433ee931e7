/** Pictures as brightness, to be compared: of PNGs, and of PDFs as poppler paints them. */

import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { expect } from 'vitest';
import { temporaryFolder } from '../../../helpers/folders.ts';

/** Brightness from 0 to 255 of every dot. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly dots: Uint8Array;
}

/** 8-bit RGBA without interlacing (PNG specification, 9.2: filters), all of it opaque. */
export function greyOfPng(png: Buffer): Grey {
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
export function popplerGrey(pdf: Buffer, page: number, dpi: number): Grey | null {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'a.pdf'), pdf);
  const [from, out] = [join(folder, 'a.pdf'), join(folder, 'page')];
  try {
    const pages = ['-f', String(page), '-l', String(page), '-singlefile'];
    execFileSync('pdftoppm', ['-r', String(dpi), '-gray', ...pages, from, out]);
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
export function meanDifference(a: Grey, b: Grey, down = 0): number {
  const [width, height] = [Math.min(a.width, b.width), Math.min(a.height, b.height) - down];
  let sum = 0;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      sum += Math.abs((a.dots[y * a.width + x] ?? 0) - (b.dots[(y + down) * b.width + x] ?? 0));
  return sum / (width * height);
}
