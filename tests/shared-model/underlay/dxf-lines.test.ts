/**
 * Lines of a DXF, compared with an independent reader (`dxf` 5.3.1, MIT, which interpolates curves and carries inserts
 * out by code of its own). $INSUNITS and bulges as the DXF reference (Autodesk) has them.
 */

import { Helper } from 'dxf';
import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import type { DxfDrawing } from '#model/underlay/dxf-entities.ts';
import { dxfLines, type DxfLines } from '#model/underlay/dxf-lines.ts';
import { leftOutOf } from '#model/underlay/left-out.ts';
import { planToDxf } from '#model/drawing/to-dxf.ts';
import { aDocument, aStand, SETUP } from '../../helpers/build.ts';
import {
  dxfArc,
  dxfCircle,
  dxfInsert,
  dxfLine,
  dxfPolyline,
  writtenDxf,
  type Pair,
  type DxfSketch,
} from '../../helpers/written-dxf.ts';

const resultOf = (text: string) => dxfLines(new DxfParser().parseSync(text) as unknown as DxfDrawing);

function linesOf(sketch: DxfSketch | string): DxfLines {
  const result = resultOf(typeof sketch === 'string' ? sketch : writtenDxf(sketch));
  if (!result.ok) throw new Error(result.problem);
  return result.lines;
}

/** Back in the coordinates of the drawing. */
const chainsOf = ({ content, corner }: DxfLines): [number, number][][] =>
  content.lines.map((numbers) =>
    Array.from({ length: numbers.length / 2 }, (_, at) => [
      (numbers[2 * at] ?? NaN) + corner.x,
      (numbers[2 * at + 1] ?? NaN) + corner.y,
    ]),
  );

const distanceTo = ([x, y]: readonly [number, number], chain: readonly (readonly number[])[]): number => {
  let least = Infinity;
  for (let at = 1; at < chain.length; at++) {
    const [[ax = 0, ay = 0] = [], [bx = 0, by = 0] = []] = [chain[at - 1], chain[at]];
    const length = Math.hypot(bx - ax, by - ay) ** 2 || 1;
    const t = Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
    least = Math.min(least, Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay)));
  }
  return least;
};

describe('dxfLines', () => {
  it('has all lines from the lower left corner on, and says where that is', () => {
    const lines = linesOf({
      entities: [
        dxfLine(1000, 500, 4000, 500),
        dxfPolyline(
          [
            [1000, 500],
            [4000, 2500],
          ],
          true,
        ),
      ],
    });
    expect(lines.corner).toEqual({ x: 1000, y: 500 });
    expect(lines.content).toEqual({
      type: 'lines',
      width: 3000,
      height: 2000,
      lines: [
        [0, 0, 3000, 0],
        [0, 0, 3000, 2000, 0, 0],
      ],
    });
  });

  it('draws curves, bulges and nested blocks where an independent reader has them', () => {
    const text = writtenDxf({
      blocks: {
        leaf: [
          dxfArc(100, 0, 50, 30, 200),
          dxfPolyline(
            [
              [0, 0, 0.5],
              [200, 0, -1],
              [200, 100],
            ],
            true,
          ),
        ],
        tree: [
          dxfInsert('leaf', 300, 50, [
            [50, 30],
            [41, 2],
            [42, 2],
          ]),
          dxfCircle(0, 0, 80),
        ],
      },
      entities: [
        dxfInsert('tree', 1000, 2000, [[50, -75]]),
        dxfCircle(-500, -500, 250),
        dxfPolyline([
          [0, 0, 1],
          [400, 0],
        ]),
        dxfLine(-3000, -100, 2500, 900),
      ],
    });
    const own = chainsOf(linesOf(text));
    const theirs = new Helper(text).toPolylines().polylines.map(({ vertices }) => vertices);
    expect(own).toHaveLength(theirs.length);
    own.forEach((chain, index) => {
      const other = theirs[index] ?? [];
      // Both interpolate; each point of one lies on the other within what the coarser steps leave out of a radius of 250.
      for (const point of chain) expect(distanceTo(point, other)).toBeLessThan(250 * 0.004);
      for (const [x = NaN, y = NaN] of other) expect(distanceTo([x, y], chain)).toBeLessThan(250 * 0.004);
    });
  });

  it('draws splines where an independent reader has them, and refuses knots that do not belong to them', () => {
    const spline = (knots: readonly number[]): Pair[] => [
      ...([
        [0, 'SPLINE'],
        [8, '0'],
        [70, 8],
        [71, 3],
        [72, knots.length],
        [73, 6],
      ] as Pair[]),
      ...knots.map((knot): Pair => [40, knot]),
      ...[0, 300, 700, 1200, 1400, 2000].flatMap((x, index): Pair[] => [
        [10, x],
        [20, index % 2 === 0 ? 0 : 500],
      ]),
    ];
    const text = writtenDxf({ entities: [spline([0, 0, 0, 0, 1, 3, 4, 4, 4, 4])] });
    const [own = []] = chainsOf(linesOf(text));
    const other = new Helper(text).toPolylines().polylines[0]?.vertices ?? [];
    expect(own.length).toBeGreaterThan(30);
    expect(other.length).toBeGreaterThan(30);
    // Both go along the same curve in straight pieces of a fiftieth of its length or less.
    for (const point of own) expect(distanceTo(point, other)).toBeLessThan(3);
    for (const [x = NaN, y = NaN] of other) expect(distanceTo([x, y], own)).toBeLessThan(3);
    for (const knots of [[0, 1], [0, 0, 0, 0, 3, 1, 4, 4, 4, 4], Array.from({ length: 10 }, () => 1)])
      expect(resultOf(writtenDxf({ entities: [spline(knots)] }))).toEqual({ ok: false, problem: 'empty' });
  });

  it('counts what is no line, whatever the ends of its lines are', () => {
    const text = writtenDxf({
      entities: [
        dxfLine(0, 0, 1, 1),
        [
          [0, 'TEXT'],
          [8, 'HATCH'],
          [1, 'TEXT'],
        ],
        [
          [0, 'HATCH'],
          [8, '0'],
        ],
        [
          [0, 'TEXT'],
          [8, '0'],
        ],
      ],
    });
    const counted = [
      { name: 'TEXT', count: 2 },
      { name: 'HATCH', count: 1 },
    ];
    expect(leftOutOf(text)).toEqual(counted);
    expect(leftOutOf(text.replaceAll('\n', '\r\n'))).toEqual(counted);
    expect(leftOutOf(writtenDxf({ entities: [dxfLine(0, 0, 1, 1)] }))).toEqual([]);
  });

  it.each([
    [1, 25.4],
    [2, 304.8],
    [4, 1],
    [5, 10],
    [6, 1000],
    [14, 100],
    [0, null],
    [99, null],
    [undefined, null],
  ])('takes $INSUNITS %s as %s mm', (insUnits, unit) => {
    const entities = [dxfLine(0, 0, 1, 1)];
    expect(linesOf(insUnits === undefined ? { entities } : { insUnits, entities }).unit).toBe(unit);
  });

  it('reads the plan that the program writes: the platform is where it was', () => {
    const lines = linesOf(planToDxf(aDocument(aStand()), SETUP));
    expect(lines.unit).toBe(1);
    const corners = chainsOf(lines).flat();
    for (const [x, y] of [
      [-4000, 0],
      [4000, 0],
      [4000, 5000],
      [-4000, 5000],
    ] as const)
      expect(Math.min(...corners.map(([px, py]) => Math.hypot(px - x, py - y)))).toBeLessThan(0.05);
  });

  it('leaves out hidden and frozen layers, and numbers that are not finite', () => {
    const layer = (name: string, flags: number, colour: number) =>
      [
        [0, 'LAYER'],
        [2, name],
        [70, flags],
        [62, colour],
        [6, 'CONTINUOUS'],
      ] as const;
    const lines = linesOf({
      layers: [layer('off', 0, -7), layer('frozen', 1, 7), layer('on', 0, 7)],
      entities: [
        dxfLine(0, 0, 9, 9, 'off'),
        dxfLine(0, 0, 8, 8, 'frozen'),
        dxfLine('1e999', 0, 8, 8),
        dxfLine(0, 0, 7, 7, 'on'),
        dxfLine(0, 0, 6, 6, '__proto__'),
      ],
    });
    expect(lines.content.lines).toEqual([
      [0, 0, 7, 7],
      [0, 0, 6, 6],
    ]);
  });

  it('refuses what has no lines, too many, or lies too far apart', () => {
    expect(resultOf(writtenDxf({}))).toEqual({ ok: false, problem: 'empty' });
    expect(resultOf(writtenDxf({ entities: [dxfLine(5, 5, 5, 5)] }))).toEqual({
      ok: false,
      problem: 'empty',
    });
    expect(resultOf(writtenDxf({ entities: [dxfLine(0, 0, 1e12, 0)] }))).toEqual({
      ok: false,
      problem: 'tooLarge',
    });
    const many = Array.from({ length: 50_001 }, (_, at) => dxfLine(at, 0, at, 1));
    expect(resultOf(writtenDxf({ entities: many }))).toEqual({ ok: false, problem: 'tooMany' });
  });

  it('comes to an end with blocks in themselves, and with blocks that multiply', () => {
    const self = linesOf({
      blocks: { a: [dxfLine(0, 0, 1, 0), dxfInsert('a', 1, 1)] },
      entities: [dxfInsert('a', 0, 0)],
    });
    expect(self.content.lines.length).toBe(8);
    const twice = (name: string) => Array.from({ length: 20 }, (_, at) => dxfInsert(name, at, 0));
    const bomb = writtenDxf({
      blocks: { a: [dxfLine(0, 0, 1, 0)], b: twice('a'), c: twice('b'), d: twice('c'), e: twice('d') },
      entities: [
        dxfInsert('e', 0, 0, [
          [70, 30000],
          [71, 30000],
          [44, 1],
          [45, 1],
        ]),
      ],
    });
    expect(resultOf(bomb)).toEqual({ ok: false, problem: 'tooMany' });
  });

  it('writes numbers no finer than a millionth of the whole', () => {
    const { content } = linesOf({ entities: [dxfLine(1 / 3, 2 / 3, 10_000 / 3, 1000 / 7)] });
    for (const number of content.lines.flat()) expect(String(number).length).toBeLessThan(10);
  });
});
