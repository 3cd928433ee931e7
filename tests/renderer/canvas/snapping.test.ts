import { describe, expect, it } from 'vitest';
import {
  roundFigureFor,
  settle,
  straightEdges,
  type SnapRequest,
} from '../../../renderer/canvas/snapping.ts';
import { settleTurn } from '../../../renderer/canvas/turning.ts';

const request = (fields: Partial<SnapRequest>): SnapRequest => ({
  wanted: { x: 0, y: 0 },
  spread: { downstage: 300 },
  neighbours: [],
  edgeDistance: 600,
  within: 40,
  roundTo: 10,
  ...fields,
});

const reasons = (r: SnapRequest): string[] => settle(r).guides.map(({ axis, reason }) => `${axis} ${reason}`);

describe('settle', () => {
  it('gives round figures where no line is near', () => {
    expect(settle(request({ wanted: { x: 818.4, y: 2222.7 } }))).toMatchObject({
      x: 820,
      y: 2220,
      guides: [],
    });
    expect(settle(request({ wanted: { x: -818.4, y: 2222.7 }, roundTo: 0 }))).toMatchObject({ x: -818.4 });
  });

  it('catches the centre line', () => {
    const settled = settle(request({ wanted: { x: 31, y: 2222 } }));
    expect(settled.x).toBe(0);
    expect(settled.guides).toEqual([{ axis: 'x', at: 0, reason: 'centreLine', with: [] }]);
  });

  it('does not catch what is farther than asked', () => {
    expect(settle(request({ wanted: { x: 41, y: 2222 } })).guides).toEqual([]);
  });

  it('puts the downstage side of the item on the front edge or at the asked distance from it', () => {
    expect(settle(request({ wanted: { x: 500, y: 280 } })).y).toBe(300);
    expect(settle(request({ wanted: { x: 500, y: 930 } }))).toMatchObject({
      y: 900,
      guides: [{ axis: 'y', at: 600, reason: 'edgeDistance', with: [] }],
    });
  });

  it('lines up with a neighbour, opposite a neighbour, and between two', () => {
    const viola = { id: 'viola', x: 900, y: 2000 };
    expect(settle(request({ wanted: { x: 500, y: 2030 }, neighbours: [viola] }))).toMatchObject({
      y: 2000,
      guides: [{ axis: 'y', reason: 'inLine', with: ['viola'] }],
    });
    expect(settle(request({ wanted: { x: -890, y: 3000 }, neighbours: [viola] }))).toMatchObject({
      x: -900,
      guides: [{ axis: 'x', at: -900, reason: 'mirrored', with: ['viola'] }],
    });
    const cello = { id: 'cello', x: 1900, y: 3000 };
    expect(settle(request({ wanted: { x: 1390, y: 2777 }, neighbours: [viola, cello] }))).toMatchObject({
      x: 1400,
      guides: [{ axis: 'x', reason: 'midway', with: ['viola', 'cello'] }],
    });
  });

  it('goes on from two of the same row by as much as they are apart, on either side', () => {
    const neighbours = [
      { id: 'viola', x: 400, y: 2000 },
      { id: 'cello', x: 1300, y: 2100 },
      { id: 'far', x: 900, y: 4000 },
    ];
    const at = (x: number) => settle(request({ wanted: { x, y: 2250 }, neighbours }));
    expect(at(2190)).toMatchObject({
      x: 2200,
      guides: [{ axis: 'x', at: 2200, reason: 'evenly', with: ['cello', 'viola'], gap: 900 }],
    });
    expect(at(-515).x).toBe(-500);
    // A player and his stand are no row.
    const pair = [neighbours[0], { id: 'stand', x: 600, y: 2000 }].flatMap((each) => each ?? []);
    expect(settle(request({ wanted: { x: 805, y: 2250 }, neighbours: pair })).guides).toEqual([]);
  });

  it('touches the straight edges of the platform with its sides', () => {
    const edges = straightEdges([
      { x: -4000, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: 3000 },
      { x: 3000, y: 5000 },
      { x: -4000, y: 5000 },
    ]);
    expect(edges).toEqual({ x: [4000, -4000], y: [5000] });
    const spread = { downstage: 300, upstage: 200, stageLeft: 250, stageRight: 350 };
    expect(settle(request({ wanted: { x: 3740, y: 4790 }, spread, edges }))).toMatchObject({
      x: 3750,
      y: 4800,
      guides: [
        { axis: 'x', at: 4000, reason: 'platformEdge' },
        { axis: 'y', at: 5000, reason: 'platformEdge' },
      ],
    });
    expect(settle(request({ wanted: { x: -3660, y: 2222 }, spread, edges })).x).toBe(-3650);
  });

  it('takes a line of the grid only where no other line is near', () => {
    const near = [{ id: 'viola', x: 1030, y: 9000 }];
    const grid = { wanted: { x: 1004, y: 2222 }, grid: 500 };
    expect(settle(request(grid))).toMatchObject({ x: 1000, y: 2220, guides: [{ reason: 'grid', at: 1000 }] });
    expect(settle(request({ ...grid, neighbours: near }))).toMatchObject({ x: 1030 });
  });

  it('prefers the nearest line and names every reason that holds there', () => {
    const left = { id: 'left', x: -900, y: 1000 };
    const right = { id: 'right', x: 900, y: 1500 };
    expect(reasons(request({ wanted: { x: 905, y: 3000 }, neighbours: [left, right] }))).toEqual([
      'x mirrored',
      'x inLine',
    ]);
    const close = { id: 'close', x: 20, y: 3000 };
    expect(settle(request({ wanted: { x: 15, y: 2222 }, neighbours: [close] })).x).toBe(20);
  });
});

describe('roundFigureFor', () => {
  it('grows as the picture gets smaller, a step never under four pixels', () => {
    for (const scale of [0.004, 0.01, 0.05, 0.1, 0.5, 1, 4]) {
      for (const units of ['metric', 'imperial'] as const)
        expect(roundFigureFor(scale, units) * scale).toBeGreaterThanOrEqual(4);
    }
    expect(roundFigureFor(1, 'metric')).toBe(5);
    expect(roundFigureFor(0.1, 'metric')).toBe(50);
  });

  // One inch is 25.4 mm exactly (international yard and pound agreement, 1959).
  it('is a round figure of the units that are shown', () => {
    for (const scale of [0.01, 0.1, 0.5, 4]) {
      const quarters = roundFigureFor(scale, 'imperial') / (25.4 / 4);
      expect(Math.abs(quarters - Math.round(quarters))).toBeLessThan(1e-9);
    }
  });
});

describe('settleTurn', () => {
  it('catches the bearing of a neighbour', () => {
    // A quarter turn towards stage left, from the definition of a facing in document/records.ts.
    const neighbours = [{ id: 'viola', x: 1000, y: 2000 }];
    expect(settleTurn({ item: { x: 0, y: 2000 }, wanted: 88, neighbours })).toEqual({
      facing: 90,
      faces: 'viola',
    });
  });

  it('takes steps of five degrees elsewhere, within half a turn either way', () => {
    expect(settleTurn({ item: { x: 0, y: 0 }, wanted: 33, neighbours: [] })).toEqual({
      facing: 35,
      faces: null,
    });
    expect(settleTurn({ item: { x: 0, y: 0 }, wanted: 358, neighbours: [] })).toEqual({
      facing: 0,
      faces: null,
    });
    expect(settleTurn({ item: { x: 0, y: 0 }, wanted: 181, neighbours: [] }).facing).toBe(180);
  });
});
