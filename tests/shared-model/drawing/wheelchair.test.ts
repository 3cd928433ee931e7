/** The circle is 1525 mm wide (ADA/ABA 304.3.1), the wheelchair 660 by 1215 mm (ADA Standards 1991, figure A3). */

import { describe, expect, it } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import { documentOf, setupsOf, type Document } from '#model/document/document.ts';
import type { Shape } from '#model/document/records.ts';
import { textBox } from '#model/drawing/bounds.ts';
import type { Box, Primitive, TextPrimitive } from '#model/drawing/primitives.ts';
import { sectionDrawing } from '#model/drawing/section.ts';
import { drawItem } from '#model/drawing/plan/items.ts';
import { drawRoutes } from '#model/drawing/plan/overlays.ts';
import { planContext, type PlanLayers } from '#model/drawing/plan.ts';
import { aDocument, aDoor, aPlayer, aSeat, aShape, recordOf, SETUP } from '../../helpers/build.ts';
import { demoConcert } from '../checks/remedies/demo.ts';
import {
  ALL_LAYERS,
  boxOf,
  groupsIn,
  groupsOf,
  pathsIn,
  planRequest,
  roughMeasure,
  textsIn,
} from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';
import { sectionOf } from './section/section-request.ts';

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

describe('the labels of a plot', () => {
  /** The demo, with everybody who stands or sits alone in a wheelchair. */
  const demo = demoConcert();
  const wheeled = documentOf(
    [...demo.records.values()].map((record) =>
      record.kind === 'player'
        ? { ...record, chair: { model: 'wheelchair', height: 485 }, mobility: 'wheelchair' }
        : record,
    ),
  );
  const PAPERS = ['A4', 'A3', 'Letter', 'Tabloid'] as const;

  it.each(setupsOf(demo).flatMap(({ id }) => PAPERS.map((paper) => ({ id, paper }))))(
    'keep off the circles in which wheelchairs turn: $id on $paper',
    ({ id, paper }) => {
      const request = plotRequest(wheeled, { setup: id, report: checkSetup(wheeled, id) });
      const { sheets } = sheetsOf({ ...request, options: { ...request.options, paper } });
      const groups = groupsIn(sheets[0]?.children ?? []);
      const rings = groups
        .filter(({ description }) => description?.startsWith('Room to turn'))
        .map(({ children }) => boxOf(children.slice(0, 1)));
      const labels = groups.filter(({ subject, children }) => subject && children.some(isText));
      expect(rings.length).toBeGreaterThan(0);
      expect(labels.length).toBeGreaterThan(2);
      const crossed = labels.flatMap(({ children }) =>
        children
          .filter(isText)
          .filter((text) => rings.some((ring) => isOnRim(textBox(text, roughMeasure), ring)))
          .map(({ text }) => text),
      );
      expect(crossed).toEqual([]);
    },
  );
});

const isText = (primitive: Primitive): primitive is TextPrimitive => primitive.kind === 'text';

/** Some of the box is within the circle that the ring's box holds, and some without. */
function isOnRim(box: Box, ring: Box): boolean {
  const radius = ring.width / 2;
  const [cx, cy] = [ring.x + radius, ring.y + ring.height / 2];
  const near = Math.hypot(
    Math.max(box.x - cx, 0, cx - box.x - box.width),
    Math.max(box.y - cy, 0, cy - box.y - box.height),
  );
  const far = Math.hypot(
    Math.max(Math.abs(box.x - cx), Math.abs(box.x + box.width - cx)),
    Math.max(Math.abs(box.y - cy), Math.abs(box.y + box.height - cy)),
  );
  return near < radius && radius < far;
}

describe('a wheelchair in the section', () => {
  /** Widths of the round shapes of a player from the side, in mm. */
  const rounds = (facing: number): number[] => {
    const document = aDocument(aDoor(), { ...USER, facing });
    const [group] = groupsOf(sectionDrawing(sectionOf(document)), 'player-1');
    return group
      ? pathsIn([group])
          .filter(({ fill }) => !fill)
          .map((path) => boxOf([path]).height * 100)
      : [];
  };

  it('has wheels of 24 in, whose height does not hang on where he looks', () => {
    // Of the line about it 0.18 mm of paper at 1:100.
    const isWheel = (height: number): boolean => Math.abs(height - 610) < 40;
    for (const facing of [0, 30, 90, 180]) expect(rounds(facing).some(isWheel)).toBe(true);
    const seated = aDocument(aDoor(), {
      ...USER,
      chair: { model: 'orchestra-chair', height: 450 },
      mobility: 'walks',
    });
    const [group] = groupsOf(sectionDrawing(sectionOf(seated)), 'player-1');
    expect(pathsIn(group ? [group] : []).some((path) => isWheel(boxOf([path]).height * 100))).toBe(false);
  });

  it('looks along the plane with wheels before his legs, across it with none', () => {
    const order = (facing: number): (string | undefined)[] => {
      const document = aDocument(aDoor(), { ...USER, facing });
      const [group] = groupsOf(sectionDrawing(sectionOf(document)), 'player-1');
      return (group?.children ?? []).map((path) => ('fill' in path && path.fill ? 'body' : 'line'));
    };
    expect(order(0).lastIndexOf('line')).toBeGreaterThan(order(0).indexOf('body'));
    expect(order(90).slice(order(90).indexOf('body') + 1, -2)).not.toContain('line');
  });

  it('a wheelchair without a player has wheels too', () => {
    const document = aDocument(aDoor(), aSeat({ model: 'wheelchair', height: 485, y: 1500 }));
    const [group] = groupsOf(sectionDrawing(sectionOf(document)), 'seat-1');
    expect(
      pathsIn(group ? [group] : []).some((path) => Math.abs(boxOf([path]).height * 100 - 610) < 40),
    ).toBe(true);
  });
});
