/** From the bytes of a picture or a DXF to what an underlay holds. */

import DxfParser from 'dxf-parser';
import type { UnderlayPicture } from '#model/document/records.ts';
import type { DxfDrawing } from '#model/underlay/dxf-entities.ts';
import { dxfLines, type DxfLines, type DxfProblem } from '#model/underlay/dxf-lines.ts';
import { leftOutOf, type LeftOut } from '#model/underlay/left-out.ts';
import { MOST_PIXELS, pictureSize } from '#model/underlay/picture-size.ts';

/** Told by the worker as soon as it can be asked. */
export type UnderlayReady = 'ready';

export interface UnderlayQuestion {
  readonly kind: 'picture' | 'dxf';
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Of a picture. */
  readonly media: string;
}

export interface ReadPicture {
  readonly picture: UnderlayPicture;
  /** It was made smaller. */
  readonly smaller: boolean;
}

export type UnderlayAnswer =
  | { readonly ok: true; readonly picture: ReadPicture }
  | { readonly ok: true; readonly lines: DxfLines; readonly leftOut: LeftOut }
  | { readonly ok: false; readonly problem: UnderlayProblem };

export type UnderlayProblem = DxfProblem | 'damaged';

/** Of the longer side. A hall of 40 m then has pixels of 17 mm: nobody traces finer than that on a screen. */
export const LONGEST_SIDE = 2400;
/** A PNG larger than this is kept as a JPEG, bytes. */
const LARGEST_PNG = 2.5e6;
const JPEG_QUALITY = 0.85;

/** Drawn anew, so that nothing of the file is kept but its pixels, the right way up. */
export async function contentOfPicture(
  bytes: Uint8Array<ArrayBuffer>,
  media: string,
): Promise<UnderlayAnswer> {
  const size = pictureSize(bytes);
  if (!size || size.width * size.height > MOST_PIXELS) return { ok: false, problem: 'damaged' };
  const bitmap = await createImageBitmap(new Blob([bytes], { type: media }));
  const by = Math.min(1, LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
  const [width, height] = [bitmap.width, bitmap.height].map((side) => Math.max(1, Math.round(side * by)));
  const canvas = new OffscreenCanvas(width ?? 1, height ?? 1);
  const pen = canvas.getContext('2d');
  if (!pen) return { ok: false, problem: 'damaged' };
  // What is transparent in a picture is paper.
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return { ok: true, picture: { picture: await pictureOf(canvas), smaller: by < 1 } };
}

export async function pictureOf(canvas: OffscreenCanvas): Promise<UnderlayPicture> {
  const png = await canvas.convertToBlob({ type: 'image/png' });
  const blob =
    png.size <= LARGEST_PNG ? png : await canvas.convertToBlob({ type: 'image/jpeg', quality: JPEG_QUALITY });
  const base64 = base64Of(new Uint8Array(await blob.arrayBuffer()));
  const media = blob === png ? 'image/png' : 'image/jpeg';
  return { type: 'picture', media, width: canvas.width, height: canvas.height, base64 };
}

/** Piece by piece: a call with a million arguments would fail. */
function base64Of(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let from = 0; from < bytes.length; from += PIECE)
    pieces.push(String.fromCharCode(...bytes.subarray(from, from + PIECE)));
  return btoa(pieces.join(''));
}

const PIECE = 8192;

/** Its words are not used, so that any code page will do. */
export function contentOfDxf(bytes: Uint8Array): UnderlayAnswer {
  const text = new TextDecoder('latin1').decode(bytes);
  // The parser checks no number: what it gives is as wild as the file.
  const drawing = new DxfParser().parseSync(text) as unknown as DxfDrawing | null;
  if (!drawing) return { ok: false, problem: 'damaged' };
  const result = dxfLines(drawing);
  return result.ok ? { ok: true, lines: result.lines, leftOut: leftOutOf(text) } : result;
}
