/** Row by row over documents: published examples, the closed form, and the sight check as the arbiter. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildScene } from '#model/checks/scene/build-scene.ts';
import { riserForC } from '#model/checks/sightlines/c-value.ts';
import { CLEARANCE_BANDS, clearanceLevel } from '#model/checks/sightlines/rake-clearance.ts';
import { rakeFigures, type RakeRow } from '#model/checks/sightlines/rake.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { venueModel } from '#model/catalogue/venues.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { SeatBlock } from '#model/document/records.ts';
import {
  aConcert,
  aDocument,
  aPlatform,
  aPlayer,
  aRiser,
  aSeatBlock,
  aSetup,
  SETUP,
} from '../../../helpers/build.ts';
import { capsule, targetOf } from '../../../helpers/scenes.ts';

const STALLS = asId<'seatBlock'>('stalls');

/** A platform `focus` mm above the house floor whose edge lies `distance` mm before the eyes of the first row. */
function houseOf(distance: number, focus: number, block: Partial<Omit<SeatBlock, 'id'>>): Document {
  return aDocument(aPlatform({ height: focus }), aSeatBlock({ y: -distance, ...block }));
}

function rowsOf(document: Document, block = STALLS): readonly RakeRow[] {
  const rake = rakeFigures(document, SETUP, block)[0];
  if (!rake) throw new Error('no such block');
  return rake.rows;
}

const clearances = (rows: readonly RakeRow[]): (number | undefined)[] =>
  rows.map(({ oneRow }) => oneRow?.clearance);

describe('published examples, as houses', () => {
  // NRICH "Arsenal Collection: Stadium Sightline", University of Cambridge, no. 8823: D 30 m, R 10 m, T 1 m, C 150 mm.
  test('NRICH 8823: a step of 488.333 mm gives 150 mm, and is what 150 mm needs', () => {
    const [, second] = rowsOf(
      houseOf(30_000, 0, { rows: 2, rowDepth: 1000, riser: 488.333, eyeHeight: 10_000 }),
    );
    expect(second?.oneRow).toMatchObject({ distance: 30_000, height: 10_000, rowDepth: 1000, over: 'A' });
    expect(Math.abs((second?.oneRow?.clearance ?? NaN) - 150)).toBeLessThan(0.001);
    expect(second?.oneRow && riserForC(second.oneRow, 150)).toBeCloseTo(488.333, 3);
  });

  // NRICH 7484 "Stadium Sightline": row-1 eye 1.2 m, focus 10 m before it on the ground, rows 0.8 m, clearance 0.2 m.
  // Eye heights in metres: the published recursion evaluated on its inputs, here to six places.
  const eyes = [1.2, 1.512, 1.838815, 2.179423, 2.532934];

  test('NRICH 7484: eyes of the first five rows, each row a block, give 200 mm row by row', () => {
    const blocks = eyes.map((eye, n) => rowAlone(n, { distance: 10 + 0.8 * n, eye }));
    const document = documentOf([aConcert(), aSetup(), aPlatform({ height: 0 }), ...blocks]);
    const figures = blocks.map(({ id }) => rowsOf(document, id)[0]?.oneRow?.clearance);
    expect(figures[0]).toBeUndefined();
    for (const figure of figures.slice(1)) expect(Math.abs((figure ?? NaN) - 200)).toBeLessThan(0.01);
  });

  test('NRICH 7484: forty rows built by the needed step end at an eye of 19.844454 m, each step larger', () => {
    let blocks = [rowAlone(0, { distance: 10, eye: 1.2 })];
    const risers: number[] = [];
    for (let n = 1; n < 40; n++) {
      // A row as high as the one before it says what it would need.
      const last = blocks.at(-1)?.floor ?? NaN;
      const level = rowAlone(n, { distance: 10 + 0.8 * n, eye: 1.2 + last / 1000 });
      const document = documentOf([aConcert(), aSetup(), aPlatform({ height: 0 }), ...blocks, level]);
      const pair = rowsOf(document, level.id)[0]?.oneRow;
      const riser = pair ? riserForC(pair, 200) : NaN;
      risers.push(riser);
      blocks = [...blocks, { ...level, floor: last + riser }];
    }
    expect(Math.abs((blocks.at(-1)?.floor ?? NaN) + 1200 - 19_844.454)).toBeLessThan(0.01);
    expect(risers[0]).toBeCloseTo(312, 6);
    expect(risers.at(-1)).toBeCloseTo(585.329, 3);
    expect(risers.every((riser, i) => i === 0 || riser > (risers[i - 1] ?? Infinity))).toBe(true);
  });

  // Exact arithmetic on the same formula: D, R, N, T; over one row, and over two with 2 N and 2 T.
  test.each([
    [6000, 2000, 300, 800, 29.412, 52.632],
    [12_000, 3000, 350, 800, 140.625, 264.706],
    [5000, 520, 0, 900, -79.322, -137.647],
    [5000, -180, 0, 900, 27.458, 47.647],
    [8000, 620, 150, 900, 72.135, 131.02],
    [8000, 620, 300, 900, 206.966, 375.918],
  ])('D %d, R %d, N %d, T %d', (distance, height, riser, rowDepth, oneRow, twoRows) => {
    const platform = 600;
    const rows = rowsOf(
      houseOf(distance, platform, { rows: 3, rowDepth, riser, eyeHeight: platform + height }),
    );
    expect(rows[1]?.oneRow?.clearance).toBeCloseTo(oneRow, 3);
    expect(rows[2]?.twoRows?.clearance).toBeCloseTo(twoRows, 3);
    expect(rows[0]).toMatchObject({ oneRow: null, twoRows: null, inLine: null, level: null });
  });
});

/** Row n of a house on its own, with its eyes `eye` m above the house floor and `distance` m before the edge. */
function rowAlone(n: number, { distance, eye }: { distance: number; eye: number }): SeatBlock {
  return aSeatBlock({
    id: `row-${n}`,
    rows: 1,
    y: -1000 * distance,
    floor: 1000 * eye - 1200,
    eyeHeight: 1200,
    firstRow: String(n + 1),
  });
}

describe('laws', () => {
  const houses = fc.record({
    distance: fc.double({ min: 1500, max: 30_000, noNaN: true }),
    platform: fc.double({ min: 0, max: 1100, noNaN: true }),
    rowDepth: fc.double({ min: 700, max: 1400, noNaN: true }),
    riser: fc.double({ min: 0, max: 450, noNaN: true }),
    staggered: fc.boolean(),
  });

  test('on a flat floor C = -R T / (D + T)', () => {
    fc.assert(
      fc.property(houses, ({ distance, platform, rowDepth }) => {
        for (const { oneRow } of rowsOf(houseOf(distance, platform, { rowDepth })).slice(1)) {
          const { distance: d = NaN, height: r = NaN, rowDepth: t = NaN } = oneRow ?? {};
          expect(Math.abs((oneRow?.clearance ?? NaN) + (r * t) / (d + t))).toBeLessThan(1e-9);
        }
      }),
    );
  });

  test('the step that is said to be needed for a clearance gives that clearance', () => {
    fc.assert(
      fc.property(houses, fc.constantFrom(0, 1, 2), ({ distance, platform, ...block }, which) => {
        const needed = rowsOf(houseOf(distance, platform, { ...block, rows: 2 }))[1]?.oneRow?.needed[which];
        const riser = needed?.riser ?? NaN;
        const built = rowsOf(houseOf(distance, platform, { ...block, riser, rows: 2 }));
        expect(Math.abs((built[1]?.oneRow?.clearance ?? NaN) - (needed?.clearance ?? NaN))).toBeLessThan(
          1e-6,
        );
      }),
    );
  });

  test('the figures are those of the line through both eyes and the focus, drawn as geometry', () => {
    fc.assert(
      fc.property(houses, ({ distance, platform, ...block }) => {
        const rows = rowsOf(houseOf(distance, platform, { ...block, rows: 6 }));
        rows.forEach((row, n) => {
          for (const [figure, back] of [
            [row.oneRow, 1],
            [row.twoRows, 2],
          ] as const) {
            const front = rows[n - back];
            if (!front) continue;
            // The front edge is at y = 0, z = 0; the eyes of row n at y = -(distance + n T).
            const far = distance + n * block.rowDepth;
            const near = distance + (n - back) * block.rowDepth;
            const height = (row.eyeZ * near) / far - front.eyeZ;
            expect(Math.abs((figure?.clearance ?? NaN) - height)).toBeLessThan(1e-6);
          }
        });
      }),
    );
  });

  test('turning the block about the platform changes no figure', () => {
    fc.assert(
      fc.property(houses, fc.double({ min: -80, max: 80, noNaN: true }), (house, angle) => {
        const { distance, platform, ...block } = house;
        const radius = 2000;
        const turn = (angle * Math.PI) / 180;
        const round = Array.from({ length: 720 }, (_, i) => ({
          x: radius * Math.cos((i * Math.PI) / 360),
          y: radius * Math.sin((i * Math.PI) / 360),
        }));
        const seated = (about: number, facing: number): (number | undefined)[] => {
          const at = { x: (radius + distance) * Math.sin(about), y: -(radius + distance) * Math.cos(about) };
          return clearances(
            rowsOf(
              aDocument(
                aPlatform({ outline: round, height: platform }),
                aSeatBlock({ ...block, ...at, facing }),
              ),
            ),
          );
        };
        const turned = seated(turn, 180 + angle);
        // A polygon of 720 sides is round within 0.02 mm.
        seated(0, 180).forEach((figure, row) => {
          if (row > 0) expect(Math.abs((turned[row] ?? NaN) - (figure ?? NaN))).toBeLessThan(0.02);
        });
      }),
    );
  });
});

describe('which row counts', () => {
  test('staggered rows look between the heads of the next row: the next but one counts', () => {
    const rows = rowsOf(houseOf(4000, 600, { rows: 4, riser: 100, staggered: true }));
    expect(rows[1]).toMatchObject({ inLine: null, level: null });
    expect(rows[2]?.inLine).toEqual(rows[2]?.twoRows);
    expect(rows[3]?.inLine).toEqual(rows[3]?.twoRows);
    const straight = rowsOf(houseOf(4000, 600, { rows: 4, riser: 100 }));
    expect(straight[2]?.inLine).toEqual(straight[2]?.oneRow);
  });

  test('the front row of a block behind another looks over that block’s last row', () => {
    const rear = aSeatBlock({ id: 'rear', y: -7400, floor: 160, riser: 160, firstRow: 'F' });
    const [front, next] = rowsOf(aDocument(rear), asId('rear'));
    expect(front?.oneRow).toMatchObject({ over: 'E', distance: 6100, rowDepth: 1300, riser: 160 });
    expect(front?.twoRows?.over).toBe('D');
    expect(next?.twoRows?.over).toBe('E');
  });

  test('two blocks side by side are one row to those behind them', () => {
    const half = { seatsPerRow: 4, rows: 2 };
    const [front] = rowsOf(
      aDocument(
        aSeatBlock({ ...half, x: -1040 }),
        aSeatBlock({ ...half, x: 1040, id: 'left' }),
        aSeatBlock({ id: 'rear', y: -6000, x: 0, firstRow: 'K' }),
      ),
      asId('rear'),
    );
    // The plane through the middle of the rear block meets both within half a seat.
    expect([front?.oneRow?.over, front?.twoRows?.over]).toEqual(['B', 'A']);
  });

  test('nobody in the stalls is in front of a balcony', () => {
    const hall = venueModel('small-concert-hall');
    const document = documentOf([aConcert(), aSetup(), ...(hall?.records() ?? [])]);
    const [balcony] = rakeFigures(document, SETUP, asId('balcony'));
    expect(balcony?.rows.map(({ name }) => name)).toHaveLength(4);
    expect(balcony?.rows[0]).toMatchObject({ ahead: [], oneRow: null });
    // Row 2: D 12 500, R 4200 + 1200 - 800 = 4600, N 350, T 950.
    expect(balcony?.rows[1]?.oneRow).toMatchObject({
      distance: 12_500,
      height: 4600,
      riser: 350,
      rowDepth: 950,
    });
    expect(balcony?.rows[1]?.oneRow?.clearance).toBeCloseTo((12_500 * 4950) / 13_450 - 4600, 9);
  });

  test('curved rows count along their middle seats', () => {
    const curved = rowsOf(houseOf(4000, 600, { riser: 120, curveRadius: 6000, seatsPerRow: 7 }));
    const straight = rowsOf(houseOf(4000, 600, { riser: 120 }));
    clearances(curved).forEach((figure, row) => {
      if (row > 0) expect(figure).toBeCloseTo(clearances(straight)[row] ?? NaN, 6);
    });
    expect(clearances(curved)).toHaveLength(5);
  });

  test('a block beside the platform looks at the edge before it', () => {
    const side = aSeatBlock({ id: 'side', x: -6000, y: 2500, facing: 90, rows: 2, riser: 200 });
    const [rake] = rakeFigures(aDocument(side), SETUP, asId('side'));
    // The platform's edge on that side is at x = -4000.
    expect(rake?.focus.x).toBeCloseTo(-4000, 6);
    expect(rake?.rows[1]?.oneRow?.distance).toBeCloseTo(2000, 6);
  });

  test('a block that looks past the platform, an unknown block, an absent player', () => {
    const away = aSeatBlock({ id: 'away', facing: 0 });
    const behind = rakeFigures(aDocument(away), SETUP, asId('away'))[0]?.rows ?? [];
    expect(behind.map(({ oneRow }) => oneRow)).toEqual([null, null, null, null, null]);
    expect(rakeFigures(aDocument(), SETUP, asId('nowhere'))).toEqual([]);
    const focus = { kind: 'player', player: asId<'player'>('nobody') } as const;
    expect(rakeFigures(aDocument(), SETUP, null, focus)).toEqual([]);
  });
});

describe('the focus', () => {
  test('the lowest point of a player’s window, on his riser', () => {
    const player = aPlayer({ x: 900, y: 2000 });
    const document = aDocument(player, aRiser({ x: 900, y: 2000, height: 300 }));
    const focus = { kind: 'player', player: player.id } as const;
    const [rake] = rakeFigures(document, SETUP, STALLS, focus);
    const target = buildScene(document, SETUP).targets[0];
    expect(rake?.focus).toMatchObject({ x: 900, y: 2000, z: target?.z0 });
    expect(target?.z0).toBeGreaterThan(300);
    // Eyes 1200 over the house floor, the platform 600 over it; the player stands 2000 behind the edge.
    expect(rake?.rows[1]?.oneRow?.distance).toBeCloseTo(4500, 9);
    expect(rake?.rows[1]?.oneRow?.height).toBeCloseTo(600 - (target?.z0 ?? NaN), 9);
  });

  test('the slant of the line of sight changes D and T by one factor, and C not at all', () => {
    const spots = fc.double({ min: -3500, max: 3500, noNaN: true });
    fc.assert(
      fc.property(spots, (x) => {
        const figures = (at: number): (number | undefined)[] => {
          const player = aPlayer({ x: at });
          const focus = { kind: 'player', player: player.id } as const;
          const document = aDocument(player, aSeatBlock({ riser: 90 }));
          return clearances(rakeFigures(document, SETUP, STALLS, focus)[0]?.rows ?? []);
        };
        expect(figures(x)).toEqual(figures(0));
      }),
    );
  });
});

describe('the sight check is the arbiter', () => {
  /**
   * In the real scene of a house: what the middle of row B sees of a slot 2 mm high at the focus past a slender head in
   * row A, its top `top` mm above the eye there. Seats are odd in number, so that one is on the centre line.
   */
  function seenOver(document: Document, top: number): { seen: number; row: RakeRow | undefined } {
    const row = rowsOf(document)[1];
    const scene = buildScene(document, SETUP);
    const middle = (name: string) => scene.seats.find(({ label }) => label === `${name} 4`);
    const [front, rear] = [middle('A'), middle('B')];
    if (!front || !rear) throw new Error('no middle seat');
    const head = capsule({ x: front.x, y: front.y, z0: front.z - 600, z1: front.z + top - 0.5, r: 0.5 });
    const slot = targetOf({ x: 0, y: 0, z0: -1, z1: 1, width: 0.5 });
    const seen = visibleShares({ seats: [rear], targets: [slot], occluders: [head] })[0] ?? NaN;
    return { seen, row };
  }

  test('over a head whose top is h above the eye the focus is seen exactly when C is at least h', () => {
    const houses = fc.record({
      distance: fc.double({ min: 2000, max: 15_000, noNaN: true }),
      riser: fc.double({ min: 0, max: 400, noNaN: true }),
    });
    fc.assert(
      fc.property(houses, ({ distance, riser }) => {
        const document = houseOf(distance, 600, { rows: 2, seatsPerRow: 7, riser });
        const clearance = seenOver(document, 0).row?.oneRow?.clearance ?? NaN;
        // The slot reaches 1 mm above and below the focus; over the front row that is less than 1 mm.
        expect(seenOver(document, clearance - 2).seen).toBeCloseTo(1, 9);
        expect(seenOver(document, clearance + 2).seen).toBeCloseTo(0, 9);
      }),
    );
  });

  test('h = 112 mm, about the median of ANSUR II: just under and just over', () => {
    const pair = { distance: 8000, height: 600, rowDepth: 900 };
    for (const [more, seen] of [
      [2, 1],
      [-2, 0],
    ] as const) {
      const riser = riserForC(pair, 112 + more);
      expect(seenOver(houseOf(8000, 600, { rows: 2, seatsPerRow: 7, riser }), 112).seen).toBeCloseTo(seen, 9);
    }
  });
});

describe('words', () => {
  // P. Shepherd, "Sightlines" (University of Bath, 2012): 60 between heads, 90 with the head tilted back, 120 optimal,
  // 150 over hats. An article for architects that cites FIFA, as quoted: under 60 poor.
  test.each([
    [-79, 'poor'],
    [59.9, 'poor'],
    [60, 'between the heads in front'],
    [90, 'well, with the head tilted back'],
    [119.9, 'well, with the head tilted back'],
    [120, 'optimal'],
    [150, 'even over hats'],
  ])('C %d: %s', (clearance, words) => {
    expect(CLEARANCE_BANDS[clearanceLevel(clearance)].words).toBe(words);
  });

  test('every judgement names its source', () => {
    for (const { source } of CLEARANCE_BANDS) expect(source).toMatch(/Shepherd|FIFA/);
  });
});
