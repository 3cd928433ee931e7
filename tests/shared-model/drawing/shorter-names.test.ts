/** Names for which there is little room: sizes are this program's own; no outside source. */

import { describe, expect, it } from 'vitest';
import { createOccupancy } from '#model/drawing/occupancy.ts';
import { textPieces } from '#model/drawing/bounds.ts';
import { drawGround, planContext } from '#model/drawing/plan.ts';
import { placeLabels } from '#model/drawing/plan/label-places.ts';
import type { LabelRequest } from '#model/drawing/plan/label-requests.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { Primitive, TextPrimitive } from '#model/drawing/primitives.ts';
import { boxesOverlap } from '#model/drawing/bounds.ts';
import { aDocument, aPlatform, aPlayer, aStorage, SETUP } from '../../helpers/build.ts';

const measure = (text: string, size: number): number => text.length * size * 0.5;

describe('a label between other things', () => {
  const request: LabelRequest = {
    subject: 'player-1',
    mark: 'P1',
    name: 'Marimba and shakers',
    figures: [],
    item: { x: 100, y: 100, width: 6, height: 6 },
    target: { x: 103, y: 103 },
    inside: null,
  };
  /** Walls of words all round, which leave a lane of 30 mm beside the thing. */
  const lane = createOccupancy([
    { x: 0, y: 0, width: 300, height: 98 },
    { x: 0, y: 108, width: 300, height: 200 },
    { x: 0, y: 98, width: 100, height: 10 },
    { x: 132, y: 98, width: 200, height: 10 },
  ]);
  const sizeOf = ({ name }: LabelRequest) => ({ width: 6 + name.length * 1.6, height: 4 });

  it('has the beginning of its name where the whole one finds no room', () => {
    const shorterName = (name: string): string => (name.length > 9 ? `${name.slice(0, 8)}…` : name);
    const { placed, withoutNames } = placeLabels([request], {
      ...{ sizeOf, shorterName, texts: lane, things: [], barred: [] },
      area: { x: 90, y: 90, width: 44, height: 20 },
    });
    expect(placed.map((label) => label.request.name)).toEqual(['Marimba …']);
    expect(withoutNames).toEqual([]);
  });
});

describe('storage places on a screen', () => {
  const texts = (drawn: readonly Primitive[]): TextPrimitive[] =>
    drawn.flatMap((one) => (one.kind === 'text' ? [one] : one.kind === 'group' ? texts(one.children) : []));
  const ground = (scale: number) =>
    drawGround(
      planContext({
        document: aDocument(
          aPlatform(),
          aPlayer(),
          aStorage({ id: 'storage-1', name: 'Percussion room', x: 700, y: 7300 }),
          aStorage({ id: 'storage-2', name: 'Chair store', x: 3400, y: 7300 }),
        ),
        ...{ setup: SETUP, report: null, scale, origin: { x: 0, y: 0 }, palette: PALETTES.light, measure },
        ...{ units: 'metric', area: null },
        layers: {
          ...{ seats: true, sightBands: null, marks: true, names: true, dimensions: 'none' },
          ...{ grid: true, words: true, reach: false, routes: false, storages: true },
        },
      }),
    );

  it('have names that run into no other word, at any scale', () => {
    for (const scale of [40, 80, 120, 200, 300]) {
      const written = texts(ground(scale));
      expect(
        written.some(({ text }) => text === 'UPSTAGE'),
        `1:${scale}`,
      ).toBe(true);
      const pieces = written.flatMap((text) => textPieces(text, measure).map((box) => ({ text, box })));
      for (const [at, one] of pieces.entries())
        for (const other of pieces.slice(at + 1))
          if (one.text !== other.text)
            expect(boxesOverlap(one.box, other.box), `1:${scale}: ${one.text.text}, ${other.text.text}`).toBe(
              false,
            );
    }
  });

  it('have their whole names where there is room', () => {
    expect(texts(ground(40)).map(({ text }) => text)).toContain('Percussion room');
  });
});
