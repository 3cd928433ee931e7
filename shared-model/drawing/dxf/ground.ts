/** What stays from setup to setup: the platform with its edges and doors, the centre line, the seats of the house. */

import { allOf, platformOf, type Document } from '../../document/document.ts';
import { formatLength, type Units } from '../../document/measures.ts';
import { doorway, edgeOf, openEdgesOf, type Segment } from '../../document/openings.ts';
import { housePlaces } from '../../document/seating.ts';
import { degrees } from '../../geometry/frame.ts';
import { boundsOf, signedArea } from '../../geometry/polygon.ts';
import { IDENTITY } from '../affine.ts';
import { line, polygon, roundedRectangle } from '../outline.ts';
import { cushionOf } from '../plan/house-shown.ts';
import { placeSymbol } from '../plan/places.ts';
import type { PathItem } from '../primitives.ts';
import { LETTERS } from './letters.ts';
import type { DxfPen } from './pen.ts';

export function drawPlatform(pen: DxfPen, document: Document, units: Units): void {
  const platform = platformOf(document);
  pen.path('platform', polygon(platform.outline));
  for (const { a, b } of openEdgesOf(platform)) pen.path('open-edges', line(a, b));
  for (const door of allOf(document, 'door')) {
    const { a, b } = doorway(platform, door);
    pen.path('doors', line(a, b));
    pen.words(door.name, { layer: 'doors', ...besideEdge({ a, b }, -LETTERS.small * 3) });
  }
  const outwards = signedArea(platform.outline) > 0 ? -1 : 1;
  platform.outline.forEach((_, index) => {
    const edge = edgeOf(platform, index);
    const length = Math.hypot(edge.b.x - edge.a.x, edge.b.y - edge.a.y);
    const words = formatLength(length, units);
    pen.words(words, { layer: 'dimensions', ...besideEdge(edge, outwards * LETTERS.small * 2) });
  });
  const { minY, maxY } = boundsOf(platform.outline);
  const ends = [minY - CENTRE_LINE_OVER, maxY + CENTRE_LINE_OVER].map((y) => ({ x: 0, y }));
  const [from, to] = ends;
  if (from && to) pen.path('centre-line', line(from, to));
}

/** The centre line goes so far beyond the platform, mm. */
const CENTRE_LINE_OVER = 500;

/** Over the middle of an edge and so far to its left, upright or read from the right. */
function besideEdge({ a, b }: Segment, aside: number) {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = Math.hypot(dx, dy) || 1;
  const at = { x: (a.x + b.x) / 2 - (dy / length) * aside, y: (a.y + b.y) / 2 + (dx / length) * aside };
  const turn = degrees(Math.atan2(dy, dx));
  const upright = turn > 90 ? turn - 180 : turn <= -90 ? turn + 180 : turn;
  return { at, height: LETTERS.small, turn: upright };
}

/** All places of the house, each a block that can be counted. */
export function drawHouse(pen: DxfPen, document: Document): void {
  const cushions = new Map(
    allOf(document, 'seatBlock').map((block) => [block.id as string, cushion(cushionOf(block))]),
  );
  const uses = new Map(allOf(document, 'place').map(({ id, use }) => [id as string, use]));
  for (const { record, x, y, facing } of housePlaces(document)) {
    const use = uses.get(record);
    const symbol = use ? placeSymbol(use, IDENTITY, { fill: '', line: '' }) : [];
    const paths = symbol.flatMap((part) => (part.kind === 'path' ? [part.path] : []));
    pen.thing(cushions.get(record) ?? paths, { layer: 'house-seats', at: { x, y }, turn: facing });
  }
}

function cushion({ width, depth }: { readonly width: number; readonly depth: number }): PathItem[][] {
  return [
    roundedRectangle({ x: -width / 2, y: -depth / 2, width, height: depth }, Math.min(60, width / 4)),
    line({ x: -width / 2 + 20, y: depth / 2 + 40 }, { x: width / 2 - 20, y: depth / 2 + 40 }),
  ];
}
