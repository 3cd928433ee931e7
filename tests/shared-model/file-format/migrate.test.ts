import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allOf, type Document } from '#model/document/document.ts';
import { migrate, STEPS, type Json, type Steps } from '#model/file-format/migrate.ts';
import type { ScoreRecord } from '#model/document/records.ts';
import { readDocument } from '#model/file-format/read.ts';
import { VERSION } from '#model/file-format/schema.ts';
import { fixtureText } from './fixtures.ts';

// A history that never happened: version 1 called a field of the concert "title", version 2 had no author.
const concertChanged = (file: Json, change: (record: Json) => Json): Json => ({
  ...file,
  records: (file['records'] as Json[]).map((record) =>
    record['kind'] === 'concert' ? change(record) : record,
  ),
});
const INVENTED: Steps = new Map([
  [1, (file: Json) => concertChanged(file, ({ title, ...rest }) => ({ ...rest, name: title }))],
  [2, (file: Json) => concertChanged(file, (concert) => ({ ...concert, author: 'unknown' }))],
]);
const asVersion = (version: number): string =>
  fixtureText('good', 'by-hand.standlines').replace(/"version": \d+/, `"version": ${version}`);
const OLD_TEXT = asVersion(1).replace('"name": "Spring evening"', '"title": "Spring evening"');

describe('version 2', () => {
  const read = (text: string): Document => {
    const result = readDocument(text);
    if (!result.ok) throw new Error(result.problem.message);
    return result.document;
  };

  it('says of every player of an older file that he walks', () => {
    const players = allOf(read(asVersion(1)), 'player');
    expect(players.length).toBeGreaterThan(0);
    for (const { mobility } of players) expect(mobility).toBe('walks');
  });

  it('takes a seat called a wheelchair, which version 1 did not know, for what it says', () => {
    const text = asVersion(1).replace(
      '"kind": "player",',
      '"kind": "player", "chair": { "model": "wheelchair", "height": 500 },',
    );
    expect(allOf(read(text), 'player')[0]).toMatchObject({
      mobility: 'wheelchair',
      chair: { model: 'wheelchair', height: 500 },
    });
  });

  it('does not take who sits in a wheelchair for somebody who walks', () => {
    const text = asVersion(2).replace(
      '"kind": "player",',
      '"kind": "player", "mobility": "walks", "chair": { "model": "wheelchair", "height": 500 },',
    );
    expect(readDocument(text)).toMatchObject({
      ok: false,
      problem: { message: expect.stringContaining('who sits in a wheelchair uses it; give "wheelchair"') },
    });
  });

  it('is reached without a fault whatever the records of the old file are', () => {
    fc.assert(
      fc.property(fc.json(), (records) => {
        const text = `{"format": "standlines", "version": 1, "records": ${records}}`;
        expect(readDocument(text).ok).toBe(false);
      }),
    );
  });
});

describe('version 3', () => {
  const older = fixtureText('old', 'version-2.standlines');
  const music = (text: string): ScoreRecord | undefined => {
    const result = readDocument(text);
    if (!result.ok) throw new Error(result.problem.message);
    return allOf(result.document, 'score')[0];
  };

  it('knows no PDF of a part of an older file', () => {
    const file = JSON.parse(older) as { records: Json[] };
    const records = file.records.map((record) =>
      record['kind'] === 'score' ? { ...record, players: ['player-1'] } : record,
    );
    expect(music(JSON.stringify({ ...file, records }))).toMatchObject({
      pdfs: [null],
      music: { afterJump: null },
    });
  });

  it('is not what an older file with PDFs says it is', () => {
    const hasPdfs = older.replace('"version": 2', '"version": 4');
    expect(readDocument(hasPdfs)).toMatchObject({
      ok: false,
      problem: {
        message: expect.stringContaining('PDFs of the parts is missing; give a list with 1 to 500 entries'),
      },
    });
  });
});

describe('version 4', () => {
  it('takes every setup of an older file for one of the programme', () => {
    const result = readDocument(fixtureText('old', 'version-3.standlines'));
    if (!result.ok) throw new Error(result.problem.message);
    expect(
      allOf(result.document, 'setup').map(({ variantOf, changeTime }) => [variantOf, changeTime]),
    ).toEqual([
      [null, null],
      [null, null],
    ]);
  });
});

describe('bringing old files up to date', () => {
  it('has a step for every version before this one', () => {
    expect([...STEPS.keys()].sort()).toEqual(Array.from({ length: VERSION - 1 }, (_, index) => index + 1));
  });

  it('takes one step after another and says so', () => {
    const result = readDocument(OLD_TEXT, { version: 3, steps: INVENTED });
    if (!result.ok) throw new Error(result.problem.message);
    expect(result.document.records.get('concert')).toMatchObject({
      name: 'Spring evening',
      author: 'unknown',
    });
    expect(result.notes).toEqual(['The file was of version 1 and has been brought up to version 3.']);
  });

  it('starts at the version of the file', () => {
    expect(readDocument(asVersion(2), { version: 3, steps: INVENTED })).toMatchObject({
      ok: true,
      notes: ['The file was of version 2 and has been brought up to version 3.'],
    });
  });

  it('leaves what it is given as it was', () => {
    const file = JSON.parse(OLD_TEXT) as Json;
    const before = JSON.stringify(file);
    expect(migrate(file, 1, 3, INVENTED)).toMatchObject({
      ok: true,
      file: { format: 'standlines', version: 3 },
    });
    expect(JSON.stringify(file)).toBe(before);
  });

  it('refuses when a step fails half way or is missing', () => {
    const failing: Steps = new Map([
      ...INVENTED,
      [
        2,
        () => {
          throw new Error('half way');
        },
      ],
    ]);
    const missing: Steps = new Map([...INVENTED].slice(0, 1));
    for (const steps of [failing, missing]) {
      expect(readDocument(OLD_TEXT, { version: 3, steps })).toEqual({
        ok: false,
        problem: {
          path: 'version',
          message: 'The file is of version 1 and could not be brought up to date.',
        },
      });
    }
  });

  it('refuses what a step leaves behind that is no good', () => {
    const useless: Steps = new Map([[1, () => ({ format: 'standlines', records: [{}] })]]);
    expect(readDocument(OLD_TEXT, { version: 2, steps: useless })).toMatchObject({
      ok: false,
      problem: { path: 'records[0].kind' },
    });
  });
});
