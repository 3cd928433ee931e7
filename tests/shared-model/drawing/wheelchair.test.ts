/** The circle is 1525 mm wide (ADA/ABA 304.3.1), the wheelchair 660 by 1215 mm (ADA Standards 1991, figure A3). */

import { describe, expect, it } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import type { Document } from '#model/document/document.ts';
import type { Shape } from '#model/document/records.ts';
import { drawItem } from '#model/drawing/plan/items.ts';
import { drawRoutes } from '#model/drawing/plan/overlays.ts';
import { planContext, type PlanLayers } from '#model/drawing/plan.ts';
import { aDocument, aDoor, aPlayer, aShape, recordOf, SETUP } from '../../helpers/build.ts';
import { ALL_LAYERS, boxOf, pathsIn, planRequest, textsIn } from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';

const USER = aPlayer({
  y: 1500,
  chair: { model: 'wheelchair', height: 485 },
  mobility: 'wheelchair',
});

/** Walls of a lane on either side of the place. */
const lane = (width: number): Shape[] =>
  [-1, 1].map((side) => {
    const x = (side * (width + 100)) / 2;
    const corner = (dx: number, dy: number) => ({ x: 50 * dx, y: 1300 * dy });
    const outline = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
    return aShape({ id: side < 0 ? 'shape-1' : 'shape-2', x, y: 1500, outline });
  });

const open = aDocument(aDoor({ offset: 3000, width: 2000 }), USER);
const tight = aDocument(aDoor({ offset: 3000, width: 2000 }), USER, ...lane(1400));

const drawn = (document: Document, layers: Partial<PlanLayers> = {}) =>
  drawRoutes(
    planContext(
      planRequest(document, {
        report: checkSetup(document, SETUP),
        layers: { ...ALL_LAYERS, ...layers },
      }),
    ),
  );
const said = (document: Document, layers: Partial<PlanLayers> = {}) =>
  drawn(document, layers).map(({ description }) => description);

describe('a wheelchair on the plan', () => {
  it('has its true size', () => {
    const symbol = drawItem(recordOf(open, 'player-1', 'player'), planContext(planRequest(open)));
    const { width, height } = boxOf([symbol]);
    // With the line about it, 0.18 mm.
    expect(width - 0.18).toBeCloseTo(660 / 50, 1);
    expect(height - 0.18).toBeCloseTo(1215 / 50, 1);
  });

  it('shows the circle at the place always, the way and the other circles when looked at', () => {
    const circle = 'Room to turn a wheelchair: 1525 mm';
    expect(said(open)).toEqual([circle]);
    const all = ['Route to an exit', circle, circle];
    expect(said(open, { dimensions: ['player-1'] })).toEqual(all);
    expect(said(open, { dimensions: ['player-2'] })).toEqual([circle]);
    expect(said(open, { routes: true })).toEqual(all);
    expect(said(open, { dimensions: 'coordinates' })).toEqual(all);
  });

  it('draws the circle dashed and as wide as it takes, over the place', () => {
    const [group] = drawn(open);
    const [circle, ...others] = group ? pathsIn([group]) : [];
    expect(others).toEqual([]);
    expect(circle?.stroke?.dash).toBeDefined();
    const { x, y, width } = boxOf(circle ? [circle] : []);
    expect(width - (circle?.stroke?.width ?? 0)).toBeCloseTo(1525 / 50, 1);
    const [px, py] = [200, 150 - 1500 / 50];
    expect(Math.hypot(px - (x + width / 2), py - (y + width / 2))).toBeLessThanOrEqual(1525 / 100 + 0.01);
  });

  it('where there is too little room draws what there is within, and says so by more than a colour', () => {
    const [group] = drawn(tight);
    const [asked, free] = group ? pathsIn([group]) : [];
    expect(group?.description).toBe('Room to turn a wheelchair: 1400 mm');
    expect(asked?.stroke?.width).toBeGreaterThan(pathsIn(drawn(open))[0]?.stroke?.width ?? Infinity);
    expect(free?.stroke?.dash).not.toEqual(asked?.stroke?.dash);
    expect(boxOf(free ? [free] : []).width).toBeLessThan(boxOf(asked ? [asked] : []).width);
  });

  it('is on the plot with a key to it, and the key only there', () => {
    const words = (document: Document) =>
      textsIn(
        sheetsOf(plotRequest(document, { report: checkSetup(document, SETUP) })).sheets.flatMap(
          ({ children }) => children,
        ),
      ).map(({ text }) => text);
    expect(words(open)).toContain('room to turn a wheelchair, and its way');
    expect(words(aDocument(aPlayer()))).not.toContain('room to turn a wheelchair, and its way');
  });
});
