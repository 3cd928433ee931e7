import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Report } from '#model/checks/report.ts';
import { documentOf } from '#model/document/document.ts';
import { PLACED_KINDS, type AnyRecord } from '#model/document/records.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { drawItem, planContext, planDrawing, planExtent, WORST_SEEN } from '#model/drawing/plan.ts';
import type { Box } from '#model/drawing/primitives.ts';
import { BANDS } from '#model/drawing/sight-bands.ts';
import {
  aConcert,
  aDocument,
  aDoor,
  aLamp,
  aLargeInstrument,
  anInstrument,
  anInstrumentStand,
  aPiano,
  aPlace,
  aPlatform,
  aPlayer,
  aRiser,
  aSeat,
  aSeatBlock,
  aSetup,
  aShape,
  aStand,
  aTable,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';
import {
  ALL_LAYERS,
  boxOf,
  groupsOf,
  middleOf,
  overlappingTexts,
  pathsIn,
  planRequest,
  roughMeasure,
  textsIn,
} from './drawings.ts';

const everything: AnyRecord[] = [
  aPlayer({ x: 1500, y: 1000, facing: 30, chair: { model: 'orchestra-chair', height: 460 } }),
  aStand({ x: -1500, y: 1500 }),
  anInstrumentStand({ x: -2500, y: 1500 }),
  aTable({ x: 2500, y: 3000 }),
  aSeat({ x: 3000, y: 1000 }),
  aPiano({ x: -2800, y: 3500, lid: 'full' }),
  aLargeInstrument({ x: 1000, y: 3800 }),
  aLamp({ x: 300, y: 2400, cable: [{ x: 3000, y: 2400 }] }),
  aRiser({ x: 1000, y: 4000, width: 3000, depth: 1500 }),
  aShape({ x: -3500, y: 800 }),
  anInstrument(),
];

describe('the plan', () => {
  it('has stage left on the right and upstage at the top', () => {
    const document = aDocument(
      aPlayer({ id: 'player-1', x: 2000, y: 500 }),
      aPlayer({ id: 'player-2', x: -2000, y: 4000 }),
    );
    const context = planContext(planRequest(document));
    const centre = (id: string) => {
      const record = document.records.get(id);
      if (record?.kind !== 'player') throw new Error(id);
      return middleOf([drawItem(record, context)]);
    };
    expect(centre('player-1').x).toBeGreaterThan(200);
    expect(centre('player-2').x).toBeLessThan(200);
    expect(centre('player-2').y).toBeLessThan(centre('player-1').y);
    const house = groupsOf(planDrawing(planRequest(document)), 'stalls');
    expect(middleOf(house).y).toBeGreaterThan(150);
  });

  it('prints lengths at the scale: 1 m at 1:50 is 20 mm, at 1:20 50 mm', () => {
    const shape = aShape({
      outline: [
        { x: 0, y: 0 },
        { x: 1000, y: 0 },
        { x: 1000, y: 500 },
        { x: 0, y: 500 },
      ],
      fixed: false,
    });
    for (const [scale, millimetres] of [
      [50, 20],
      [20, 50],
    ] as const) {
      const [path] = pathsIn([drawItem(shape, planContext(planRequest(aDocument(shape), { scale })))]);
      const bare = boxOf(path ? [{ kind: 'path', path: path.path, fill: '#000000' }] : []);
      expect(bare.width).toBeCloseTo(millimetres, 9);
    }
  });

  it('prints a 4 by 8 foot riser at 1 by 2 inches in 1:48, 2 by 4 in 1:24', () => {
    // Auburn University drafting notes and the stagecraft pages of hstech.org.
    const riser = aRiser({ width: 1219.2, depth: 2438.4 });
    for (const [scale, inches] of [
      [48, 1],
      [24, 2],
    ] as const) {
      const [path] = pathsIn([drawItem(riser, planContext(planRequest(aDocument(riser), { scale })))]);
      const bare = boxOf(path ? [{ kind: 'path', path: path.path, fill: '#000000' }] : []);
      expect(bare.width).toBeCloseTo(inches * 25.4, 9);
      expect(bare.height).toBeCloseTo(2 * inches * 25.4, 9);
    }
  });

  it('draws every kind of item as a group of its record, described in words', () => {
    const drawing = planDrawing(planRequest(aDocument(...everything)));
    for (const kind of PLACED_KINDS) {
      const [group] = groupsOf(drawing, `${kind}-1`).filter((each) => each.description);
      expect(group, kind).toBeDefined();
      expect(group?.children.length, kind).toBeGreaterThan(0);
      expect(group?.description, kind).toMatch(/SL|SR|centre/);
    }
  });

  it('gives every item a bubble with its mark', () => {
    const texts = textsIn(planDrawing(planRequest(aDocument(...everything)))).map(({ text }) => text);
    for (const mark of ['P1', 'S1', 'IS1', 'T1', 'C1', 'PF1', 'LI1', 'L1', 'R1', 'OB1'])
      expect(texts).toContain(mark);
  });

  it('says where the house is, which edges are open and where people may leave', () => {
    const texts = textsIn(planDrawing(planRequest(aDocument()))).map(({ text }) => text);
    for (const words of ['HOUSE', 'UPSTAGE', 'STAGE LEFT', 'STAGE RIGHT', 'CL', 'EDGE'])
      expect(texts).toContain(words);
    expect(texts).toContain('OPEN EDGE, drop 600 mm');
    expect(texts).toContain('EXIT, 1000 mm, step-free');
  });

  it('turns the desk of a stand with its facing', () => {
    // Facing the house the reader is downstage: his lip is the lower edge on the page.
    const lipOf = (facing: number) => {
      const stand = aStand({ x: 0, y: 2000, facing, sides: [{ ...SIDE, pagesAcross: 0 }] });
      const group = drawItem(stand, planContext(planRequest(aDocument(stand))));
      const lip = pathsIn([group])
        .filter((path) => path.stroke?.colour === PALETTES.print.ink)
        .at(-1);
      return middleOf(lip ? [lip] : []);
    };
    const middle = 150 - 2000 / 50;
    expect(lipOf(0).y).toBeGreaterThan(middle);
    expect(lipOf(180).y).toBeLessThan(middle);
    expect(lipOf(90).x).toBeGreaterThan(200);
  });

  it('colours each seat by the band of the asked player, or of the one it sees worst', () => {
    const document = aDocument(
      aSeatBlock({ rows: 1, seatsPerRow: 2 }),
      aPlayer({ id: 'player-1' }),
      aPlayer({ id: 'player-2', x: 900 }),
    );
    const target = (id: string) => ({ id, x: 0, y: 0, z0: 0, z1: 1, width: 1, chin: 1 });
    const seat = (id: string) => ({ id, x: 0, y: 0, z: 0, record: 'stalls', label: id, row: 0 });
    const report: Report = {
      setup: SETUP,
      findings: [],
      reach: [],
      routes: [],
      reading: [],
      facing: { pairs: [], toHouse: [] },
      sight: {
        figures: [],
        visible: Float64Array.of(0.95, 0.1, 0.6, 0.8),
        scene: {
          occluders: [],
          seats: ['stalls/A-1', 'stalls/A-2'].map(seat),
          targets: ['player-1', 'player-2'].map(target),
        },
      },
    };
    const fills = (player: string) => {
      const layers = { ...ALL_LAYERS, sightBands: { player } };
      const house = groupsOf(planDrawing(planRequest(document, { report, layers })), 'stalls');
      return BANDS.map(({ fill }) => pathsIn(house).some((path) => path.fill === fill && path.stroke));
    };
    expect(fills('player-1')).toEqual([false, false, true, false, true]);
    expect(fills('player-2')).toEqual([true, false, false, true, false]);
    expect(fills(WORST_SEEN)).toEqual([true, false, true, false, false]);
  });

  it('dimensions a selected stand from the centre line and the front edge', () => {
    const document = aDocument(aStand({ x: 820, y: 1450 }));
    const layers = { ...ALL_LAYERS, dimensions: ['stand-1'] };
    const texts = textsIn(planDrawing(planRequest(document, { layers }))).map(({ text }) => text);
    expect(texts).toContain('820 SL');
    expect(texts).toContain('1450 US');
  });

  it('leaves out seats beyond the area, and keeps labels inside it', () => {
    const area = { x: 110, y: 40, width: 180, height: 130 };
    const drawing = planDrawing(planRequest(aDocument(...everything), { area }));
    expect(groupsOf(drawing, 'stalls').flatMap((group) => pathsIn([group]))).toHaveLength(0);
    const labels = textsIn(drawing).filter(({ text }) => /^(P|S|IS|T|C|PF|LI|L|R|OB)\d$/.test(text));
    expect(labels.length).toBeGreaterThan(8);
    for (const { x, y } of labels) {
      expect(x).toBeGreaterThan(area.x);
      expect(x).toBeLessThan(area.x + area.width);
      expect(y).toBeGreaterThan(area.y);
      expect(y).toBeLessThan(area.y + area.height);
    }
  });
});

describe('labels', () => {
  const spot = fc.record({
    x: fc.integer({ min: -3800, max: 3800 }),
    y: fc.integer({ min: 200, max: 4800 }),
    facing: fc.integer({ min: -180, max: 180 }),
    name: fc.constantFrom('', 'Viola', 'Second percussion with a long name'),
  });

  it('never overlap each other, however the items lie', () => {
    fc.assert(
      fc.property(
        fc.array(spot, { minLength: 1, maxLength: 30 }),
        fc.constantFrom(20, 50, 100, 200),
        (spots, scale) => {
          const stands = spots.map((each, index) => aStand({ ...each, id: `stand-${index + 1}` }));
          const layers = { ...ALL_LAYERS, dimensions: 'coordinates' as const };
          const drawing = planDrawing(planRequest(aDocument(...stands), { scale, layers }));
          expect(overlappingTexts(drawing, roughMeasure)).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('are all placed where there is no bound, leaders and all', () => {
    const crowd = Array.from({ length: 60 }, (_, index) =>
      aStand({ id: `stand-${index + 1}`, x: (index % 10) * 60, y: 1500 + Math.floor(index / 10) * 60 }),
    );
    const texts = textsIn(planDrawing(planRequest(aDocument(...crowd)))).map(({ text }) => text);
    for (let number = 1; number <= 60; number++) expect(texts).toContain(`S${number}`);
  });
});

describe('planExtent', () => {
  it('holds the platform, the items of every setup and the house', () => {
    const other = aSetup({ id: 'setup-2', order: 2 });
    const far = aStand({ id: 'stand-9', x: 6000, y: 5600, setup: other.id });
    const box = planExtent(aDocument(other, far));
    expect(box.x).toBeLessThanOrEqual(-4000);
    expect(box.x + box.width).toBeGreaterThan(6200);
    expect(box.y).toBeLessThan(-2500 - 4 * 900);
    expect(box.y + box.height).toBeGreaterThan(5600);
  });
});

describe('odd documents', () => {
  const base = (...records: AnyRecord[]) => documentOf([aConcert(), aSetup(), ...records]);

  it('are drawn without a house, without items, with a platform of any shape', () => {
    const bow = aPlatform({
      outline: Array.from({ length: 40 }, (_, i) => {
        const turn = (2 * Math.PI * i) / 40;
        return { x: 3000 * Math.cos(turn), y: 2000 + 2000 * Math.sin(turn) };
      }),
      openEdges: Array.from({ length: 40 }, (_, i) => i),
    });
    expect(overlappingTexts(planDrawing(planRequest(base(bow))), roughMeasure)).toEqual([]);
    const tiny = aPlatform({
      outline: [
        { x: 0, y: 0 },
        { x: 300, y: 0 },
        { x: 0, y: 300 },
      ],
    });
    expect(planDrawing(planRequest(base(tiny, aDoor({ edge: 0 })))).length).toBeGreaterThan(0);
  });

  it('have the words of a door over it or along its own wall, however small the scale, or only EXIT, or none', () => {
    for (const edge of [0, 1, 2, 3]) {
      for (const scale of [50, 100, 250, 400]) {
        const door = aDoor({ edge, offset: 700, width: 1000, exit: true });
        const drawn = groupsOf(planDrawing(planRequest(base(aPlatform(), door), { scale })), 'door-1');
        // The platform of 8 by 5 m has its origin at (200, 150) on the page.
        const along = (box: Box): [number, number] =>
          edge % 2 === 0 ? [box.x, box.width] : [box.y, box.height];
        const [wall, length] = along({
          x: 200 - 4000 / scale,
          y: 150 - 5000 / scale,
          width: 8000 / scale,
          height: 5000 / scale,
        });
        const [gap, width] = along(boxOf(pathsIn(drawn)));
        for (const text of textsIn(drawn)) {
          const [from, reach] = along(boxOf([text]));
          const isOver = Math.abs(from + reach / 2 - gap - width / 2) < 1;
          const isAlong = from >= wall - 1 && from + reach <= wall + length + 1;
          expect(text.text).toMatch(/^EXIT/);
          expect(isOver || isAlong, `edge ${edge} at 1:${scale}`).toBe(true);
        }
      }
    }
  });

  it('are drawn whichever way the platform runs: the teeth of an open edge point outwards', () => {
    const outline = aPlatform().outline;
    const teethBelow = (platform: ReturnType<typeof aPlatform>) => {
      const drawing = planDrawing(planRequest(base(platform)));
      const teeth = pathsIn(groupsOf(drawing, 'platform-1')).find(
        (path) => path.fill === PALETTES.print.warning,
      );
      return middleOf(teeth ? [teeth] : []).y > 150;
    };
    expect(teethBelow(aPlatform())).toBe(true);
    // Reversed, the front edge is the third: corners 2 and 3 of the reversed ring.
    expect(teethBelow(aPlatform({ outline: outline.toReversed(), openEdges: [2] }))).toBe(true);
  });

  it('have no teeth where steps lead through an open edge', () => {
    const teethOf = (...records: AnyRecord[]) => {
      const drawing = planDrawing(planRequest(base(aPlatform(), ...records)));
      const path = pathsIn(groupsOf(drawing, 'platform-1')).find(
        (each) => each.fill === PALETTES.print.warning,
      );
      return (path?.path ?? []).filter(([letter]) => letter === 'Z').length;
    };
    // 8 m at 1:50 carry a tooth every 4 mm; a door of 2 m takes 10 of them away.
    expect(teethOf()).toBe(40);
    expect(teethOf(aDoor({ edge: 0, offset: 3000, width: 2000 }))).toBe(30);
  });

  it('with ten thousand items and twenty thousand seats are drawn in seconds', () => {
    const many = Array.from({ length: 10_000 }, (_, index) =>
      aStand({ id: `stand-${index + 1}`, x: (index % 100) * 80 - 4000, y: Math.floor(index / 100) * 50 }),
    );
    const hall = aSeatBlock({ rows: 100, seatsPerRow: 200 });
    const area = { x: 0, y: 0, width: 400, height: 280 };
    const start = performance.now();
    const drawing = planDrawing(planRequest(aDocument(hall, ...many), { area }));
    expect(drawing.length).toBeGreaterThan(10_000);
    // Generous: what must not happen is that time grows with the square of the items.
    expect(performance.now() - start).toBeLessThan(30_000);
  });

  it('draw places of every use', () => {
    for (const use of ['wheelchair', 'standing', 'camera'] as const) {
      const drawing = planDrawing(planRequest(aDocument(aPlace({ use, x: 5000 }))));
      expect(pathsIn(groupsOf(drawing, 'place-1')).length).toBeGreaterThan(1);
    }
  });
});
