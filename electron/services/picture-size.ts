/** Width and height of a PNG or JPEG from its first bytes, before anything unpacks it: a small file may claim to be huge. */

export interface PictureSize {
  readonly type: 'png' | 'jpeg';
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

const PNG = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** Null when it is neither, or its head is damaged. */
export function pictureSize(bytes: Uint8Array): PictureSize | null {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (buffer.subarray(0, 8).equals(PNG)) return pngSize(buffer);
  return buffer.length > 4 && buffer.readUInt16BE(0) === 0xffd8 ? jpegSize(buffer) : null;
}

/** The first chunk is the head: length, "IHDR", width, height (PNG specification, 5.6 and 11.2.1). */
function pngSize(buffer: Buffer): PictureSize | null {
  if (buffer.length < 24 || buffer.toString('latin1', 12, 16) !== 'IHDR') return null;
  return { type: 'png', width: buffer.readUInt32BE(16), height: buffer.readUInt32BE(20) };
}

/** Segment after segment until the one that begins a frame (ISO/IEC 10918-1, table B.1 and B.2.2). */
function jpegSize(buffer: Buffer): PictureSize | null {
  for (let at = 2; at + 9 < buffer.length;) {
    if (buffer[at] !== 0xff) return null;
    const marker = buffer[at + 1] ?? 0;
    if (marker === 0xff) at += 1;
    else if (isFrame(marker))
      return { type: 'jpeg', height: buffer.readUInt16BE(at + 5), width: buffer.readUInt16BE(at + 7) };
    else at += 2 + Math.max(2, buffer.readUInt16BE(at + 2));
  }
  return null;
}

/** C0 to CF are frames, but for tables of Huffman codes, an extension, and arithmetic conditioning. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}
