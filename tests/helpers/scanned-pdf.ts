/**
 * Scanned pages as PDF, our own: one drawing of 160 x 226 dots (five lines across and a box on one of them), packed in three
 * ways that scanners use. Its JPEG 2000 form is in `fixtures/scans`, made with ImageMagick.
 */

import { readFileSync } from 'node:fs';

const WIDTH = 160;
const HEIGHT = 226;

/** Of dots that are dark: five lines of 128 x 2, and a box of 13 x 11 over one of them. */
export const DARK_SHARE = (5 * 128 * 2 + 13 * 11 - 13 * 2) / (WIDTH * HEIGHT);

/** The drawing by ITU-T T.6 ("Group 4"). */
const FAX = Buffer.from(
  'ffffffffffffff25209ff9a832037f25209fff19a832037f1fcd41901bf8fe6a0c80dfc7f3506406fe3fffffff' +
    'fffffffffffffffffffffffffe002002',
  'hex',
);

interface Scan {
  /** Entries of the image's dictionary, beside its size. */
  readonly entries: string;
  readonly bytes: Buffer;
}

export function jpeg2000Scan(): Scan {
  const bytes = readFileSync(new URL('../fixtures/scans/staff.jp2', import.meta.url));
  return { entries: '/Filter /JPXDecode', bytes };
}

export function faxScan(): Scan {
  const parameters = `<< /K -1 /Columns ${WIDTH} /Rows ${HEIGHT} >>`;
  return {
    entries: `/ColorSpace /DeviceGray /BitsPerComponent 1 /Filter /CCITTFaxDecode /DecodeParms ${parameters}`,
    bytes: FAX,
  };
}

/** ITU-T T.88: a page (7.4.8) with one immediate generic region (7.4.6) that is coded as T.6 is. */
export function jbig2Scan(): Scan {
  const [width, height] = [four(WIDTH), four(HEIGHT)];
  const page = Buffer.concat([width, height, four(0), four(0), Buffer.from([0, 0, 0])]);
  const region = Buffer.concat([width, height, four(0), four(0), Buffer.from([0, 1]), FAX]);
  return {
    entries: '/ColorSpace /DeviceGray /BitsPerComponent 1 /Filter /JBIG2Decode',
    bytes: Buffer.concat([segment(0, 48, page), segment(1, 38, region)]),
  };
}

/** Its header (7.2): number, type, refers to none, belongs to page 1, length. */
function segment(number: number, type: number, data: Buffer): Buffer {
  return Buffer.concat([four(number), Buffer.from([type, 0, 1]), four(data.length), data]);
}

function four(value: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(value);
  return bytes;
}

/** A page of A4 for each, filled by the scan. */
export function scannedPdf(scans: readonly Scan[]): Buffer {
  const objects: Buffer[] = [];
  const add = (...pieces: readonly (string | Buffer)[]): number =>
    objects.push(Buffer.concat(pieces.map((piece) => Buffer.from(piece as string, 'latin1'))));
  add('<< /Type /Catalog /Pages 2 0 R >>');
  const kids = scans.map((_, index) => `${3 + index * 3} 0 R`).join(' ');
  add(`<< /Type /Pages /Kids [${kids}] /Count ${scans.length} >>`);
  for (const { entries, bytes } of scans) {
    const next = objects.length + 1;
    add(
      '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595.28 841.89] ',
      `/Contents ${next + 1} 0 R /Resources << /XObject << /Scan ${next + 2} 0 R >> >> >>`,
    );
    const content = 'q 595.28 0 0 841.89 0 0 cm /Scan Do Q';
    add(`<< /Length ${content.length} >>\nstream\n${content}\nendstream`);
    const image = `<< /Type /XObject /Subtype /Image /Width ${WIDTH} /Height ${HEIGHT} ${entries}`;
    add(`${image} /Length ${bytes.length} >>\nstream\n`, bytes, '\nendstream');
  }
  return fileOf(objects);
}

/** With a table of where every object begins, as ISO 32000-1 7.5 has it. */
function fileOf(objects: readonly Buffer[]): Buffer {
  const pieces: Buffer[] = [Buffer.from('%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n', 'latin1')];
  let at = pieces[0]?.length ?? 0;
  const begins: number[] = [];
  objects.forEach((object, index) => {
    const whole = Buffer.concat([Buffer.from(`${index + 1} 0 obj\n`), object, Buffer.from('\nendobj\n')]);
    begins.push(at);
    at += whole.length;
    pieces.push(whole);
  });
  const lines = begins.map((begin) => `${String(begin).padStart(10, '0')} 00000 n \n`).join('');
  const size = objects.length + 1;
  pieces.push(
    Buffer.from(
      `xref\n0 ${size}\n0000000000 65535 f \n${lines}` +
        `trailer\n<< /Size ${size} /Root 1 0 R >>\nstartxref\n${at}\n%%EOF\n`,
    ),
  );
  return Buffer.concat(pieces);
}
