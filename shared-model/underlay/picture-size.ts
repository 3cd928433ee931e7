/** Width and height of a PNG or JPEG from its first bytes, before anything unpacks it: a small file may claim to be huge. */

export interface PictureSize {
  readonly type: 'png' | 'jpeg';
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

/** Unpacked, a pixel takes four bytes: no picture that is larger is ever unpacked. */
export const MOST_PIXELS = 40e6;

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const IHDR = 0x49484452;

/** Null when it is neither, or its head is damaged. */
export function pictureSize(bytes: Uint8Array): PictureSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (PNG.every((byte, index) => bytes[index] === byte)) return pngSize(view);
  return view.byteLength > 4 && view.getUint16(0) === 0xffd8 ? jpegSize(view) : null;
}

/** The first chunk is the head: length, "IHDR", width, height (PNG specification, 5.6 and 11.2.1). */
function pngSize(view: DataView): PictureSize | null {
  if (view.byteLength < 24 || view.getUint32(12) !== IHDR) return null;
  return { type: 'png', width: view.getUint32(16), height: view.getUint32(20) };
}

/** Segment after segment until the one that begins a frame (ISO/IEC 10918-1, table B.1 and B.2.2). */
function jpegSize(view: DataView): PictureSize | null {
  for (let at = 2; at + 9 < view.byteLength;) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) at += 1;
    else if (isFrame(marker))
      return { type: 'jpeg', height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    else at += 2 + Math.max(2, view.getUint16(at + 2));
  }
  return null;
}

/** C0 to CF are frames, but for tables of Huffman codes, an extension, and arithmetic conditioning. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}
