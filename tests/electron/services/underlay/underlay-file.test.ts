/** Files for an underlay as a window gets them, over a real disk. Heads of PNG and JPEG as their specifications have them. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync, crc32 } from 'node:zlib';
import { PDFDocument } from '@cantoo/pdf-lib';
import { describe, expect, it } from 'vitest';
import { pictureSize } from '#model/underlay/picture-size.ts';
import { testShell } from '../../../helpers/services.ts';
import { dxfLine, writtenDxf } from '../../../helpers/written-dxf.ts';

const shell = () => {
  const made = testShell();
  const read = (name: string, content: string | Uint8Array) => {
    writeFileSync(join(made.folder, name), content);
    return made.handlers['underlay.read'](made.services.handles.handleOf(join(made.folder, name)));
  };
  return { ...made, read };
};

function chunk(name: string, content: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), content]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

/** Grey; the head may claim another size than the picture has. */
function png(width: number, height: number, rows = height): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 0, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const pixels = deflateSync(Buffer.alloc((width + 1) * rows, 200));
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', pixels),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** A head with a segment before its frame, and nothing more. */
function jpegHead(width: number, height: number): Buffer {
  const frame = Buffer.from([0xff, 0xc2, 0, 17, 8, 0, 0, 0, 0, 3, 1, 34, 0, 2, 17, 1, 3, 17, 1]);
  frame.writeUInt16BE(height, 5);
  frame.writeUInt16BE(width, 7);
  return Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 4, 0x4a, 0x46, 0xff, 0xc4, 0, 3, 9]), frame]);
}

describe('pictureSize', () => {
  it('is that of the head', () => {
    expect(pictureSize(png(640, 480, 1))).toEqual({ type: 'png', width: 640, height: 480 });
    expect(pictureSize(jpegHead(1234, 567))).toEqual({ type: 'jpeg', width: 1234, height: 567 });
  });

  it('is not known of what is cut short, and of anything else', () => {
    for (let length = 0; length < 24; length++) expect(pictureSize(png(9, 9).subarray(0, length))).toBeNull();
    for (let length = 0; length < 22; length++)
      expect(pictureSize(jpegHead(9, 9).subarray(0, length))).toBeNull();
    expect(pictureSize(Buffer.from([0xff, 0xd8, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]))).toBeNull();
  });
});

describe('underlay.read', () => {
  it('hands over pictures, PDFs and drawings, told apart by what is in them', async () => {
    const { read } = shell();
    const pdf = await PDFDocument.create();
    pdf.addPage([842, 595]);
    const files = [
      ['png', 'plan.png', png(40, 30)],
      ['jpeg', 'photo.png', jpegHead(40, 30)],
      ['pdf', 'house.PDF', await pdf.save()],
      ['dxf', 'house.dxf', Buffer.from(writtenDxf({ entities: [dxfLine(0, 0, 1, 1)] }))],
      ['dxf', 'comment.txt', Buffer.from('999\r\nmade by hand\r\n  0\r\nSECTION\r\n')],
    ] as const;
    for (const [type, name, bytes] of files)
      expect(await read(name, bytes)).toEqual({
        ok: true,
        value: { name, type, base64: Buffer.from(bytes).toString('base64') },
      });
  });

  it.each([
    ['a letter', 'underlay.unknown', Buffer.from('Dear Viola')],
    ['nothing', 'underlay.unknown', Buffer.alloc(0)],
    ['a DWG', 'underlay.dwg', Buffer.concat([Buffer.from('AC1032'), Buffer.alloc(200)])],
    ['a binary DXF', 'underlay.binaryDxf', Buffer.from('AutoCAD Binary DXF\r\n\u001a\u0000')],
    ['a PNG that claims to be huge', 'underlay.tooLarge', png(65_535, 65_535, 1)],
    ['a PNG without a size', 'underlay.damaged', png(0, 10, 1)],
    ['a JPEG that claims to be huge', 'underlay.tooLarge', jpegHead(65_535, 65_535)],
    ['a large drawing', 'underlay.tooLarge', Buffer.from(`0\nSECTION\n${' '.repeat(13 * 1024 * 1024)}`)],
    ['a PDF of rubbish', 'pdf.damaged', Buffer.from(`%PDF-1.7\n${'x y z\n'.repeat(20_000)}`)],
  ])('refuses %s in one clear line', async (_what, code, bytes) => {
    const answer = await shell().read('file', bytes);
    expect(answer).toMatchObject({ ok: false, error: { code } });
    if (!answer.ok) expect(answer.error.message).toMatch(/^"file" [^\n]+\.$/);
  });
});
