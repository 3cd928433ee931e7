/** Blocks of seats are shown in whole rows or not at all; their names and letters lie on no seat. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seatsInRow } from '#model/document/seating.ts';
import { boxContains, textPieces } from '#model/drawing/bounds.ts';
import { stageToPage } from '#model/drawing/plan/context.ts';
import { houseBoxes, houseShown, seatBox } from '#model/drawing/plan/house-shown.ts';
import { drawGround, planContext, planDrawing } from '#model/drawing/plan.ts';
import { aDocument, aPlace, aSeatBlock, aStand } from '../../helpers/build.ts';
import { boxOf, groupsOf, overlaps, pathsIn, planRequest, roughMeasure, textsIn } from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';

const block = fc.record({
  x: fc.integer({ min: -7000, max: 7000 }),
  y: fc.integer({ min: -12_000, max: 3000 }),
  facing: fc.constantFrom(180, 90, -90, 160, -135),
  rows: fc.integer({ min: 1, max: 9 }),
  seatsPerRow: fc.integer({ min: 1, max: 20 }),
  curveRadius: fc.constantFrom(0, 9000),
  firstRow: fc.constantFrom('A', 'AA', 'CC', '1'),
  staggered: fc.boolean(),
});

const house = fc
  .array(block, { minLength: 1, maxLength: 4 })
  .map((blocks) =>
    aDocument(
      ...blocks.map((fields, index) =>
        aSeatBlock({ ...fields, id: index === 0 ? 'stalls' : `block-${index}`, name: `Block ${index}` }),
      ),
    ),
  );

const area = { x: 60, y: 20, width: 260, height: 180 };

describe('what a plan shows of the house', () => {
  it('is whole rows from the front of each block, all of them inside the area, with a line where it breaks off', () => {
    fc.assert(
      fc.property(house, fc.constantFrom(50, 100, 200), (document, scale) => {
        const view = { document, area, scale, toPage: stageToPage(scale, { x: 200, y: 100 }) };
        for (const { block: shown, seats, breakLine } of houseShown(view).blocks) {
          const rows = (seats.at(-1)?.row ?? -1) + 1;
          expect(rows).toBeGreaterThan(0);
          for (let row = 0; row < rows; row++)
            expect(seats.filter((seat) => seat.row === row)).toHaveLength(seatsInRow(shown, row));
          for (const seat of seats) expect(boxContains(area, seatBox(view, shown, seat))).toBe(true);
          expect(breakLine === null).toBe(rows === shown.rows);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('leaves nothing out where there is no bound', () => {
    fc.assert(
      fc.property(house, (document) => {
        const view = { document, area: null, scale: 50, toPage: stageToPage(50, { x: 0, y: 0 }) };
        expect(houseShown(view).isCut).toBe(false);
      }),
    );
  });

  it('is said to go on elsewhere when it does', () => {
    const words = (rows: number): string => {
      const document = aDocument(aSeatBlock({ rows }), aStand());
      const { sheets } = sheetsOf(plotRequest(document, { options: A3 }));
      return textsIn(sheets[0]?.children ?? [])
        .map(({ text }) => text)
        .join(' ');
    };
    expect(words(30)).toContain('Seats that are not shown here: sheet 2, Seat map.');
    expect(words(2)).toContain('What the seats see: sheet 2, Seat map.');
  });
});

const A3 = { paper: 'A3', orientation: 'portrait', scale: null } as const;

describe('the words about the house', () => {
  it('lie on no seat: names of blocks and rows, HOUSE, EDGE, warnings', () => {
    fc.assert(
      fc.property(house, fc.constantFrom(50, 100, 200), (document, scale) => {
        const context = planContext(planRequest(document, { scale, area }));
        const texts = textsIn(drawGround(context));
        const seats = houseBoxes(context);
        for (const text of texts) {
          for (const piece of textPieces(text, roughMeasure)) {
            const hit = seats.find((seat) => overlaps(seat, piece));
            expect(hit && text.text).toBeUndefined();
          }
        }
      }),
      { numRuns: 200 },
    );
  });

  it('name every row of a further block at both ends', () => {
    const document = aDocument(
      aSeatBlock(),
      aSeatBlock({ id: 'rear', name: 'Rear', y: -9000, firstRow: 'AA', rows: 3 }),
    );
    for (const scale of [50, 100, 200]) {
      const names = textsIn(groupsOf(planDrawing(planRequest(document, { scale })), 'rear')).map(
        ({ text }) => text,
      );
      for (const row of ['AA', 'AB', 'AC']) expect(names.filter((name) => name === row)).toHaveLength(2);
      expect(names).toContain('Rear');
    }
  });

  it('name a block before it or behind it, or not at all where neither is free: never off in the margin', () => {
    for (const rearAt of [-5200, -5600, -9000]) {
      const rear = aSeatBlock({ id: 'rear', name: 'Rear', y: rearAt, rows: 3, firstRow: 'F' });
      const document = aDocument(aSeatBlock({ rows: 5 }), rear);
      for (const scale of [100, 200, 250, 300]) {
        const drawn = groupsOf(planDrawing(planRequest(document, { scale })), 'rear');
        const [name] = textsIn(drawn).filter(({ text }) => text === 'Rear');
        const seats = boxOf(pathsIn(drawn));
        if (name) expect(Math.abs(name.x - seats.x - seats.width / 2)).toBeLessThan(seats.width / 2);
      }
    }
  });

  it('name a wheelchair place beside its sign', () => {
    for (const scale of [20, 50, 100, 200]) {
      const document = aDocument(aPlace({ x: 5000, y: -1500, name: 'Wheelchair place left' }));
      const request = planRequest(document, { scale });
      const [name] = textsIn(planDrawing(request)).filter(({ text }) => text === 'Wheelchair place left');
      if (!name) throw new Error('the place is not named');
      const [box] = textPieces(name, roughMeasure);
      const signs = houseBoxes(planContext(request));
      for (const sign of signs) expect(box && overlaps(box, sign)).toBe(false);
    }
  });
});
