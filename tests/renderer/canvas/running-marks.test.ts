import { describe, expect, it } from 'vitest';
import type { RunMoment } from '#model/pages/running/moment.ts';
import type { Turn } from '#model/pages/planner/plan.ts';
import { runningMarks } from '../../../renderer/canvas/running-marks.ts';
import { aDocument, aPlayer, aStand, SETUP, SIDE } from '../../helpers/build.ts';
import { asId } from '#model/document/ids.ts';

const reader = asId<'player'>('player-1');
const other = asId<'player'>('player-2');

const turn = {
  station: 'stand-1',
  player: 'player-1',
  hand: 'right',
  direction: 'forward',
  liftedFrom: 0,
} as unknown as Turn;

const words = {
  turns: (player: string, hand: string) => `${player}/${hand}`,
  changes: (player: string, name: string) => `${player}>${name}`,
};

function moment(turning: Turn | null, sides: RunMoment['stations'][number]['sides']): RunMoment {
  const station = { station: 'stand-1', state: 0, turn: turning, sides };
  return { bar: null, players: [], stations: [station], turns: [], swaps: [] };
}

/** Its page looks at the house, so its reader stands before it with his back to the house. */
const single = aDocument(
  aPlayer({ name: 'Horn', y: 1000, facing: 180 }),
  aStand({ x: 0, y: 1500, facing: 0, sides: [{ ...SIDE, reader }] }),
);

const marks = (document: typeof single, now: RunMoment) =>
  runningMarks({ document, setup: SETUP, moment: now, words });

describe('marks of a moment on the plan', () => {
  const now = moment(null, [{ reader, view: [3, 4], reading: 1 }]);

  it('put the pages on the desk from the reader’s left to his right', () => {
    const [desk] = marks(single, now).desks;
    expect(desk).toMatchObject({ pages: [3, 4], reading: 1, moving: false, overRidge: false });
    // He looks upstage: his right is stage left, +x.
    expect(desk?.along.x).toBeCloseTo(1, 9);
    expect(desk?.out.y).toBeCloseTo(-1, 9);
    expect(desk?.middle.x).toBeCloseTo(0, 9);
  });

  it('tell whether the reader plays from his page or rests', () => {
    const resting = { player: 'player-1', page: 4, place: null, rests: true, lost: false };
    const rests = (one: typeof resting) => marks(single, { ...now, players: [one] }).desks[0]?.rests;
    expect([rests(resting), rests({ ...resting, rests: false })]).toEqual([true, false]);
  });

  it('turn with the stand', () => {
    const turned = aDocument(
      aPlayer({}),
      aStand({ x: 0, y: 1500, facing: 180, sides: [{ ...SIDE, reader }] }),
    );
    expect(marks(turned, now).desks[0]?.along.x).toBeCloseTo(-1, 9);
  });

  it('while a leaf is in motion nothing is read, and the leaf goes from the reader’s right to his left', () => {
    const { desks, leaves } = marks(single, moment(turn, [{ reader, view: [3, 4], reading: 1 }]));
    expect(desks[0]).toMatchObject({ moving: true, reading: null });
    expect(leaves).toHaveLength(1);
    expect(leaves[0]?.words).toBe('Horn (player 1)/right');
    expect((leaves[0]?.from.x ?? 0) > (leaves[0]?.to.x ?? 0)).toBe(true);
  });

  it('over a ridge the leaf goes from one desk to the other', () => {
    const pair = aDocument(
      aPlayer({ name: 'Horn', y: 1000, facing: 180 }),
      aPlayer({ id: 'player-2', name: 'Oboe', y: 2000 }),
      aStand({
        x: 0,
        y: 1500,
        facing: 0,
        form: 'backToBack',
        sides: [
          { ...SIDE, reader },
          { ...SIDE, reader: other },
        ],
      }),
    );
    const sides = [
      { reader, view: [1, 2], reading: null },
      { reader: other, view: [1, null], reading: null },
    ];
    const { desks, leaves } = marks(pair, moment(turn, sides));
    expect(desks.map(({ pages }) => pages)).toEqual([
      [1, 2],
      [1, null],
    ]);
    expect(leaves[0]?.from.y).toBeLessThan(1500);
    expect(leaves[0]?.to.y).toBeGreaterThan(1500);
  });

  it('leave out a stand that is no longer there, and a side without a reader', () => {
    expect(marks(aDocument(aPlayer({})), now).desks).toEqual([]);
    expect(marks(single, moment(null, [{ reader: null, view: [null], reading: null }])).desks).toEqual([]);
  });

  it('say who goes where for another instrument', () => {
    const swap = {
      player: 'player-1',
      name: 'Bass horn',
      at: 0,
      seconds: 3,
      usualSeconds: 2,
      window: { from: 0, to: 5 },
      bar: '4',
      pass: { time: 1, of: 1 },
      spots: { from: { x: 0, y: 1000 }, to: { x: 900, y: 1000 } },
      walk: true,
    };
    expect(marks(single, { ...now, swaps: [swap] }).ways).toEqual([
      { from: { x: 0, y: 1000 }, to: { x: 900, y: 1000 }, walks: true, words: 'Horn (player 1)>Bass horn' },
    ]);
  });
});
