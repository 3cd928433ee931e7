/**
 * Score files of every container and encoding, and hostile ones. What is expected of each: "Bad input" of the issue, and
 * what the libraries were seen to do with such files (their sizes are believed, check sums are not read).
 */

import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { TagCount } from '../../../electron/services/score-tags.ts';
import { readScoreBytes } from '../../../electron/services/score-container.ts';
import '../../helpers/seed.ts';

const SCORE = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">
<score-partwise version="4.0"><movement-title>Fünf Lieder</movement-title>
<part-list><score-part id="P1"><part-name>Flöte</part-name></score-part></part-list>
<part id="P1"><measure number="1"><attributes><divisions>1</divisions></attributes><note><rest/><duration>4</duration></note></measure></part>
</score-partwise>`;
const TYPE = 'application/vnd.recordare.musicxml+xml';

function container(...paths: readonly string[]): string {
  const files = paths.map((path) => `<rootfile full-path="${path}" media-type="${TYPE}"/>`);
  return `<?xml version="1.0"?><container><rootfiles>${files.join('')}</rootfiles></container>`;
}

function zipped(files: Readonly<Record<string, string | Uint8Array>>): Uint8Array {
  return zipSync(
    Object.fromEntries(
      Object.entries(files).map(([name, content]) => [
        name,
        typeof content === 'string' ? strToU8(content) : content,
      ]),
    ),
  );
}

const mxl = (score: string | Uint8Array = SCORE, path = 'score.xml') =>
  zipped({ 'META-INF/container.xml': container(path), [path]: score });

function refused(bytes: Uint8Array, root: string | null = null): string {
  const before = performance.now();
  try {
    readScoreBytes(bytes, 'my.mxl', root);
  } catch (error) {
    expect(performance.now() - before).toBeLessThan(2000);
    const message = error instanceof Error ? error.message : '';
    expect(message).toMatch(/^"my\.mxl"/);
    expect(message).not.toContain('\n');
    return message;
  }
  throw new Error('was not refused');
}

/** The bytes with those at `at` replaced. */
function patched(bytes: Uint8Array, at: number, ...values: readonly number[]): Uint8Array {
  const copy = bytes.slice();
  copy.set(values, at);
  return copy;
}

/** Where the last directory entry begins: that of the score. */
function lastEntry(bytes: Uint8Array): number {
  return Buffer.from(bytes).lastIndexOf(Buffer.from([0x50, 0x4b, 1, 2]));
}

const bytesOf32 = (value: number) => [0, 8, 16, 24].map((shift) => (value >>> shift) & 0xff);

describe('a score file', () => {
  it('is known by its content: plain or compressed', () => {
    expect(readScoreBytes(strToU8(SCORE), 'x')).toMatchObject({
      root: null,
      score: { title: 'Fünf Lieder' },
    });
    expect(readScoreBytes(mxl(), 'x')).toMatchObject({ root: 'score.xml', score: { title: 'Fünf Lieder' } });
  });

  it('may be stored without compression, with a comment behind it', () => {
    const plain = zipSync(
      { 'META-INF/container.xml': strToU8(container('a/b.musicxml')), 'a/b.musicxml': strToU8(SCORE) },
      { level: 0, comment: 'made by hand' },
    );
    expect(readScoreBytes(plain, 'x').root).toBe('a/b.musicxml');
  });

  it.each([
    ['UTF-8 with a mark', Buffer.from(`\ufeff${SCORE}`)],
    ['UTF-16 with a mark, low end first', Buffer.from(`\ufeff${SCORE}`, 'utf16le')],
    ['UTF-16 with a mark, high end first', Buffer.from(`\ufeff${SCORE}`, 'utf16le').swap16()],
    ['UTF-16 by its first characters', Buffer.from(SCORE.replace('UTF-8', 'UTF-16'), 'utf16le')],
    ['Latin-1 as declared', Buffer.from(SCORE.replace('UTF-8', 'ISO-8859-1'), 'latin1')],
    ['no declaration', Buffer.from(SCORE.replace(/^<\?xml.*\?>\n/, ''))],
  ])('is read in %s', (_, bytes) => {
    for (const file of [bytes, mxl(bytes)])
      expect(readScoreBytes(file, 'x').score).toMatchObject({
        title: 'Fünf Lieder',
        parts: [{ name: 'Flöte' }],
      });
  });

  it('in bytes that are not its encoding is refused', () => {
    expect(refused(Buffer.from(SCORE, 'latin1'))).toContain('is not text in UTF-8');
    expect(refused(Buffer.from(SCORE.replace('UTF-8', 'EBCDIC-FR')))).toContain('in the encoding EBCDIC-FR');
    expect(refused(Buffer.from(SCORE.replace('UTF-8', 'constructor')))).toContain(
      'in the encoding constructor',
    );
  });

  it('with several scores gives the first, names the others, and gives them when asked', () => {
    const part = SCORE.replace('Fünf Lieder', 'Stimme');
    const files = zipped({
      'META-INF/container.xml': container('score.xml', 'parts/flute.xml'),
      'score.xml': SCORE,
      'parts/flute.xml': part,
    });
    const first = readScoreBytes(files, 'x');
    expect(first).toMatchObject({ root: 'score.xml', roots: ['score.xml', 'parts/flute.xml'] });
    expect(first.score.remarks.find(({ code }) => code === 'file.otherRoots')?.text).toBe('parts/flute.xml');
    expect(readScoreBytes(files, 'x', 'parts/flute.xml').score.title).toBe('Stimme');
    expect(readScoreBytes(files, 'x', 'flute.xml').score.title).toBe('Stimme');
    expect(refused(files, 'oboe.xml')).toContain('it holds "score.xml", "parts/flute.xml"');
    expect(refused(strToU8(SCORE), 'oboe.xml')).toContain('is one score');
  });

  it('with several scores says which parts each holds, as far as that can be read', () => {
    const listed = (...names: string[]) =>
      `<score-partwise><part-list>${names.map((name, index) => `<score-part id="P${index}"><part-name print-object="no">${name}</part-name></score-part>`).join('')}<!-- <part-name>None</part-name> --></part-list>`;
    const files = zipped({
      'META-INF/container.xml': container('score.xml', 'parts/P1.musicxml', 'parts/P2.musicxml', 'gone.xml'),
      'score.xml': SCORE,
      'parts/P1.musicxml': listed('Fl\u00f6te &amp; Piccolo', ' Oboe\n d&#8217;amore '),
      'parts/P2.musicxml': '<score-partwise>',
    });
    expect(readScoreBytes(files, 'x').rootParts).toEqual([
      ['Fl\u00f6te'],
      ['Fl\u00f6te & Piccolo', 'Oboe d\u2019amore'],
      [],
      [],
    ]);
    const alone = zipped({ 'META-INF/container.xml': container('score.xml'), 'score.xml': SCORE });
    expect(readScoreBytes(alone, 'x').rootParts).toEqual([]);
  });

  it('may name pictures and sounds beside the score', () => {
    const list = container('score.xml').replace(
      '<rootfile',
      '<rootfile full-path="cover.png" media-type="image/png"/><rootfile',
    );
    const files = zipped({ 'META-INF/container.xml': list, 'cover.png': 'x', 'score.xml': SCORE });
    expect(readScoreBytes(files, 'x').roots).toEqual(['score.xml']);
  });
});

describe('refused in one line:', () => {
  it('what is no score at all', () => {
    expect(refused(new Uint8Array(0))).toContain('is empty');
    expect(refused(strToU8('%PDF-1.7'))).toContain('is no MusicXML');
    expect(refused(strToU8('MThd'))).toContain('is no MusicXML');
    expect(refused(strToU8('<svg xmlns="http://www.w3.org/2000/svg"/>'))).toContain('begins with <svg>');
    expect(refused(strToU8('<opus/>'))).toContain('list of scores');
  });

  it('archives that are damaged', () => {
    const whole = mxl();
    for (const share of [0.1, 0.5, 0.9, 0.99])
      expect(refused(whole.subarray(0, Math.floor(whole.length * share)))).toContain(
        'not a whole compressed score',
      );
    const entry = lastEntry(whole);
    expect(refused(patched(whole, entry + 16, 1, 2, 3, 4))).toContain('check sum');
    expect(refused(patched(whole, entry + 24, ...bytesOf32(10)))).toContain('not as long as it says');
    expect(refused(patched(whole, entry + 42, 255, 255, 0, 0))).toContain('directory is broken');
    const content = Buffer.from(whole).lastIndexOf(Buffer.from([0x50, 0x4b, 3, 4])) + 60;
    expect(refused(patched(whole, content, 255, 255, 255, 255))).toMatch(
      /unpacked|cut short|check sum|as long/,
    );
  });

  it('archives with a password, or packed in another way', () => {
    const whole = mxl();
    expect(refused(patched(whole, lastEntry(whole) + 8, 1))).toContain('protected by a password');
    expect(refused(patched(whole, lastEntry(whole) + 10, 12))).toContain('unusual way');
  });

  it('archives that say nothing of a score, or name one that is not there', () => {
    expect(refused(zipped({ 'score.xml': SCORE }))).toContain('without META-INF/container.xml');
    expect(refused(zipped({}))).toContain('without META-INF/container.xml');
    expect(refused(zipped({ 'META-INF/container.xml': container('other.xml') }))).toContain(
      'does not hold it',
    );
    expect(refused(zipped({ 'META-INF/container.xml': container() }))).toContain('does not say which');
    expect(refused(zipped({ 'META-INF/container.xml': '<container' }))).toContain('damaged at line 1');
    expect(refused(zipped({ 'META-INF/container.xml': '<html/>' }))).toContain('<html>');
  });

  it.each(['../score.xml', '/etc/passwd', 'C:\\score.xml', 'a\\b.xml', 'a/../../b.xml'])(
    'the name %s',
    (name) => {
      expect(refused(zipped({ 'META-INF/container.xml': container(name), [name]: SCORE }))).toContain(
        'leads out',
      );
      expect(refused(zipped({ 'META-INF/container.xml': container(name), 'score.xml': SCORE }))).toContain(
        'leads out',
      );
    },
  );

  it('one name twice', () => {
    const whole = Buffer.from(
      zipped({ 'META-INF/container.xml': container('a.xml'), 'a.xml': SCORE, 'b.xml': SCORE }),
    );
    for (let at = whole.indexOf('b.xml'); at >= 0; at = whole.indexOf('b.xml')) whole.write('a.xml', at);
    expect(refused(whole)).toContain('"a.xml" twice');
  });

  it('names that mean something to JavaScript are names like others', () => {
    const files = Buffer.from(zipped({ 'META-INF/container.xml': container('__proto__'), a_proto_b: SCORE }));
    for (let at = files.indexOf('a_proto_b'); at >= 0; at = files.indexOf('a_proto_b'))
      files.write('__proto__', at);
    expect(readScoreBytes(files, 'x').root).toBe('__proto__');
  });

  it('too many files', () => {
    const many = Object.fromEntries(Array.from({ length: 201 }, (_, index) => [`f${index}`, 'x']));
    expect(refused(zipped({ 'META-INF/container.xml': container('f0'), ...many }))).toContain('at most 200');
  });

  it('bombs, whatever sizes they state', () => {
    const spaces = Buffer.alloc(100 * 1024 * 1024, ' ');
    spaces.write('<score-partwise>');
    const honest = mxl(spaces);
    expect(honest.length).toBeLessThan(300_000);
    expect(refused(honest)).toContain('more than 64 MB');
    const lying = patched(honest, lastEntry(honest) + 24, ...bytesOf32(1000));
    expect(refused(lying)).toContain('swells to more than 200 times its size');
    const memory = process.memoryUsage().arrayBuffers;
    refused(lying);
    expect(process.memoryUsage().arrayBuffers - memory).toBeLessThan(16 * 1024 * 1024);
  });

  it('an archive in an archive', () => {
    expect(refused(mxl(mxl()))).toContain('compressed file again');
  });

  it('a check sum that fits is needed even where all sizes fit', () => {
    const content = strToU8(SCORE);
    expect(crc32(content)).toBe(crc32(strToU8(SCORE)));
    const plain = Buffer.from(
      zipSync({ 'META-INF/container.xml': strToU8(container('a.xml')), 'a.xml': content }, { level: 0 }),
    );
    plain.write('Sechs', plain.indexOf('F\u00fcnf'));
    expect(refused(plain)).toContain('check sum');
  });
});

describe('five million elements and more', () => {
  const swarm = `<score-partwise>${'<n/>'.repeat(5_000_001)}</score-partwise>`;

  it.each([
    ['plain', () => strToU8(swarm)],
    ['in two bytes a character', () => new Uint8Array(Buffer.from(`\ufeff${swarm}`, 'utf16le'))],
  ])('%s: refused before they are parsed', (_, bytes) => {
    const given = bytes();
    const before = process.cpuUsage();
    expect(() => readScoreBytes(given, 'swarm.xml')).toThrow('more than 5,000,000 elements');
    const { user, system } = process.cpuUsage(before);
    // Parsing takes the better part of two seconds here; counting a fifth of one.
    expect((user + system) / 1e6).toBeLessThan(1);
  });

  it('are counted as a parser would, wherever the pieces are cut', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('<a>', '</a>', '<Bb c="1"/>', ' 1 < 2 ', '\n', '<?x?>', '<!-- -->'), {
          maxLength: 30,
        }),
        fc.integer({ min: 1, max: 7 }),
        fc.constantFrom('utf8' as const, 'utf16le' as const),
        (pieces, cut, encoding) => {
          const bytes = Buffer.from(pieces.join(''), encoding);
          const count = new TagCount();
          for (let from = 0; from < bytes.length; from += cut) count.add(bytes.subarray(from, from + cut));
          expect(count.tags).toBe(pieces.filter((piece) => /^<\w/.test(piece)).length);
        },
      ),
    );
  });
});
