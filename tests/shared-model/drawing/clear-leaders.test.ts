/** On full stages: no leader over a label or another thing's sign, no label over a wall, no wall rubbed out. */

import { describe, expect, it } from 'vitest';
import { changeoverPlan, changeoverPlanScale } from '#model/drawing/changeover/plan.ts';
import { runsOf } from '#model/drawing/changeover/runs.ts';
import { bounds, boxesOverlap, grownBox, textBox } from '#model/drawing/bounds.ts';
import { leaderStart, OWN_END, type PlacedLabel } from '#model/drawing/plan/label-places.ts';
import { drawAnnotations, drawGround, drawItems, planContext } from '#model/drawing/plan.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { Box, PathItem, Primitive } from '#model/drawing/primitives.ts';
import { allOf, platformOf } from '#model/document/document.ts';
import type { Point } from '#model/document/records.ts';
import { changeover } from '#model/programme/changeover.ts';
import { partsOf } from '#model/programme/programme.ts';
import { demoConcert } from '../checks/remedies/demo.ts';
import { ALL_LAYERS, overlaps, pathsIn, planRequest, roughMeasure, textsIn } from './drawings.ts';
import { arcs, grid } from './full-stages.ts';

const layers = { ...ALL_LAYERS, dimensions: 'coordinates' as const };

function annotated(document: typeof arcs, scale: number, isPaper = true) {
  const area = isPaper ? { x: 30, y: -60, width: 340, height: 260 } : null;
  const request = planRequest(document, { scale, area, ...(isPaper ? { layers } : {}) });
  const context = planContext(request);
  return { context, ...drawAnnotations(context, [...drawGround(context), ...drawItems(context)]) };
}

/** Points along a line, a tenth of a millimetre apart at most. */
function along(a: Point, b: Point): Point[] {
  const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) * 10));
  return Array.from({ length: count + 1 }, (_, step) => ({
    x: a.x + ((b.x - a.x) * step) / count,
    y: a.y + ((b.y - a.y) * step) / count,
  }));
}

function leaderPoints({ box, request: { target } }: PlacedLabel): Point[] {
  const start = leaderStart(box, target);
  return along(start, target).filter(({ x, y }) => Math.hypot(x - target.x, y - target.y) > OWN_END);
}

const isIn = (box: Box, { x, y }: Point): boolean => boxesOverlap(box, { x, y, width: 1e-6, height: 1e-6 });

/** The arms of the cross at a thing's point. */
const signAt = ({ x, y }: Point): Box => grownBox({ x, y, width: 0, height: 0 }, 1.1);

describe.each([
  ['arcs', arcs, 100],
  ['arcs', arcs, 50],
  ['a grid', grid, 100],
  ['a grid', grid, 50],
] as const)('sixty things in %s', (_, document, scale) => {
  const { context, labels } = annotated(document, scale);
  const led = labels.placed.filter(({ leader }) => leader);

  it(`at 1:${scale} have no leader over another label or another thing’s sign`, () => {
    expect(led.length).toBeGreaterThan(3);
    for (const label of led) {
      const others = labels.placed.filter((other) => other !== label);
      for (const point of leaderPoints(label)) {
        for (const other of others) {
          const told = `${label.request.mark} over ${other.request.mark}`;
          expect(isIn(other.box, point), told).toBe(false);
          expect(isIn(signAt(other.request.target), point), `${told}’s sign`).toBe(false);
        }
      }
    }
  });

  it(`at 1:${scale} have no label over the lines of the platform`, () => {
    const corners = platformOf(document).outline.map(({ x, y }) => ({
      x: 200 + x / scale,
      y: 150 - y / scale,
    }));
    const line = corners.flatMap((corner, index) =>
      along(corner, corners[(index + 1) % corners.length] ?? corner),
    );
    for (const { box, request } of labels.placed)
      expect(
        line.some((point) => isIn(box, point)),
        request.mark,
      ).toBe(false);
  });

  it(`at 1:${scale} mostly keep their marks`, () => {
    expect(labels.placed.length).toBeGreaterThanOrEqual(scale === 50 ? 60 : 48);
    expect(context.items).toHaveLength(60);
  });
});

/** What broad lines of paper pass over. */
function rubbedOut(primitives: readonly Primitive[], width: number): Point[] {
  const lines = pathsIn(primitives).filter(
    ({ stroke }) => stroke?.colour === PALETTES.print.paper && stroke.width === width,
  );
  return lines.flatMap(({ path }) => pointsOf(path));
}

function pointsOf(path: readonly PathItem[]): Point[] {
  const ends = path.flatMap((item) =>
    item[0] === 'M' || item[0] === 'L' ? [{ kind: item[0], x: item[1], y: item[2] }] : [],
  );
  return ends.flatMap((end, index) => {
    const before = ends[index - 1];
    return before && end.kind === 'L' ? along(before, end) : [];
  });
}

/** Closed shapes as large as things, drawn in full or dashed: no plates, pills, heads of arrows or the platform. */
function thingBoxes(children: readonly Primitive[]): Box[] {
  return pathsIn(children)
    .filter(({ path, stroke }) => stroke && path.at(-1)?.[0] === 'Z')
    .flatMap((path) => bounds([path], roughMeasure) ?? [])
    .filter(({ width, height }) => Math.min(width, height) > 5.5 && Math.max(width, height) < 60);
}

describe('changeovers of the demo, on A4', () => {
  const demo = demoConcert();
  const plans = partsOf(demo).flatMap(({ from, to }) => {
    const change = changeover(demo, from?.id ?? null, to?.id ?? null);
    const drawing = {
      document: demo,
      change,
      measure: roughMeasure,
      units: 'metric' as const,
      palette: PALETTES.print,
    };
    return [
      { width: 263, height: 162 },
      { width: 176, height: 249 },
    ].flatMap((size) => {
      const body = { x: 0, y: 0, ...size };
      const scale = changeoverPlanScale(drawing, body) ?? NaN;
      return runsOf(change).map((run) => ({ run, ...changeoverPlan(drawing, run, { body, scale }) }));
    });
  });
  const names = allOf(demo, 'door').map(({ name }) => name);

  it('have names of doors over no shape of a thing', () => {
    let seen = 0;
    for (const { children } of plans) {
      const texts = textsIn(children).filter(({ text }) =>
        names.some((name) => name !== '' && text.startsWith(name)),
      );
      expect(texts.length).toBeGreaterThan(0);
      const boxes = thingBoxes(children);
      seen += boxes.length;
      for (const text of texts)
        for (const box of boxes) expect(overlaps(textBox(text, roughMeasure), box), text.text).toBe(false);
    }
    expect(seen).toBeGreaterThan(20);
  });

  it('have no wall and no open edge rubbed out by the paper about a leader', () => {
    for (const { children } of plans) {
      const walls = pathsIn(children).filter(
        ({ stroke, fill }) =>
          (stroke?.colour === PALETTES.print.warning && fill === undefined) || stroke?.width === 0.5,
      );
      const wall = walls.flatMap(({ path }) => pointsOf(path)).filter((_, index) => index % 10 === 0);
      expect(wall.length).toBeGreaterThan(100);
      const halos = rubbedOut(children, 0.9);
      const worst = wall.flatMap((point) => halos.map(({ x, y }) => Math.hypot(point.x - x, point.y - y)));
      expect(worst.filter((distance) => distance < 0.45)).toEqual([]);
    }
  });
});
