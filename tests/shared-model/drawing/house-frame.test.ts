import { planContext, drawGround, type PlanRequest } from '#model/drawing/plan.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { Box, PathItem, Primitive } from '#model/drawing/primitives.ts';
import { describe, expect, it } from 'vitest';
import { aDocument, aSeatBlock, SETUP } from '../../helpers/build.ts';
import { groupsIn } from './drawings.ts';

const document = aDocument(aSeatBlock({ rows: 10, seatsPerRow: 20 }));

const seatPaths = (scale: number, frame?: Box): readonly PathItem[][] => {
  const request: PlanRequest = {
    document,
    setup: SETUP,
    report: null,
    scale,
    origin: { x: 0, y: 0 },
    palette: PALETTES.light,
    measure: (text, size) => text.length * size * 0.5,
    units: 'metric',
    area: null,
    layers: {
      seats: true,
      sightBands: null,
      marks: false,
      names: false,
      words: false,
      dimensions: 'none',
      grid: false,
      reach: false,
      routes: false,
    },
    ...(frame ? { frame } : {}),
  };
  const block = groupsIn(drawGround(planContext(request))).find(({ subject }) => subject === 'stalls');
  const paths = (block?.children ?? []).filter((each: Primitive) => each.kind === 'path');
  return paths.map(({ path }) => [...path]);
};

const seatsIn = (paths: readonly PathItem[][]): number =>
  (paths[0] ?? []).filter(([kind]) => kind === 'M').length;

describe('the seats of a plan', () => {
  it('are all drawn without a frame, and in a frame those that touch it', () => {
    expect(seatsIn(seatPaths(50))).toBe(200);
    // Ten rows from y = -2500 to -10600, on the page at 1:50 from 50 to 212 mm below the edge.
    const upper = seatsIn(seatPaths(50, { x: -500, y: 0, width: 1000, height: 100 }));
    expect(upper).toBeGreaterThanOrEqual(60);
    expect(upper).toBeLessThan(120);
    expect(seatPaths(50, { x: Infinity, y: Infinity, width: 0, height: 0 })).toEqual([]);
  });

  it('are plain rectangles where they are under a millimetre wide', () => {
    const [rounded, backs] = seatPaths(100);
    expect(rounded?.some(([kind]) => kind === 'C')).toBe(true);
    expect(backs).toBeDefined();
    const [plain, none] = seatPaths(1000);
    expect(plain?.some(([kind]) => kind === 'C')).toBe(false);
    expect(seatsIn([plain ?? []])).toBe(200);
    expect(none).toBeUndefined();
  });
});
