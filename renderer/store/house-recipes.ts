/** How a new door, block of seats or single place starts out. */

import type { NewRecord } from '#model/commands/add.ts';
import { allOf, type Document } from '#model/document/document.ts';
import { edgeOf } from '#model/document/openings.ts';
import type { Platform } from '#model/document/records.ts';

/** A way off the platform in the middle of the edge farthest upstage. */
export function newDoor(platform: Platform): NewRecord {
  const edge = rearmostEdge(platform);
  const { a, b } = edgeOf(platform, edge);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const width = Math.min(1000, Math.round(length / 2));
  return {
    kind: 'door',
    name: '',
    edge,
    offset: Math.round((length - width) / 2),
    width,
    exit: true,
    stepFree: true,
  };
}

function rearmostEdge(platform: Platform): number {
  let best = 0;
  let highest = -Infinity;
  platform.outline.forEach((_, index) => {
    const { a, b } = edgeOf(platform, index);
    if (a.y + b.y <= highest) return;
    highest = a.y + b.y;
    best = index;
  });
  return best;
}

/** Five rows behind whatever seats there are. */
export function newBlock(document: Document): NewRecord {
  const blocks = allOf(document, 'seatBlock');
  const last = blocks.reduce((least, { y, rows, rowDepth }) => Math.min(least, y - rows * rowDepth), -1600);
  return {
    kind: 'seatBlock',
    name: '',
    x: 0,
    y: last - 900,
    facing: 180,
    rows: 5,
    seatsPerRow: 12,
    seatPitch: 520,
    rowDepth: 900,
    riser: 0,
    floor: 0,
    curveRadius: 0,
    staggered: false,
    aisles: [],
    frontRail: 0,
    eyeHeight: 1200,
    firstRow: 'A',
  };
}

export function newPlace(document: Document): NewRecord {
  const count = allOf(document, 'place').length;
  return {
    kind: 'place',
    name: '',
    use: 'wheelchair',
    x: -4000 - count * 1000,
    y: -2600,
    floor: 0,
    eyeHeight: 1180,
  };
}
