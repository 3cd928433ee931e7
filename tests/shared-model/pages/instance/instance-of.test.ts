/** A setup as something to plan: whose part, which stand, whose hand. */

import { describe, expect, it } from 'vitest';
import type { AnyRecord } from '#model/document/records.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { relabelled } from '#model/pages/instance/relabelled.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import {
  aDocument,
  anInstrument,
  aPlayer,
  aScore,
  aStand,
  MUSIC,
  SETUP,
  SIDE,
} from '../../../helpers/build.ts';

const oboe = aPlayer({ name: 'Oboe', y: 2000 });
const harp = aPlayer({ id: 'player-2', name: 'Harp', y: 1000, facing: 180 });
/** The desk between them: the first side looks upstage, at the oboe. */
const pair = aStand({
  form: 'backToBack',
  y: 1500,
  facing: 180,
  sides: [
    { ...SIDE, reader: oboe.id, pagesAcross: 1 },
    { ...SIDE, reader: harp.id, pagesAcross: 2 },
  ],
});
const part = MUSIC.parts[0]!;
const score = aScore({ players: [oboe.id] });
/** Both play the same; silent from 2 s to 12 s, where page 2 begins: it has to be there a bar, 4 s, before. */
const duo = aScore({
  players: [oboe.id, harp.id],
  music: {
    ...MUSIC,
    parts: ['Oboe', 'Harp'].map((name) => ({
      ...part,
      id: name,
      name,
      silences: [
        [0, 4, 8],
        [1, 0, 8],
        [2, 0, 8],
      ],
      pages: [
        { page: 1, bar: 0 },
        { page: 2, bar: 3 },
      ],
    })),
  },
});

function asked(...records: AnyRecord[]) {
  return instanceOf(aDocument(...records), SETUP);
}

function instance(...records: AnyRecord[]): PlanInstance {
  const found = asked(...records);
  if (!found.ok) throw new Error(found.missing.join());
  return found.instance;
}

describe('a setup to plan', () => {
  it('has the readings, rests and bars of the part', () => {
    const { players } = instance(oboe, pair, score);
    // Bars of 4 s; page 2 from bar 3, which begins with two silent beats.
    expect(players).toEqual([
      {
        id: 'player-1',
        pages: 2,
        readings: [
          { page: 1, from: 0, to: 8 },
          { page: 2, from: 8, to: 16 },
        ],
        free: [{ from: 8, to: 10, hands: ['left', 'right'], silent: true }],
        bars: [0, 4, 8, 12].map((from, index) => ({ label: String(index + 1), from })),
      },
    ]);
  });

  it('counts only the hands that the instrument lets go', () => {
    const cello = anInstrument({ model: 'cello' });
    const hands = instance(oboe, cello, pair, score).players[0]?.free[0]?.hands;
    const others = instance(oboe, anInstrument({ model: 'no-such-model' }), pair, score).players[0]?.free[0]
      ?.hands;
    expect(others).toEqual(['left', 'right']);
    expect(hands?.length).toBeLessThanOrEqual(2);
  });

  it('makes a station of each stand that somebody with a part reads from', () => {
    const elsewhere = aStand({ id: 'stand-2', x: 2000, sides: [{ ...SIDE, reader: harp.id }] });
    const { stations } = instance(oboe, harp, pair, elsewhere, score);
    expect(stations.map(({ id, bindings }) => [id, bindings])).toEqual([['stand-1', ['ridge']]]);
    expect(stations[0]?.sides).toMatchObject([
      { reader: 'player-1', width: 1 },
      { reader: null, width: 2 },
    ]);
  });

  it('puts stands in order from the reader’s left to his right', () => {
    // The oboe looks at the house, so stage left is on his left.
    const left = aStand({ id: 'stand-2', x: 600, y: 1300, sides: [{ ...SIDE, reader: oboe.id }] });
    const right = aStand({ id: 'stand-3', x: -600, y: 1300, sides: [{ ...SIDE, reader: oboe.id }] });
    const { stations } = instance(oboe, left, right, score);
    const [first, second] = stations.map(({ sides }) => sides[0].position);
    expect(first).toBe(-600);
    expect(second).toBe(600);
  });

  it('knows who gets to the leaves: who sits before them, and nobody from across the platform', () => {
    const far = { ...harp, x: 3000 };
    const reach = (other: AnyRecord) =>
      new Set(instance(oboe, other, pair, duo).stations[0]?.reach.map(({ player }) => player));
    expect(reach(harp)).toEqual(new Set(['player-1', 'player-2']));
    expect(reach(far)).toEqual(new Set(['player-1']));
    // Nobody knows when somebody without a part is free.
    expect(new Set(instance(oboe, harp, pair, score).stations[0]?.reach.map(({ player }) => player))).toEqual(
      new Set(['player-1']),
    );
  });

  it('takes longer for a leaf that is farther away', () => {
    const seconds = (y: number) =>
      Math.min(
        ...(instance(oboe, { ...pair, y }, score).stations[0]?.reach ?? []).map(({ seconds: time }) => time),
      );
    expect(seconds(1500)).toBeGreaterThan(0.5);
    expect(seconds(1350)).toBeGreaterThan(seconds(1500));
  });

  it('can be planned', () => {
    const across = { ...pair, sides: [pair.sides[0], { ...pair.sides[0], reader: harp.id }] as const };
    expect(planNow(instance(oboe, harp, across, duo))).toMatchObject({
      status: 'planned',
      cost: { turns: 1, stations: 1, panels: 4 },
    });
  });
});

describe('what is missing is said', () => {
  it.each([
    ['music', [oboe, pair], /has no music yet/],
    ['players', [oboe, pair, aScore()], /Nobody plays a part/],
    [
      'pages',
      [
        oboe,
        pair,
        aScore({
          players: [oboe.id],
          music: { ...MUSIC, parts: [{ ...part, ownPages: false }] },
        }),
      ],
      /The pages of "Oboe" \(Oboe \(player 1\)\) are not known/,
    ],
    ['stands', [oboe, score], /No stand of this setup has a reader/],
  ] as const)('%s', (_, records, words) => {
    const result = asked(...records);
    expect(result.ok).toBe(false);
    expect(result.ok ? '' : result.missing.join()).toMatch(words);
  });

  it('also who is left out', () => {
    const result = asked(oboe, harp, pair, score);
    expect(result.ok && result.notes).toEqual([
      'Harp (player 2) has no part in the score and is left out.',
      'The desk of stand 1 has room for 2 pages side by side; it is planned with the 1 that its properties say.',
    ]);
  });
});

it('the same in other names has the same plan', () => {
  const given = instance(oboe, harp, pair, duo);
  const named = relabelled(given, (id) => `the ${id}`);
  expect(named.stations[0]?.sides[0].reader).toBe('the player-1');
  const [a, b] = [planNow(given), planNow(named)];
  expect(a.status === 'planned' && b.status === 'planned' && b.cost).toEqual(
    a.status === 'planned' && a.cost,
  );
});
