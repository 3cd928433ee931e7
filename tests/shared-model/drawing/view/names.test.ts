/** Names in a picture: none on another, and no line to a head through a name or through somebody else's head. */

import { describe, expect, test } from 'vitest';
import type { Document } from '#model/document/document.ts';
import type { Box, Primitive } from '#model/drawing/primitives.ts';
import { bounds } from '#model/drawing/bounds.ts';
import { viewContext } from '#model/drawing/view/context.ts';
import { headsIn } from '#model/drawing/view/heads.ts';
import { namesOver } from '#model/drawing/view/names.ts';
import { pictureOf } from '#model/drawing/view/picture.ts';
import { solidsOf } from '#model/drawing/view/solids/solids.ts';
import { viewFromSeat } from '#model/drawing/view/view-drawing.ts';
import { housePlaces } from '#model/document/seating.ts';
import { aDocument, aPlayer, aSeatBlock, SETUP } from '../../../helpers/build.ts';
import { roughMeasure } from '../drawings.ts';
import { viewRequest } from './pictures.ts';

/** Somebody behind two others, as seen from the middle; the names are wider than the bodies. */
const TRIO = aDocument(
  aSeatBlock(),
  aPlayer({ id: 'player-1', name: 'Clarinet', x: -420, y: 1200 }),
  aPlayer({ id: 'player-2', name: 'Viola', x: 420, y: 1200 }),
  aPlayer({ id: 'player-3', name: 'Marimba and shakers', x: 30, y: 3700 }),
  aPlayer({ id: 'player-4', name: 'Bass clarinet in B flat', x: -300, y: 4400 }),
);

function named(document: Document, seat: string) {
  const view = viewFromSeat(document, SETUP, seat);
  if (!view) throw new Error(`no seat ${seat}`);
  const context = viewContext({ ...viewRequest(document), view });
  const heads = headsIn(
    context,
    pictureOf(solidsOf(context), context.camera, context.palette, () => ''),
  );
  return { heads, names: namesOver(context, heads) };
}

const boxOf = (primitive: Primitive): Box => {
  const box = bounds([primitive], roughMeasure);
  if (!box) throw new Error('nothing is drawn');
  return box;
};

const inside = ({ x, y, width, height }: Box, at: { readonly x: number; readonly y: number }): boolean =>
  at.x > x && at.x < x + width && at.y > y && at.y < y + height;

/** Spots along a straight line. */
function spotsAlong(primitive: Primitive) {
  if (primitive.kind !== 'path') throw new Error('no line');
  const [from, to] = primitive.path;
  if (from?.[0] !== 'M' || to?.[0] !== 'L') throw new Error('no straight line');
  return Array.from({ length: 60 }, (_, index) => {
    const share = index / 59;
    return { x: from[1] + (to[1] - from[1]) * share, y: from[2] + (to[2] - from[2]) * share };
  });
}

describe('names over heads', () => {
  test('keep off each other and off all heads, their lines too, from every place', () => {
    let lines = 0;
    for (const { id } of housePlaces(TRIO)) {
      const { heads, names } = named(TRIO, id);
      const texts = names.filter(({ kind }) => kind === 'text').map(boxOf);
      const leaders = names.filter(({ kind }) => kind === 'path');
      lines += leaders.length;
      for (const spot of leaders.flatMap(spotsAlong)) {
        expect(
          texts.some((box) => inside(box, spot)),
          id,
        ).toBe(false);
        expect(
          heads.some(({ box }) => inside(box, spot)),
          id,
        ).toBe(false);
      }
      for (const text of texts) {
        const middle = { x: text.x + text.width / 2, y: text.y + text.height / 2 };
        expect(
          heads.some(({ box }) => inside(box, middle)),
          id,
        ).toBe(false);
      }
    }
    expect(lines).toBeGreaterThan(0);
  });

  test('a name that has no room over its head is found elsewhere', () => {
    const { heads, names } = named(TRIO, 'stalls/C-4');
    expect(names.filter(({ kind }) => kind === 'text')).toHaveLength(heads.filter(({ seen }) => seen).length);
  });
});
