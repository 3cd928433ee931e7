/** Positions as coordinates under the marks: clear of everything, or left out and said so. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import { placedInSetup } from '#model/document/document.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { formatAcross, formatDepth } from '#model/document/measures.ts';
import { grownBox, textPieces } from '#model/drawing/bounds.ts';
import { drawAnnotations, drawGround, drawItems, planContext, planDrawing } from '#model/drawing/plan.ts';
import { itemBox } from '#model/drawing/plan/label-requests.ts';
import { shortMarks } from '#model/drawing/plan/short-marks.ts';
import { marksTable } from '#model/drawing/sheet/marks-table.ts';
import type { Box, PathPrimitive } from '#model/drawing/primitives.ts';
import { aDocument, aLamp, aPlayer, aRiser, aStand, aTable, SETUP } from '../../helpers/build.ts';
import {
  ALL_LAYERS,
  boxOf,
  groupsOf,
  overlaps,
  pathsIn,
  planRequest,
  roughMeasure,
  textsIn,
} from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';

const layers = { ...ALL_LAYERS, dimensions: 'coordinates' as const };
/** As much of the page as an A4 sheet leaves for the plan at 1:50. */
const area = { x: 80, y: 20, width: 240, height: 150 };

const spot = fc.record({
  kind: fc.constantFrom('player', 'stand', 'table', 'lamp', 'riser'),
  x: fc.integer({ min: -3800, max: 3800 }),
  y: fc.integer({ min: 200, max: 4800 }),
  facing: fc.integer({ min: -180, max: 180 }),
  name: fc.constantFrom('', 'Viola', 'Second percussion'),
});

const MAKERS = { player: aPlayer, stand: aStand, table: aTable, lamp: aLamp, riser: aRiser };

const stage = fc
  .array(spot, { minLength: 1, maxLength: 24 })
  .map((spots) =>
    aDocument(
      ...spots.map(({ kind, ...fields }, index) =>
        MAKERS[kind as keyof typeof MAKERS]({ ...fields, id: `${kind}-${index}` }),
      ),
    ),
  );

function annotated(document: Document, scale = 50) {
  const context = planContext(planRequest(document, { layers, area, scale }));
  const drawn = [...drawGround(context), ...drawItems(context)];
  return { context, drawn, ...drawAnnotations(context, drawn) };
}

/** The outline of a mark is the only filled path of its label that is wider than a dot. */
function pillsIn(above: Parameters<typeof pathsIn>[0]): Box[] {
  const isPill = (path: PathPrimitive): boolean => path.fill !== undefined && path.stroke !== undefined;
  return pathsIn(above)
    .filter(isPill)
    .map((path) => boxOf([path]));
}

const FIGURE = /^(?:\S.* (?:SL|SR|US|DS)|on centre|at edge)( · .+)?$/;

describe('figures under the marks', () => {
  it('lie clear of every mark, thing, caption and of each other, however the items lie', () => {
    fc.assert(
      fc.property(stage, fc.constantFrom(20, 50, 100), (document, scale) => {
        const { context, drawn, above, labels } = annotated(document, scale);
        const figures = textsIn(above).filter(({ text }) => FIGURE.test(text));
        const boxes = figures.flatMap((text) => textPieces(text, roughMeasure));
        const others = [
          ...textsIn(drawn).flatMap((text) => textPieces(text, roughMeasure)),
          ...pillsIn(above),
          ...context.items
            .filter(({ kind }) => kind === 'player' || kind === 'stand')
            .map((item) => itemBox(context, item)),
        ];
        for (const box of boxes) for (const other of others) expect(overlaps(box, other)).toBe(false);
        labels.placed.forEach((a, index) => {
          for (const b of labels.placed.slice(index + 1)) expect(overlaps(a.box, b.box)).toBe(false);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('keep a hair off every other thing, so that no copy runs them into its lines', () => {
    fc.assert(
      fc.property(stage, (document) => {
        const { labels } = annotated(document);
        for (const label of labels.placed.filter(({ request }) => request.figures.length > 0)) {
          const others = labels.placed.filter(
            (other) => other !== label && other.request.inside !== 'corner',
          );
          for (const { request } of others)
            expect(
              overlaps(grownBox(label.box, 0.45), request.item) &&
                !overlaps(label.request.item, request.item),
            ).toBe(false);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('are there for every item, or the item is named as going without; every item has its mark', () => {
    fc.assert(
      fc.property(stage, (document) => {
        const { above, labels } = annotated(document);
        const records = placedInSetup(document, SETUP);
        const marks = shortMarks(records);
        const without = new Set(labels.withoutFigures.map(({ mark }) => mark));
        expect(labels.dropped).toEqual([]);
        for (const record of records) {
          const mark = marks.get(record.id) ?? '';
          const texts = textsIn(groupsOf(above, record.id)).map(({ text }) => text);
          expect(texts).toContain(mark);
          const figures = [formatAcross(record.x, 'metric'), formatDepth(record.y, 'metric')];
          const isWritten =
            texts.includes(figures.join(' · ')) || figures.every((one) => texts.includes(one));
          expect(isWritten).toBe(!without.has(mark));
        }
      }),
      { numRuns: 60 },
    );
  });

  it('say the same as the table of marks, metric and imperial', () => {
    const document = aDocument(aStand({ x: -750, y: 760 }), aPlayer({ x: 0, y: 1900 }));
    for (const units of ['metric', 'imperial'] as const) {
      const request = plotRequest(document, { units });
      const texts = textsIn(sheetsOf(request).sheets[0]?.children ?? []).map(({ text }) => text);
      for (const [, , across, depth] of marksTable(request).rows)
        expect(texts).toContain(`${across} · ${depth}`);
    }
    // 750 / 25.4 = 29.53 in = 2'-5 1/2"; 760 / 25.4 = 29.92 in = 2'-6" to the nearest quarter: arithmetic.
    const imperial = textsIn(
      sheetsOf(plotRequest(document, { units: 'imperial' })).sheets[0]?.children ?? [],
    );
    expect(imperial.map(({ text }) => text)).toContain(`2'-5 1/2" SR · 2'-6" US`);
  });

  it('have a cross at the very point', () => {
    const { above } = annotated(aDocument(aTable({ x: 1000, y: 3000 })));
    // The origin of the stage lies at (200, 150) on the page; 1:50.
    const at = { x: 200 + 1000 / 50, y: 150 - 3000 / 50 };
    const cross = pathsIn(groupsOf(above, 'table-1')).find(({ path }) => path.length === 4);
    const box = boxOf(cross ? [cross] : []);
    expect(box.x + box.width / 2).toBeCloseTo(at.x, 9);
    expect(box.y + box.height / 2).toBeCloseTo(at.y, 9);
  });

  it('all find room for a quartet within two metres', () => {
    const quartet = [-950, -420, 420, 950].flatMap((x, index): AnyRecord[] => {
      const [y, facing] = Math.abs(x) > 500 ? [1300, x < 0 ? 70 : -70] : [2050, x < 0 ? 25 : -25];
      const turn = (facing * Math.PI) / 180;
      return [
        aPlayer({ id: `player-${index}`, x, y, facing, name: 'Violin' }),
        aStand({
          id: `stand-${index}`,
          x: x + Math.sin(turn) * 600,
          y: y - Math.cos(turn) * 600,
          facing: facing + 180,
        }),
      ];
    });
    const { labels } = annotated(aDocument(...quartet));
    expect(labels.withoutFigures).toEqual([]);
  });
});

describe('the notes under the plan', () => {
  const words = (document: Document): string => {
    const { sheets } = sheetsOf(plotRequest(document));
    return textsIn(sheets[0]?.children ?? [])
      .map(({ text }) => text)
      .join(' ');
  };

  it('name the sheet that has the table of all positions', () => {
    const document = aDocument(aStand({ x: 820, y: 1450 }));
    const { sheets } = sheetsOf(plotRequest(document));
    const number = Number(/All positions: sheet (\d+), Marks\./.exec(words(document))?.[1]);
    const texts = textsIn(sheets[number - 1]?.children ?? []).map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(['Marks', '820 SL', '1450 US']));
  });

  it('name the items whose figures found no room', () => {
    const crowd = Array.from({ length: 40 }, (_, index) =>
      aStand({ id: `stand-${index + 1}`, x: (index % 8) * 250, y: 1500 + Math.floor(index / 8) * 250 }),
    );
    expect(words(aDocument(...crowd))).toMatch(
      /No room here for the figures of S\d+, .* and \d+ more \(sheet \d+\)/,
    );
    expect(words(aDocument(aStand()))).not.toContain('No room here');
  });
});

describe('dimension lines of what is selected', () => {
  it('have their figures clear of every mark and text, however crowded', () => {
    fc.assert(
      fc.property(stage, fc.constantFrom(20, 50), (document, scale) => {
        const selected = placedInSetup(document, SETUP)
          .slice(0, 2)
          .map(({ id }) => id as string);
        const request = planRequest(document, { layers: { ...ALL_LAYERS, dimensions: selected }, scale });
        const context = planContext(request);
        const { above } = drawAnnotations(context, [...drawGround(context), ...drawItems(context)]);
        const drawing = planDrawing(request);
        const figures = textsIn(above).filter(({ text }) => FIGURE.test(text));
        for (const figure of figures) {
          const boxes = textPieces(figure, roughMeasure);
          const others = textsIn(drawing).filter((text) => JSON.stringify(text) !== JSON.stringify(figure));
          const kept = [...pillsIn(above), ...others.flatMap((text) => textPieces(text, roughMeasure))];
          for (const box of boxes) for (const other of kept) expect(overlaps(box, other)).toBe(false);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('the height of a riser', () => {
  it('is read beside what stands on it, whichever corner that is', () => {
    for (const [x, y] of [
      [-800, 3700],
      [800, 3700],
      [-800, 4300],
      [800, 4300],
    ] as const) {
      const document = aDocument(aRiser({ y: 4000 }), aStand({ x, y }));
      const context = planContext(planRequest(document));
      const { above } = drawAnnotations(context, [...drawGround(context), ...drawItems(context)]);
      const height = textsIn(above).find(({ text }) => text === '+200');
      if (!height) throw new Error('no height is written');
      const stand = context.items.find(({ kind }) => kind === 'stand');
      if (!stand) throw new Error('the stand is in the setup');
      for (const box of textPieces(height, roughMeasure)) {
        expect(overlaps(box, itemBox(context, stand))).toBe(false);
        for (const pill of pillsIn(above)) expect(overlaps(box, pill)).toBe(false);
      }
    }
  });
});
