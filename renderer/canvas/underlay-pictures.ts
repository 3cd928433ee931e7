/** The pictures of underlays, unpacked once each, in a moment of the browser's own choosing. */

import type { UnderlayPicture } from '#model/document/records.ts';
import { MOST_PIXELS, pictureSize } from '#model/underlay/picture-size.ts';

type Unpacked = ImageBitmap | 'coming' | 'broken';

const unpacked = new WeakMap<UnderlayPicture, Unpacked>();

/** Null: it is not there yet, and `arrived` is called when it is; or it never will be, being damaged. */
export function bitmapOf(picture: UnderlayPicture, arrived: () => void): ImageBitmap | null {
  const known = unpacked.get(picture);
  if (known === undefined) void unpack(picture).then(arrived);
  return known instanceof ImageBitmap ? known : null;
}

async function unpack(picture: UnderlayPicture): Promise<void> {
  unpacked.set(picture, 'coming');
  const bytes = bytesOf(picture.base64);
  const size = bytes && pictureSize(bytes);
  // A file may have been made by another program, and claim what it likes.
  const isSane = size !== null && size.width * size.height <= MOST_PIXELS;
  const blob = isSane && bytes ? new Blob([bytes], { type: picture.media }) : null;
  const bitmap = blob && (await createImageBitmap(blob).catch(() => null));
  unpacked.set(picture, bitmap ?? 'broken');
}

export function bytesOf(base64: string): Uint8Array<ArrayBuffer> | null {
  try {
    return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
  } catch {
    return null;
  }
}
