import { describe, expect, test } from 'vitest';
import { bodies } from '#model/catalogue/people.ts';
import type { Occluder, Scene } from '#model/checks/scene.ts';
import { buildScene } from '#model/checks/scene/build-scene.ts';
import { visibleShares } from '#model/checks/sightlines/visible-shares.ts';
import { sightReport } from '#model/checks/sightlines/sight-report.ts';
import { housePlaces } from '#model/document/seating.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord } from '#model/document/records.ts';
import {
  PERSON,
  SETUP,
  aConcert,
  aDocument,
  aLargeInstrument,
  aPiano,
  aPlace,
  aPlayer,
  aRiser,
  aSeatBlock,
  aShape,
  aStand,
  aTable,
  anInstrument,
  anInstrumentStand,
} from '../../../helpers/build.ts';

const sceneOf = (...records: AnyRecord[]): Scene => buildScene(aDocument(...records), SETUP);
const byRecord = ({ occluders }: Scene, record: string): Occluder[] =>
  occluders.filter((o) => o.record === record);
const heights = (occluder: Occluder | undefined): [number, number] => {
  if (occluder?.kind === 'quad') {
    const z = occluder.corners.map((corner) => corner[2]);
    return [Math.min(...z), Math.max(...z)];
  }
  if (occluder?.kind === 'box') {
    return [occluder.center[2] - occluder.size[2] / 2, occluder.center[2] + occluder.size[2] / 2];
  }
  return occluder ? [occluder.z0 - occluder.r, occluder.z1 + occluder.r] : [NaN, NaN];
};

describe('seats', () => {
  test('are the places of the house, eyes in the stage frame', () => {
    const document = aDocument(aPlace({ id: 'camera', use: 'camera', eyeHeight: 1600, floor: 300 }));
    const { seats } = buildScene(document, SETUP);
    expect(seats.map(({ id }) => id)).toEqual(housePlaces(document).map(({ id }) => id));
    expect(seats[0]).toMatchObject({ id: 'stalls/A-1', record: 'stalls', row: 0, y: -2500, z: -600 + 1200 });
    expect(seats.at(-1)).toMatchObject({ id: 'camera', z: -600 + 300 + 1600 });
  });
});

describe('the window of a player', () => {
  test('shoulders wide, from the waist to the crown', () => {
    const { small } = bodies(PERSON, null);
    const [z0, z1, width] = [small.waistHeight, small.crown, small.shoulderBreadth];
    const chin = small.eyeHeight - (small.crown - small.eyeHeight);
    expect(sceneOf(aPlayer()).targets).toEqual([{ id: 'player-1', x: 0, y: 2000, z0, z1, width, chin }]);
  });

  test('of a cellist reaches down to where a cello shows, 600 mm below the waist', () => {
    const chair = { model: 'orchestra-chair', height: 470 };
    const [target] = sceneOf(aPlayer({ chair }), anInstrument({ model: 'cello' })).targets;
    expect(target?.z0).toBeCloseTo(Math.max(0, bodies(PERSON, 470).small.waistHeight - 600), 9);
  });

  test('rises with a riser', () => {
    const flat = sceneOf(aPlayer()).targets[0];
    const raised = sceneOf(aPlayer(), aRiser({ height: 250 })).targets[0];
    expect((raised?.z0 ?? NaN) - (flat?.z0 ?? NaN)).toBeCloseTo(250, 9);
    expect((raised?.z1 ?? NaN) - (flat?.z1 ?? NaN)).toBeCloseTo(250, 9);
  });

  test('is the small body where anyone may play; what hides others is the tall one', () => {
    const person = { ...PERSON, size: { by: 'anyone' } } as const;
    const { small, tall } = bodies(person, null);
    const scene = sceneOf(aPlayer({ person }));
    expect(scene.targets[0]?.z1).toBe(small.crown);
    const tops = byRecord(scene, 'player-1').map((part) => heights(part)[1]);
    expect(Math.max(...tops)).toBeCloseTo(tall.crown, 9);
    expect(tall.crown).toBeGreaterThan(small.crown + 200);
  });
});

describe('bodies', () => {
  test('go from the floor to the crown, belong to the player and hide only others', () => {
    const scene = sceneOf(aPlayer({ id: 'a', y: 1500 }), aPlayer({ id: 'b', y: 3500 }));
    const parts = byRecord(scene, 'a');
    expect(parts.every(({ owner }) => owner === 'a')).toBe(true);
    expect(Math.min(...parts.map((part) => heights(part)[0]))).toBeCloseTo(0, 9);
    expect(Math.max(...parts.map((part) => heights(part)[1]))).toBeCloseTo(
      bodies(PERSON, null).tall.crown,
      9,
    );
    const front = scene.seats.findIndex(({ id }) => id === 'stalls/A-4');
    const visible = visibleShares(scene);
    expect(visible[front * 2]).toBe(1);
    expect(visible[front * 2 + 1]).toBeLessThan(0.5);
  });

  test('a cello in the hands hides others, not its player; lying on its stand it hides him too', () => {
    const player = aPlayer({ chair: { model: 'orchestra-chair', height: 470 } });
    const held = sceneOf(player, anInstrument({ model: 'cello' }));
    const box = held.occluders.find(({ id }) => id === 'instrument-1:held');
    expect(box).toMatchObject({ kind: 'box', owner: 'player-1' });
    const stand = anInstrumentStand({ id: 'rack', model: 'cello-stand', x: 900, y: 1500 });
    const waiting = sceneOf(player, stand, anInstrument({ model: 'cello', support: asId('rack') }));
    const upright = byRecord(waiting, 'rack')[0];
    expect(upright).toMatchObject({ kind: 'box', center: [900, 1500, 450] });
    expect(upright).not.toHaveProperty('owner');
  });

  test('a clarinet on its peg hides nothing worth counting', () => {
    const scene = sceneOf(
      aPlayer(),
      anInstrumentStand({ id: 'peg' }),
      anInstrument({ support: asId('peg') }),
    );
    expect(byRecord(scene, 'peg')).toEqual([]);
  });
});

describe('things on the platform', () => {
  test('a stand: its desk and its paper, each side', () => {
    expect(byRecord(sceneOf(aStand({ tilt: 90 })), 'stand-1').map(({ id }) => id)).toEqual([
      'stand-1:desk-1',
      'stand-1:paper-1',
    ]);
    const [desk, paper] = byRecord(sceneOf(aStand({ tilt: 90, lip: 800 })), 'stand-1').map(heights);
    expect(desk?.[0]).toBeCloseTo(800, 9);
    expect(desk?.[1]).toBeCloseTo(1140, 9);
    expect(paper?.[1]).toBeCloseTo(1097, 9);
  });

  test('a table, closed to the floor, and everything raised by a riser', () => {
    expect(heights(byRecord(sceneOf(aTable()), 'table-1')[0])).toEqual([0, 850]);
    const raised = sceneOf(
      aTable(),
      aStand(),
      aLargeInstrument(),
      aRiser({ width: 4000, depth: 4000, height: 300 }),
    );
    const flat = sceneOf(aTable(), aStand(), aLargeInstrument());
    for (const record of ['table-1', 'stand-1', 'largeInstrument-1']) {
      const [before, after] = [byRecord(flat, record)[0], byRecord(raised, record)[0]].map(heights);
      expect(after?.[1]).toBeCloseTo((before?.[1] ?? NaN) + 300, 9);
    }
  });

  test('a piano: its case, its desk, and its lid when that is open', () => {
    const closed = byRecord(sceneOf(aPiano({ lid: 'closed' })), 'piano-1');
    const open = byRecord(sceneOf(aPiano({ lid: 'full' })), 'piano-1');
    expect(open.length - closed.length).toBe(2);
    const topOf = (parts: Occluder[]): number => Math.max(...parts.map((part) => heights(part)[1]));
    expect(topOf(open)).toBeGreaterThan(topOf(closed) + 500);
  });

  test('the lid of a grand opens towards the house when the pianist faces stage left', () => {
    // The usual concert position: keyboard at stage right, so that the pianist's right hand is towards the house.
    const lid = byRecord(sceneOf(aPiano({ lid: 'full', facing: 90 })), 'piano-1').filter(({ id }) =>
      id.includes('lid'),
    );
    const corners = lid.flatMap((part) => (part.kind === 'quad' ? part.corners : []));
    const low = corners.filter(([, , z]) => z < 1100);
    const high = corners.filter(([, , z]) => z > 1300);
    const meanY = (points: typeof corners): number =>
      points.reduce((sum, [, y]) => sum + y, 0) / points.length;
    expect(meanY(high)).toBeLessThan(meanY(low));
  });

  test('a shape: a wall for each edge, from its floor up', () => {
    const walls = byRecord(sceneOf(aShape({ height: 2000 })), 'shape-1');
    expect(walls).toHaveLength(4);
    expect(walls.map(heights)).toEqual([
      [0, 2000],
      [0, 2000],
      [0, 2000],
      [0, 2000],
    ]);
  });

  test('walls hide what a solid column hides', () => {
    const column = aShape({ x: 0, y: 1000 });
    const walls = sceneOf(aPlayer({ y: 3000 }), column);
    const solid: Occluder = {
      id: 'solid',
      record: 'solid',
      kind: 'box',
      center: [0, 1000, 1250],
      size: [300, 300, 2500],
      yaw: 0,
    };
    const others = walls.occluders.filter(({ record }) => record !== 'shape-1');
    const filled = visibleShares({ ...walls, occluders: [...others, solid] });
    visibleShares(walls).forEach((share, pair) => expect(share).toBeCloseTo(filled[pair] ?? NaN, 9));
    expect(Math.min(...filled)).toBeLessThan(0.5);
  });
});

describe('the house', () => {
  test('a balcony front hides the platform from behind it when it is high', () => {
    const balcony = (frontRail: number) =>
      sceneOf(aPlayer(), aSeatBlock({ id: 'balcony', y: -9000, floor: 3000, rows: 1, frontRail }));
    const seats = balcony(0).seats.map(({ record }) => record);
    const worst = (scene: Scene): number =>
      Math.min(...[...visibleShares(scene)].filter((_, seat) => seats[seat] === 'balcony'));
    expect(byRecord(balcony(900), 'balcony')).toHaveLength(1);
    expect(worst(balcony(700))).toBe(1);
    expect(worst(balcony(1190))).toBeLessThan(0.5);
  });

  test('a curved front follows the row', () => {
    const scene = sceneOf(
      aSeatBlock({ id: 'balcony', y: -9000, rows: 2, frontRail: 900, curveRadius: 8000 }),
    );
    expect(byRecord(scene, 'balcony')).toHaveLength(9);
  });

  test('heads in front hide only when they are asked for, and never from their own seat', () => {
    const player = aPlayer();
    const without = sceneOf(player);
    const heads = sceneOf(player, aConcert({ headsInFront: true }));
    const added = heads.occluders.filter(({ id }) => id.startsWith('head:'));
    expect(added).toHaveLength(without.seats.length);
    expect(added[0]?.id).toBe(`head:${without.seats[0]?.id}`);
    const [before, after] = [visibleShares(without), visibleShares(heads)];
    const rowA = heads.seats.flatMap(({ row }, seat) => (row === 0 ? [seat] : []));
    for (const seat of rowA) expect(after[seat]).toBe(before[seat]);
    expect(Math.min(...after)).toBeLessThan(Math.min(...before));
  });

  test('a camera has no head', () => {
    const scene = sceneOf(aConcert({ headsInFront: true }), aPlace({ id: 'camera', use: 'camera' }));
    expect(scene.occluders.some(({ id }) => id === 'head:camera')).toBe(false);
  });
});

describe('the whole', () => {
  const records = [
    aConcert({ headsInFront: true }),
    aPlayer({ id: 'a' }),
    aPlayer({ id: 'b', x: 1500, chair: { model: 'orchestra-chair', height: 470 } }),
    anInstrument({ player: asId('b'), model: 'cello' }),
    aStand({ y: 1300 }),
    aTable({ x: -1000 }),
    aPiano({ x: -2500, y: 3500, lid: 'full' }),
    aLargeInstrument({ x: 2500, y: 3500 }),
    aRiser({ x: 2500, y: 3500 }),
    aShape({ x: 3500, y: 500 }),
  ];

  test('every occluder has an id of its own and a record to blame', () => {
    const document = aDocument(...records);
    const { occluders } = buildScene(document, SETUP);
    expect(new Set(occluders.map(({ id }) => id)).size).toBe(occluders.length);
    expect(occluders.filter(({ record }) => !document.records.has(record))).toEqual([]);
  });

  test('plain numbers: it survives being written as JSON', () => {
    const scene = sceneOf(...records);
    expect(JSON.parse(JSON.stringify(scene))).toEqual(scene);
  });

  test('the report holds a share for every pair and a figure for every player', () => {
    const { scene, visible, figures } = sightReport(aDocument(...records), SETUP);
    expect(visible).toHaveLength(scene.seats.length * 2);
    expect(figures.map(({ player }) => player)).toEqual(['a', 'b']);
    expect(figures[0]?.coveredBy.map(({ record }) => record)).toContain('stand-1');
  });
});
