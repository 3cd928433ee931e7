import { describe, expect, it } from 'vitest';
import type { AnyRecord } from '#model/document/records.ts';
import { MOST_TEXT } from '#model/file-format/limits.ts';
import { readDocument, type ReadResult } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import {
  aConcert,
  aPlace,
  aPlatform,
  aPlayer,
  aSeatBlock,
  aSetup,
  aShape,
  aStand,
} from '../../helpers/build.ts';
import { asId } from '#model/document/ids.ts';

const MOST_SECONDS = 2;

/** Processor time, because the machine may be busy with other things while the tests run. */
function secondsFor(work: () => void): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1e6;
}

/** Reads, and fails when it takes longer than a person at the screen should wait. */
function readInTime(source: string): ReadResult {
  // From bytes, as a file is: a text glued together in memory would first have to be made whole.
  const text = Buffer.from(source).toString();
  let result: ReadResult | undefined;
  const seconds = secondsFor(() => {
    result = readDocument(text);
  });
  expect(seconds, `took ${seconds.toFixed(2)} s`).toBeLessThan(MOST_SECONDS);
  if (!result) throw new Error('not read');
  return result;
}

const messageOf = (result: ReadResult): string => (result.ok ? 'it was read' : result.problem.message);

const fileOf = (records: readonly unknown[]): string =>
  JSON.stringify({ format: 'standlines', version: 4, records });

const NEEDED = [aConcert(), aSetup(), aPlatform()];

const many = (count: number, make: (index: number) => AnyRecord): AnyRecord[] =>
  Array.from({ length: count }, (_, i) => make(i));

describe('hostile files are refused in time', () => {
  it('nested deeply, as lists and as objects', () => {
    const depth = 1_000_000;
    const start = '{"format": "standlines", "version": 4, "records": ';
    const lists = `${start}${'['.repeat(depth)}${']'.repeat(depth)}}`;
    const objects = `${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}`;
    expect(messageOf(readInTime(lists))).toBe(
      `Line 1, column ${start.length + 100}: it is nested deeper than 100 levels.`,
    );
    expect(messageOf(readInTime(objects))).toMatch(/nested deeper than 100 levels/);
    expect(messageOf(readInTime(`{"a": ${'['.repeat(depth)}`))).toMatch(/nested deeper/);
  });

  it('of more than 64 MB', () => {
    expect(messageOf(readInTime(' '.repeat(MOST_TEXT + 1)))).toBe('The file is larger than 64 MB.');
  });

  it('of nearly 64 MB: one text, one number, blanks, empty lists, backslashes, quotes', () => {
    const filled = (piece: string): string => piece.repeat(Math.floor((MOST_TEXT - 200) / piece.length));
    const within = (inner: string): string => `{"format": "standlines", "version": 4, "records": [${inner}]}`;
    expect(messageOf(readInTime(within(`"${filled('a')}"`)))).toMatch(/record 1: "a{59}… is not allowed/);
    expect(messageOf(readInTime(within(filled('1'))))).toMatch(/record 1: a number too large to hold/);
    expect(messageOf(readInTime(within(filled(' '))))).toMatch(/There is no concert/);
    expect(messageOf(readInTime(within(`[]${filled(',[]')}`)))).toMatch(
      /more here than a Standlines file can hold/,
    );
    expect(messageOf(readInTime(within(`"${filled('\\\\')}"`)))).toMatch(/is not allowed/);
    expect(messageOf(readInTime(filled('"')))).toMatch(/does not start with/);
    expect(messageOf(readInTime(filled('\n')))).toBe('The file is empty.');
  });

  it('with a name, an id, a kind or a key of ten million characters', () => {
    const long = 'x'.repeat(10_000_000);
    for (const record of [
      { ...aConcert(), name: long },
      { ...aConcert(), id: long },
      { ...aConcert(), kind: long },
      { ...aConcert(), [long]: 1 },
    ]) {
      const message = messageOf(readInTime(fileOf([record])));
      expect(message).toMatch(/is not allowed|not a known field/);
      expect(message.length).toBeLessThan(500);
    }
  });

  it('with too many fields, records, corners, seats, rows or setups', () => {
    const wide = Object.fromEntries(Array.from({ length: 100_000 }, (_, index) => [`k${index}`, 0]));
    expect(messageOf(readInTime(fileOf([wide])))).toMatch(/too many fields in one object/);
    expect(messageOf(readInTime(fileOf(Array(20_001).fill(0))))).toBe(
      'There are 20001 records; at most 20000 are possible: make two concerts of it.',
    );
    const ring = Array.from({ length: 500 }, (_, i) => ({
      x: 1000 * Math.cos((i * Math.PI) / 250),
      y: 1000 * Math.sin((i * Math.PI) / 250),
    }));
    const shapes = many(201, (i) => aShape({ id: asId(`shape-${i}`), outline: ring }));
    expect(messageOf(readInTime(fileOf([...NEEDED, ...shapes])))).toMatch(/100504 corners .* at most 100000/);
    const rows = many(101, (i) => aSeatBlock({ id: asId(`b-${i}`), rows: 200, seatsPerRow: 1 }));
    expect(messageOf(readInTime(fileOf([...NEEDED, ...rows])))).toMatch(/20200 rows of seats; at most 20000/);
    const setups = many(200, (i) => aSetup({ id: asId(`another-${i}`) }));
    expect(messageOf(readInTime(fileOf([...NEEDED, ...setups])))).toBe(
      'There are 201 setups; at most 200 are possible: make two concerts of it.',
    );
  });

  it('with more players in a setup, or more of them before more places, than can be checked', () => {
    const players = (count: number, setup: string | null = 'setup-1') =>
      many(count, (i) =>
        aPlayer({ id: asId(`${setup ?? 'all'}-${i}`), setup: setup === null ? null : asId(setup) }),
      );
    const house = (rows: number) => aSeatBlock({ rows, seatsPerRow: 100 });
    const read = (...records: AnyRecord[]) => messageOf(readInTime(fileOf([...NEEDED, ...records])));
    expect(read(...players(500), house(20))).toBe('it was read');
    expect(read(...players(501))).toBe(
      'Setup "Trio" has 501 players; at most 500 are possible in one: take some out, or make two setups of it.',
    );
    expect(read(...players(500), ...players(1, null))).toMatch(/has 501 players/);
    // Those of another setup are never there at the same time.
    expect(read(...players(500), aSetup({ id: 'setup-2' }), ...players(500, 'setup-2'))).toBe('it was read');
    expect(read(...players(250), house(40))).toBe('it was read');
    expect(read(...players(251), house(40))).toBe(
      'Setup "Trio" has 251 players before 4000 places, which makes 1004000 lines of sight; at most 1000000 are ' +
        'possible: leave out players, or parts of the house.',
    );
    const places = many(1, () => aPlace());
    expect(read(...players(250), house(40), ...places)).toMatch(/250 players before 4001 places/);
  });

  it('with a name that holds a line end of any kind, which the message spells out', () => {
    for (const [name, spelled] of [
      ['a\u2028b', '"a\\u2028b"'],
      ['a\u2029b', '"a\\u2029b"'],
      ['a\u009b31m', '"a\\u009b31m"'],
      ['\u202ea\u0007', '"\\u202ea\\u0007"'],
    ] as const) {
      expect(messageOf(readInTime(fileOf([aConcert({ name })])))).toContain(
        `name of the concert: ${spelled} is not allowed`,
      );
    }
  });

  it('with an outline that touches itself everywhere', () => {
    const comb = Array.from({ length: 500 }, (_, i) => ({
      x: i % 2 === 0 ? -1e6 : 1e6,
      y: (i * 7919) % 500,
    }));
    const shapes = many(300, (i) => aShape({ id: asId(`shape-${i}`), outline: comb }));
    expect(messageOf(readInTime(fileOf([...NEEDED, ...shapes])))).toMatch(/crosses or touches itself/);
  });
});

describe('large files are read in time', () => {
  it('ten thousand items', () => {
    const items = many(10_000, (i) =>
      aStand({ id: asId(`stand-${i + 1}`), x: (i % 100) * 50, y: Math.floor(i / 100) * 50 }),
    );
    const result = readInTime(fileOf([...NEEDED, ...items]));
    expect(result.ok && result.document.records.size).toBe(10_003);
  });

  it('as many records, corners and seats as there may be', () => {
    const ring = Array.from({ length: 400 }, (_, i) => ({
      x: 1000 * Math.cos((i * Math.PI) / 200),
      y: 1000 * Math.sin((i * Math.PI) / 200),
    }));
    const records: AnyRecord[] = [
      ...NEEDED,
      ...many(249, (i) => aShape({ id: asId(`shape-${i}`), outline: ring })),
      ...many(100, (i) => aSeatBlock({ id: asId(`b-${i}`), rows: 20, seatsPerRow: 25 })),
    ];
    const stands = many(20_000 - records.length, (i) => aStand({ id: asId(`stand-${i}`) }));
    const result = readInTime(fileOf([...records, ...stands]));
    expect(messageOf(result)).toBe('it was read');
    if (!result.ok) return;
    const { document } = result;
    expect(secondsFor(() => writeDocument(document))).toBeLessThan(2 * MOST_SECONDS);
  });
});
