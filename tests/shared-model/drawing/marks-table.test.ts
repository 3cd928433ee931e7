/** The table of marks says enough to set by: where a cable turns and ends, how big a thing is and which end is where. */

import { describe, expect, it } from 'vitest';
import type { AnyRecord } from '#model/document/records.ts';
import { marksTable } from '#model/drawing/sheet/marks-table.ts';
import { aDocument, aLamp, aLargeInstrument, aPiano } from '../../helpers/build.ts';
import { textsIn } from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';

const rowsOf = (units: 'metric' | 'imperial', ...records: AnyRecord[]) =>
  marksTable(plotRequest(aDocument(...records), { units })).rows;

const notesOf = (...records: AnyRecord[]): string => rowsOf('metric', ...records)[0]?.at(-1) ?? '';

const corners = [
  { x: 1800, y: 4300 },
  { x: -2300, y: 5000 },
  { x: -2600, y: 5400 },
];

describe('the cable of a lamp', () => {
  it('has a row for every corner and one for its socket, under its lamp', () => {
    const rows = rowsOf('metric', aLamp({ x: 1200, y: 3200, cable: corners }));
    expect(rows.map((row) => row.slice(0, 4))).toEqual([
      ['L1', 'Lamp', '1200 SL', '3200 US'],
      ['', 'Cable of L1 by', '1800 SL', '4300 US'],
      ['', 'Cable of L1 by', '2300 SR', '5000 US'],
      ['', 'Socket of L1', '2600 SR', '5400 US'],
    ]);
    for (const row of rows) expect(row).toHaveLength(8);
  });

  it('is given in feet and inches where the concert is', () => {
    const rows = rowsOf('imperial', aLamp({ cable: [{ x: 1219.2, y: 3048 }] }));
    // 4 x 304.8 mm and 10 x 304.8 mm: the international foot of 1959.
    expect(rows[1]?.slice(1, 4)).toEqual(['Socket of L1', `4'-0" SL`, `10'-0" US`]);
  });

  it('starts at the lamp: a first point that lies under it is no corner', () => {
    const lamp = { x: 1200, y: 3200 };
    const [own, ...cable] = rowsOf('metric', aLamp({ ...lamp, cable: [lamp, { x: 1200, y: 5200 }] }));
    expect(own?.at(-1)).toContain('cable 2000 mm, not covered');
    expect(cable).toHaveLength(1);
    expect(rowsOf('metric', aLamp(lamp))).toHaveLength(1);
  });

  it('has the sign of its socket in the key, which no plan without one has', () => {
    const signs = (cable: typeof corners): string[] =>
      textsIn(sheetsOf(plotRequest(aDocument(aLamp({ cable })))).sheets[0]?.children ?? []).map(
        ({ text }) => text,
      );
    expect(signs(corners)).toContain('socket');
    expect(signs([])).not.toContain('socket');
  });
});

describe('the notes of an instrument that stands on the floor', () => {
  it('have its size and where its low end lies, whichever way it is turned', () => {
    // Low bars are on the player's left; facing the house his left is stage left.
    const low = (facing: number): string => notesOf(aLargeInstrument({ model: 'marimba-5-octave', facing }));
    expect(low(0)).toBe('2600 × 1020, 950 high; low end stage left');
    expect(low(180)).toContain('low end stage right');
    expect(low(90)).toContain('low end upstage');
    expect(low(-45)).toContain('low end downstage left');
  });

  it('have the largest drum of a set, and only the size where no end tells itself apart', () => {
    expect(notesOf(aLargeInstrument({ model: 'timpani' }))).toContain('largest drum stage left');
    expect(notesOf(aLargeInstrument({ model: 'celesta' }))).toBe('1200 × 600, 1050 high');
    expect(notesOf(aLargeInstrument({ model: 'none of these' }))).toBe('');
  });

  it('have the size of a piano, the tail of a grand and the keys of an upright', () => {
    // At 90° the pianist looks to stage left, where the tail is.
    expect(notesOf(aPiano({ facing: 90 }))).toBe('1510 × 2110; tail stage left; lid closed');
    expect(notesOf(aPiano({ model: 'upright', facing: 180 }))).toContain('1500 × 620; keys downstage');
  });
});
