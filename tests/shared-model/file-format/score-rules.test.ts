/** Music that no score could give is refused with the place that is wrong. */

import { describe, expect, it } from 'vitest';
import type { Music, Part } from '#model/document/music.ts';
import type { PartPdf, ScoreRecord } from '#model/document/records.ts';
import { documentRuleBroken } from '#model/file-format/document-rules.ts';
import { readRecord } from '#model/file-format/record.ts';
import { aDocument, aPdf, aPlayer, aScore, MUSIC } from '../../helpers/build.ts';

const part = MUSIC.parts[0]!;
const withMusic = (music: Partial<Music>) => aScore({ music: { ...MUSIC, ...music } });
const withPart = (fields: Partial<Part>) => withMusic({ parts: [{ ...part, ...fields }] });
const withPdf = (fields: Partial<PartPdf>) => aScore({ pdfs: [aPdf(fields)] });
const tempo = { bar: 0, at: 0, quartersPerMinute: 60, source: 'typed' } as const;

describe('music', () => {
  it('is read as it was written', () => {
    expect(readRecord(aScore())).toEqual({ ok: true, record: aScore() });
    const printed = withPdf({ file: `${'x'.repeat(196)}.PDF`, pages: [null, 3, 3], staffSize: 7 });
    expect(readRecord(printed)).toEqual({ ok: true, record: printed });
  });

  it.each([
    ['players', aScore({ players: [null, null] })],
    ['players[1]', { ...withMusic({ parts: [part, part] }), players: ['player-1', 'player-1'] }],
    [
      'music.order[1]',
      withMusic({
        order: [
          [0, 3],
          [2, 4],
        ],
      }),
    ],
    ['music.order[0]', withMusic({ order: [[3, 0]] })],
    ['music.afterJump.otherwise[0]', withMusic({ afterJump: { repeats: true, otherwise: [[2, 4]] } })],
    ['pdfs', aScore({ pdfs: [null, null] })],
    ['pdfs', aScore({ pdfs: [] })],
    ['pdfs[0].pages[1]', withPdf({ pages: [3, 4] })],
    ['pdfs[0].pages[0]', withPdf({ pages: [0] })],
    ['pdfs[0].pages[0]', withPdf({ pages: [1.5] })],
    ['pdfs[0].sizes', withPdf({ sizes: [], pages: [] })],
    ['pdfs[0].sizes[0].width', withPdf({ sizes: [{ width: 39, height: 297 }] })],
    ['pdfs[0].sha256', withPdf({ sha256: 'A'.repeat(64) })],
    ['pdfs[0].sha256', withPdf({ sha256: 'a'.repeat(63) })],
    ['pdfs[0].staffSize', withPdf({ staffSize: 0 })],
    ...['', '.pdf', 'oboe', '../oboe.pdf', 'parts/oboe.pdf', 'C:\\oboe.pdf', 'a\u0000.pdf', '\ud800.pdf'].map(
      (file): [string, ScoreRecord] => ['pdfs[0].file', withPdf({ file })],
    ),
    ['pdfs[0].file', withPdf({ file: `${'x'.repeat(197)}.pdf` })],
    ['music.order[25000]', withMusic({ order: Array.from({ length: 30_000 }, () => [0, 3] as const) })],
    [
      'music.tempos[1]',
      withMusic({
        tempos: [
          { ...tempo, at: 4 },
          { ...tempo, at: 4 },
        ],
      }),
    ],
    ['music.tempos[0]', withMusic({ tempos: [{ ...tempo, at: 9 }] })],
    ['music.tempos[0].quartersPerMinute', withMusic({ tempos: [{ ...tempo, quartersPerMinute: 0 }] })],
    ['music.movements[0]', withMusic({ movements: [1] })],
    ['music.movements[1]', withMusic({ movements: [0, 4] })],
    ['music.parts[0].silences[0]', withPart({ silences: [[2, 4, 0]] })],
    ['music.parts[0].silences[0]', withPart({ silences: [[4, 0, 1]] })],
    [
      'music.parts[0].silences[1]',
      withPart({
        silences: [
          [1, 0, 4],
          [1, 2, 6],
        ],
      }),
    ],
    ['music.parts[0].pages[0]', withPart({ pages: [{ page: 1, bar: 1 }] })],
    [
      'music.parts[0].pages[1]',
      withPart({
        pages: [
          { page: 1, bar: 0 },
          { page: 2, bar: 0 },
        ],
      }),
    ],
    ['music.parts[0].instruments[0].bar', withPart({ instruments: [{ bar: 4, name: 'Flute' }] })],
    ['music.bars', withMusic({ bars: [] })],
  ])('wrong in %s', (field, record) => {
    expect(readRecord(record)).toMatchObject({ ok: false, complaint: { field } });
  });

  it('is there once a setup', () => {
    const twice = aDocument(aPlayer(), aScore(), aScore({ id: 'score-2' }));
    expect(documentRuleBroken(twice)).toMatchObject({ field: 'setup', record: { id: 'score-2' } });
  });
});
