/** What goes under a plan, from disk: told by its first bytes, and refused here when it is nothing that can be shown. */

import { basename } from 'node:path';
import type { UnderlayFile } from '#contract/contract.ts';
import { MOST_PIXELS, pictureSize, type PictureSize } from '#model/underlay/picture-size.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import type { Fs } from './fs.ts';
import { openBytes } from './open-file.ts';
import { guardPdf } from './part-pdf-guard.ts';

const MEGABYTE = 1024 * 1024;
/** Of a picture or a PDF; and of a drawing, which takes twenty times its size in memory while it is read. */
const LARGEST = 32 * MEGABYTE;
const LARGEST_DXF = 12 * MEGABYTE;

/** Throws `FaultError` or the system's error. */
export async function readUnderlay(fs: Fs, path: string): Promise<UnderlayFile> {
  const name = basename(path);
  const bytes = await openBytes(fs, path, 'underlay');
  if (bytes.length > LARGEST) throw tooLarge(name, bytes, LARGEST);
  const type = typeOf(bytes, name);
  return { name, type, base64: Buffer.from(bytes).toString('base64') };
}

function typeOf(bytes: Uint8Array, name: string): UnderlayFile['type'] {
  const size = pictureSize(bytes);
  if (size) return checkedPicture(size, name);
  const head = Buffer.from(bytes.subarray(0, 1024)).toString('latin1');
  if (head.includes('%PDF-')) return checkedPdf(bytes, name);
  refuseOtherDrawings(head, name);
  if (!isDxf(head, name))
    throw new FaultError(
      'underlay.unknown',
      t`"${name}" is no picture (PNG or JPEG), no PDF and no DXF, so it cannot go under the plan.`,
    );
  if (bytes.length > LARGEST_DXF) throw tooLarge(name, bytes, LARGEST_DXF);
  return 'dxf';
}

function checkedPicture({ type, width, height }: PictureSize, name: string): 'png' | 'jpeg' {
  if (width < 1 || height < 1)
    throw new FaultError('underlay.damaged', t`"${name}" is a picture without a size: it is damaged.`);
  if (width * height > MOST_PIXELS)
    throw new FaultError(
      'underlay.tooLarge',
      t`"${name}" has ${width} x ${height} pixels; up to ${MOST_PIXELS / 1e6} million can be read: scan it coarser.`,
    );
  return type;
}

/** The guard speaks of parts. */
function checkedPdf(bytes: Uint8Array, name: string): 'pdf' {
  try {
    guardPdf(bytes, name);
    return 'pdf';
  } catch (error) {
    if (!(error instanceof FaultError) || error.code !== 'pdf.tooLarge') throw error;
    throw new FaultError(
      'underlay.tooLarge',
      t`"${name}" holds more than can be read: print the page to a PDF of its own, or save it as a picture.`,
    );
  }
}

function refuseOtherDrawings(head: string, name: string): void {
  if (head.startsWith('AutoCAD Binary DXF'))
    throw new FaultError(
      'underlay.binaryDxf',
      t`"${name}" is a binary DXF, which cannot be read: save it as DXF in text (ASCII) form.`,
    );
  if (/^AC10\d\d/.test(head))
    throw new FaultError(
      'underlay.dwg',
      t`"${name}" is a DWG, which cannot be read: ask for a DXF or a PDF of it.`,
    );
}

/** A DXF in text begins with pairs of lines: a number, and a word; comments (999) may come first. */
function isDxf(head: string, name: string): boolean {
  return (
    /^(?:\xef\xbb\xbf)?\s*(?:0\s*\r?\n\s*SECTION|999\s*\r?\n)/.test(head) ||
    (/\.dxf$/i.test(name) && /\bSECTION\b/.test(head))
  );
}

function tooLarge(name: string, { length }: Uint8Array, most: number): FaultError {
  return new FaultError(
    'underlay.tooLarge',
    t`"${name}" has ${Math.ceil(length / MEGABYTE)} MB; up to ${most / MEGABYTE} MB can be read: leave out what is not needed under the plan.`,
  );
}
