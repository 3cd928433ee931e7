/** Leaders lead to their thing: over no other body when they carry figures, and on paper so that they are seen. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import { boxContains } from '#model/drawing/bounds.ts';
import { leaderStart, type PlacedLabel } from '#model/drawing/plan/label-places.ts';
import { drawAnnotations, drawGround, drawItems, planContext } from '#model/drawing/plan.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { Box } from '#model/drawing/primitives.ts';
import {
  aDocument,
  aLamp,
  aLargeInstrument,
  anInstrumentStand,
  aPlayer,
  aStand,
  aTable,
} from '../../helpers/build.ts';
import { ALL_LAYERS, boxOf, pathsIn, planRequest, roughMeasure, textsIn } from './drawings.ts';

const layers = { ...ALL_LAYERS, dimensions: 'coordinates' as const };
const area = { x: 80, y: 20, width: 240, height: 150 };

function annotated(document: Document, scale: number) {
  const context = planContext(planRequest(document, { layers, area, scale }));
  return drawAnnotations(context, [...drawGround(context), ...drawItems(context)]);
}

/** A lamp at one end of a marimba, a cable, a player and a stand: there is hardly any room for figures at 1:100. */
const lampOnMarimba = (x: number, y: number): Document =>
  aDocument(
    aPlayer({ x: 150, y: 3500, name: 'Marimba and shakers' }),
    aStand({ x: 150, y: 2280, facing: 180 }),
    anInstrumentStand({ x: -2300, y: 2300 }),
    aTable({ x: 2350, y: 3600, facing: 90 }),
    aLargeInstrument({ x: 150, y: 2900, model: 'marimba-5-octave', name: 'Marimba' }),
    aLamp({
      x,
      y,
      cable: [
        { x: 1900, y: 4300 },
        { x: -2200, y: 5000 },
      ],
    }),
  );

/** Millimetres of a leader over a box, by walking along it. */
function lengthOver(label: PlacedLabel, box: Box): number {
  const { target } = label.request;
  const start = leaderStart(label.box, target);
  const length = Math.hypot(target.x - start.x, target.y - start.y);
  const count = Math.ceil(length * 20);
  const over = Array.from({ length: count }, (_, step) => (step + 0.5) / count).filter((share) =>
    boxContains(box, {
      x: start.x + (target.x - start.x) * share,
      y: start.y + (target.y - start.y) * share,
      width: 0,
      height: 0,
    }),
  );
  return (over.length / Math.max(count, 1)) * length;
}

const spot = fc.record({ x: fc.integer({ min: -1000, max: 1300 }), y: fc.integer({ min: 2500, max: 3350 }) });

describe('the leader of a label with figures', () => {
  it('runs over no other thing, and over what its own stands on only for a few millimetres', () => {
    let led = 0;
    fc.assert(
      fc.property(spot, fc.constantFrom(50, 100), ({ x, y }, scale) => {
        const { placed } = annotated(lampOnMarimba(x, y), scale).labels;
        for (const label of placed.filter(({ leader, request }) => leader && request.figures.length > 0)) {
          led += 1;
          const others = placed.filter(({ request }) => request !== label.request);
          for (const { request } of others) {
            const isUnder = boxContains(request.item, { ...label.request.target, width: 0, height: 0 });
            // The last 1.8 mm are the sign of the thing itself, and pieces of 1 mm are looked at.
            const most = isUnder ? 6 + 1.8 + 1 + boxDiagonal(label.request.item) : 1.8 + 1;
            expect(lengthOver(label, request.item), request.mark).toBeLessThanOrEqual(most);
          }
        }
      }),
      { numRuns: 60 },
    );
    expect(led).toBeGreaterThan(30);
  });
});

function boxDiagonal({ width, height }: Box): number {
  return Math.hypot(width, height) / 2;
}

describe('every leader', () => {
  it('lies on a broader line of paper, under all labels and short of its thing’s own sign', () => {
    const { above, labels } = annotated(lampOnMarimba(1200, 3200), 50);
    const led = labels.placed.filter(({ leader }) => leader);
    expect(led.length).toBeGreaterThan(0);
    const first = above.findIndex((group) => textsIn([group]).length > 0 && group.subject);
    const halos = above
      .slice(0, first)
      .flatMap((group) =>
        group.subject ? [] : pathsIn([group]).filter(({ stroke }) => stroke?.colour === PALETTES.print.paper),
      );
    for (const label of led) {
      const start = leaderStart(label.box, label.request.target);
      const halo = halos.find(({ path: [move] }) => move?.[1] === start.x && move[2] === start.y);
      const box = boxOf(halo ? [{ kind: 'path', path: halo.path, fill: '#ffffff' }] : [], roughMeasure);
      expect(halo?.stroke?.width).toBeGreaterThan(0.5);
      expect(boxContains(box, { ...label.request.target, width: 0, height: 0 })).toBe(false);
    }
  });
});

describe('a lamp', () => {
  it('is named beside its mark where there is room', () => {
    const { above } = annotated(aDocument(aLamp({ x: 1500, y: 2500 })), 50);
    expect(textsIn(above).map(({ text }) => text)).toEqual(expect.arrayContaining(['L1', 'Lamp']));
  });
});
