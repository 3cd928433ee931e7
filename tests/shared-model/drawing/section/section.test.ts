/** The section: true to scale, the figures of the checks on it, and nothing over anything else. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { VENUE_MODELS } from '#model/catalogue/venues.ts';
import { rakeFigures } from '#model/checks/sightlines/rake.ts';
import { asId } from '#model/document/ids.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { PathPrimitive, Primitive } from '#model/drawing/primitives.ts';
import { fittedSection, sectionDrawing } from '#model/drawing/section.ts';
import { clearanceWords } from '#model/drawing/section/clearance-words.ts';
import { DASH, WEIGHT } from '#model/drawing/style.ts';
import {
  aDocument,
  aPlace,
  aPlatform,
  aPlayer,
  aRiser,
  aSeatBlock,
  aStand,
  SETUP,
} from '../../../helpers/build.ts';
import { boxOf, groupsOf, overlappingTexts, pathsIn, roughMeasure, textsIn } from '../drawings.ts';
import { houseWithPlayers, lineGroups, lineWords, PLAYERS, sectionOf } from './section-request.ts';

const words = (drawn: readonly Primitive[]): string[] => textsIn(drawn).map(({ text }) => text);

/** First and last point of a path. */
function endsOf({ path }: PathPrimitive): number[] {
  const [first, last] = [path[0], path.at(-1)];
  return [first, last].flatMap((item) => (item && item[0] !== 'Z' ? [item[1], item[2]] : [])) as number[];
}

describe('to scale', () => {
  test('a platform of 600 mm is 6 mm high at 1:100 and 12 mm at 1:50, and 5 m deep', () => {
    for (const scale of [50, 100]) {
      const [platform] = groupsOf(sectionDrawing(sectionOf(aDocument(), { scale })), 'platform-1');
      const { x, y, width, height } = boxOf(platform ? platform.children : []);
      expect(width).toBeCloseTo(5000 / scale + WEIGHT.bold, 6);
      expect(height).toBeCloseTo(600 / scale + WEIGHT.bold, 6);
      // The front edge is at the origin, upstage on the left.
      expect(x + width).toBeCloseTo(100 + WEIGHT.bold / 2, 6);
      expect(y).toBeCloseTo(80 - WEIGHT.bold / 2, 6);
    }
  });

  test('lines of sight run from the eyes of the rows to the edge', () => {
    const drawn = sectionDrawing(sectionOf(aDocument(aSeatBlock({ rows: 3, riser: 300, y: -8000 }))));
    // Row A: 8000 mm before the edge, eyes 1200 - 600 over the platform's floor; each row 900 farther, 300 higher.
    expect(lineGroups(drawn).map(({ children }) => endsOf(children[0] as PathPrimitive))).toEqual([
      [180, 74, 100, 80],
      [189, 71, 100, 80],
      [198, 68, 100, 80],
    ]);
  });

  test('the height of the platform is written as a dimension, metric and imperial', () => {
    expect(words(sectionDrawing(sectionOf(aDocument())))).toContain('600 mm');
    expect(words(sectionDrawing(sectionOf(aDocument(), { units: 'imperial' })))).toContain(`1'-11 1/2"`);
    expect(words(sectionDrawing(sectionOf(aDocument(aPlatform({ height: 0 })))))).not.toContain('0 mm');
  });

  test('a riser lifts the player and his window', () => {
    const player = aPlayer({ x: 0 });
    const top = (...more: Parameters<typeof aDocument>): number =>
      boxOf(groupsOf(sectionDrawing(sectionOf(aDocument(player, ...more))), 'player-1').slice(0, 1)).y;
    expect(top() - top(aRiser({ height: 400 }))).toBeCloseTo(4, 6);
  });
});

describe('rows', () => {
  test('every row has its name and its C-values as the checks have them', () => {
    const document = aDocument(aSeatBlock({ riser: 130, staggered: true }));
    const shown = words(sectionDrawing(sectionOf(document)));
    const rows = rakeFigures(document, SETUP, null)[0]?.rows ?? [];
    expect(rows).toHaveLength(5);
    for (const { name, oneRow, inLine } of rows) {
      expect(shown).toContain(name);
      if (oneRow) expect(shown).toContain(clearanceWords(oneRow.clearance, 'metric'));
      if (inLine) expect(shown).toContain(clearanceWords(inLine.clearance, 'metric'));
    }
    expect(shown).toContain('C over the head in line, mm');
  });

  test('rows too near for level figures have them turned; names are left out where there is no room', () => {
    const document = aDocument(aSeatBlock({ rows: 12, riser: 100 }));
    const turned = (scale: number): number =>
      textsIn(sectionDrawing(sectionOf(document, { scale }))).filter(({ turn }) => turn === -90).length;
    expect(turned(100)).toBe(0);
    expect(turned(200)).toBe(11);
    expect(turned(500)).toBeLessThan(11);
    expect(turned(500)).toBeGreaterThan(0);
  });

  test('figures are not rounded up into a better band', () => {
    expect(clearanceWords(119.6, 'metric')).toBe('119');
    expect(clearanceWords(119.4, 'metric')).toBe('119');
    expect(clearanceWords(120.4, 'metric')).toBe('120');
    expect(clearanceWords(-79.322, 'metric')).toBe('−79');
    expect(clearanceWords(72.1, 'imperial')).toBe('2.8');
    expect(clearanceWords(-0.3, 'metric')).toBe('0');
  });

  test('a balcony is a slab over the people below, with its figures over its heads', () => {
    const hall = houseWithPlayers('small-concert-hall');
    const drawn = sectionDrawing(sectionOf(hall));
    const figures = groupsOf(drawn, 'balcony').find(({ description }) => description?.startsWith('C-values'));
    const people = groupsOf(drawn, 'balcony').find(({ description }) =>
      description?.includes('from the side'),
    );
    const table = boxOf(figures ? [figures] : []);
    expect(table.y + table.height).toBeLessThan(boxOf(people ? [people] : []).y);
  });

  test('blocks that lie behind each other from the side are drawn once, under both names', () => {
    const drawn = sectionDrawing(sectionOf(houseWithPlayers('church-chancel')));
    expect(words(drawn).join()).toContain('Pews, stage left · Pews, stage right');
    expect(words(drawn).filter((text) => text === 'L')).toHaveLength(1);
  });

  test('blocks at the sides of the platform are not in a section along it', () => {
    const drawn = sectionDrawing(sectionOf(houseWithPlayers('thrust-room')));
    expect(groupsOf(drawn, 'front').length).toBeGreaterThan(0);
    expect(groupsOf(drawn, 'side-left')).toEqual([]);
  });
});

describe('lines of sight', () => {
  test('on a flat floor heads cut them: through to the head, dashed beyond', () => {
    const drawn = sectionDrawing(sectionOf(aDocument()));
    expect(lineWords(drawn)).toEqual(['clear', ...Array(4).fill('cut by a head in front')]);
    const [, second] = lineGroups(drawn);
    const [before, beyond] = (second?.children ?? []) as PathPrimitive[];
    expect([before?.stroke?.dash, beyond?.stroke?.dash]).toEqual([undefined, DASH.dashed]);
    // The cut is at the eyes of row A, 2500 mm before the edge.
    expect(before && endsOf(before)[2]).toBeCloseTo(125, 6);
    expect(before?.stroke?.colour).toBe(PALETTES.print.warning);
  });

  test('a steep rake is clear', () => {
    const drawn = sectionDrawing(sectionOf(aDocument(aSeatBlock({ riser: 420, y: -8000 }))));
    expect(lineWords(drawn)).toEqual(Array(5).fill('clear'));
  });

  test('a desk before the player is named', () => {
    const player = aPlayer({ x: 0, y: 1500 });
    const stand = aStand({ x: 0, y: 900, lip: 900, tilt: 80 });
    const focus = { kind: 'player', player: player.id } as const;
    const document = aDocument(player, stand, aSeatBlock({ riser: 60, rows: 2 }));
    expect(lineWords(sectionDrawing(sectionOf(document, { focus })))[0]).toBe('cut by stand 1');
  });

  test('a camera in the strip has a line of its own, one far from it has none', () => {
    const camera = (x: number) =>
      aPlace({ id: 'camera', name: 'Camera', use: 'camera', x, y: -9000, eyeHeight: 1700 });
    const names = (x: number): string[] =>
      lineGroups(sectionDrawing(sectionOf(aDocument(camera(x))))).map(({ description = '' }) => description);
    expect(names(200).some((name) => name.includes('Camera'))).toBe(true);
    expect(names(3000).some((name) => name.includes('Camera'))).toBe(false);
  });
});

describe('through a seat and a player', () => {
  const document = aDocument(...PLAYERS, aSeatBlock({ riser: 80 }));
  const cut = { through: 'seat', seat: 'stalls/D-7', player: asId<'player'>('player-1') } as const;
  const focus = { kind: 'player', player: cut.player } as const;

  test('the line of that seat is as long as the seat is far, and heavier than the others', () => {
    const drawn = sectionDrawing(sectionOf(document, { cut, focus }));
    const chosen = lineGroups(drawn).find(({ description }) => description?.includes('from D:'));
    const paths = pathsIn(chosen ? [chosen] : []);
    // Seat 7 of 8, 520 apart, on the sitter's right of the middle: 2.5 seats, at x = 1300 looking upstage.
    const away = Math.hypot(1300 + 700, 1400 + 2500 + 3 * 900);
    const xs = paths.flatMap((path) => endsOf(path).filter((_, index) => index % 2 === 0));
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(away / 100, 6);
    const weight = (group: Primitive | undefined): number =>
      Math.max(...pathsIn(group ? [group] : []).map(({ stroke }) => stroke?.width ?? 0));
    const other = lineGroups(drawn).find(({ description }) => description?.includes('from A:'));
    expect(weight(chosen)).toBeGreaterThan(weight(other));
  });

  test('players beside the strip are left out, on the centre line they are outlines', () => {
    const slanting = sectionDrawing(sectionOf(document, { cut, focus }));
    expect(groupsOf(slanting, 'player-2')).toEqual([]);
    const aside = aDocument(...PLAYERS, aPlayer({ id: 'player-4', x: 3500 }));
    const [figure] = groupsOf(sectionDrawing(sectionOf(aside)), 'player-4');
    expect(figure?.description).toBe('Player beside the section');
  });

  test('an absent seat or player gives an empty drawing', () => {
    const seat = { ...cut, seat: 'stalls/Z-1' };
    const player = { ...cut, player: asId<'player'>('nobody') };
    expect(sectionDrawing(sectionOf(document, { cut: seat }))).toEqual([]);
    expect(sectionDrawing(sectionOf(document, { cut: player }))).toEqual([]);
    expect(sectionDrawing(sectionOf(document, { focus: { kind: 'player', player: player.player } }))).toEqual(
      [],
    );
  });
});

describe('on the page', () => {
  const area = { x: 10, y: 10, width: 263, height: 130 };

  test.each(VENUE_MODELS.map(({ id }) => id))('%s: no text over another, all inside the area', (venue) => {
    const document = houseWithPlayers(venue);
    for (const focus of [{ kind: 'edge' }, { kind: 'player', player: asId<'player'>('player-3') }] as const) {
      const fitted = fittedSection(sectionOf(document, { focus }), area);
      const box = boxOf(fitted?.children ?? []);
      expect(overlappingTexts(fitted?.children ?? [], roughMeasure)).toEqual([]);
      expect(box.x).toBeGreaterThanOrEqual(area.x - 0.01);
      expect(box.y).toBeGreaterThanOrEqual(area.y - 0.01);
      expect(box.x + box.width).toBeLessThanOrEqual(area.x + area.width + 0.01);
      expect(box.y + box.height).toBeLessThanOrEqual(area.y + area.height + 0.01);
    }
  });

  test('the palettes change colours and nothing else', () => {
    const drawn = (name: keyof typeof PALETTES) =>
      sectionDrawing(sectionOf(houseWithPlayers('studio'), { palette: PALETTES[name] }));
    const shapes = (name: keyof typeof PALETTES) => pathsIn(drawn(name)).map(({ path }) => path);
    expect(shapes('dark')).toEqual(shapes('print'));
    expect(shapes('light')).toEqual(shapes('print'));
    const colours = new Set(pathsIn(drawn('dark')).flatMap(({ fill, stroke }) => [fill, stroke?.colour]));
    const known = new Set<string | undefined>([...Object.values(PALETTES.dark), undefined]);
    expect([...colours].filter((colour) => !known.has(colour))).toEqual([]);
  });

  test('any house: finite, and no text over another', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const houses = fc.record({
      rows: fc.integer({ min: 1, max: 25 }),
      y: number(-9000, -1500),
      rowDepth: number(600, 1500),
      riser: number(0, 500),
      floor: number(0, 6000),
      curveRadius: fc.constantFrom(0, 6000, 20_000),
      staggered: fc.boolean(),
      frontRail: fc.constantFrom(0, 900),
    });
    fc.assert(
      fc.property(houses, houses, fc.constantFrom(50, 100, 200, 500), (first, second, scale) => {
        const block = aSeatBlock({ ...first, floor: 0 });
        const other = aSeatBlock({ ...second, id: 'other', name: 'Other', firstRow: '1' });
        const drawn = sectionDrawing(sectionOf(aDocument(...PLAYERS, block, other), { scale }));
        const numbers = pathsIn(drawn).flatMap(({ path }) =>
          path.flatMap(([, ...values]) => values as number[]),
        );
        expect(numbers.every(Number.isFinite)).toBe(true);
        expect(overlappingTexts(drawn, roughMeasure)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});
