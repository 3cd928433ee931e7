/** The house: rails and heads as the sight check counts them, and for whoever looks from the stage the people in it. */

import { headOccluders, railOccluders } from '../../../checks/scene/house.ts';
import { allOf, concertOf, platformOf, type Document } from '../../../document/document.ts';
import { housePlaces, type HousePlace } from '../../../document/seating.ts';
import type { SeatBlock } from '../../../document/records.ts';
import { facingVector, type Vec3 } from '../../../geometry/frame.ts';
import type { ViewContext } from '../context.ts';
import { limb, sheet, type Solid } from '../mesh.ts';
import { cornersOf } from './counted.ts';
import { listenerOutlines, type ListenerOutlines } from './listener.ts';
import { depthOf, scaleAt } from '../camera.ts';

/** What of the house is before an eye in it: rails, and people when the concert counts their heads. */
export function houseFromSeat(context: ViewContext): Solid[] {
  if (!concertOf(context.document).headsInFront) return rails(context);
  return [
    ...rails(context),
    ...(context.show === 'counted' ? countedHeads(context) : peopleInFront(context)),
  ];
}

/** The house as a player sees it: steps of the rows, rails, and somebody on every seat. */
export function houseFromStage(context: ViewContext): Solid[] {
  return [...steps(context), ...rails(context), ...listeners(context)];
}

function rails({ document, tints }: ViewContext): Solid[] {
  return railOccluders(document).map((rail) => ({
    subject: rail.record,
    parts: [sheet(cornersOf(rail), { fill: tints.column })],
  }));
}

/** Each head as round as the sight check counts it. */
function countedHeads(context: ViewContext): Solid[] {
  const { document, tints } = context;
  return headOccluders(document)
    .filter(({ x, y, z1, r }) => isLarge(context, { x, y, z: z1 }, r))
    .map(({ record, x, y, z0, z1, r }) => ({
      subject: record,
      parts: [limb({ x, y, z: z0 }, { x, y, z: z1 }, r, tints.listenerHead)],
    }));
}

/** The people in the rows before an eye. Of them the sight check counts the heads only. */
function peopleInFront(context: ViewContext): Solid[] {
  const { document, tints } = context;
  const places = new Map(housePlaces(document).map((place) => [`head:${place.id}`, place]));
  return headOccluders(document).flatMap(({ id, record, x, y, z1, r }) => {
    const place = places.get(id);
    if (!place || !isLarge(context, { x, y, z: z1 }, r)) return [];
    const foot = { x, y, z: place.eyeZ };
    const { head, body } = outlinesFor(context, foot, place);
    return {
      subject: record,
      parts: [
        { kind: 'cutOut', foot, outline: body, fill: tints.listener },
        { kind: 'cutOut', foot, outline: head, fill: tints.listenerHead },
      ],
    };
  });
}

/** Heads that would come out smaller than this, mm of paper in radius, are left out. */
const LEAST_HEAD = 0.12;

function isLarge({ camera }: ViewContext, at: Vec3, radius: number): boolean {
  return depthOf(camera, at) > 0 && radius * scaleAt(camera, at) > LEAST_HEAD;
}

/** Somebody on every seat, as who looks from the stage sees him. */
function listeners(context: ViewContext): Solid[] {
  const { tints, document } = context;
  return housePlaces(document).flatMap((place) => {
    const foot = { x: place.x, y: place.y, z: place.eyeZ };
    if (!isTaken(document, place) || !isLarge(context, foot, HEAD)) return [];
    const { head, body } = outlinesFor(context, foot, place);
    return {
      subject: place.record,
      parts: [
        { kind: 'cutOut', foot, outline: body, fill: tints.listener },
        { kind: 'cutOut', foot, outline: head, fill: tints.listenerHead },
      ],
      quiet: true,
    };
  });
}

/** Somebody is taken to sit on every seat and at every place for a wheelchair. */
function isTaken(document: Document, { record }: HousePlace): boolean {
  const kept = document.records.get(record);
  return kept?.kind === 'seatBlock' || (kept?.kind === 'place' && kept.use === 'wheelchair');
}

/** A head larger than this on paper, mm in radius, has a fine outline. */
const LARGE_HEAD = 3;
const HEAD = 85;

function outlinesFor({ camera }: ViewContext, foot: Vec3, { eyeZ, floorZ }: HousePlace): ListenerOutlines {
  return listenerOutlines(eyeZ - floorZ, HEAD * scaleAt(camera, foot) > LARGE_HEAD);
}

/** A row's front edge lies so far before its eyes. Common practice, no source. */
const STEP_AHEAD = 450;
/** The front of a balcony's floor, downwards. Common practice, no source. */
const FASCIA = 500;

function steps(context: ViewContext): Solid[] {
  const houseFloor = -platformOf(context.document).height;
  const places = housePlaces(context.document);
  return allOf(context.document, 'seatBlock').flatMap((block) =>
    rowsOf(block, places).flatMap((row, index) => {
      const [first, last] = [row[0], row.at(-1)];
      if (!first || !last) return [];
      const top = first.floorZ;
      const bottom = index > 0 ? top - block.riser : Math.max(houseFloor, top - FASCIA);
      return top - bottom < 1 ? [] : [step(context, block, row, [bottom, top])];
    }),
  );
}

function rowsOf(block: SeatBlock, places: readonly HousePlace[]): HousePlace[][] {
  const rows: HousePlace[][] = Array.from({ length: block.rows }, () => []);
  for (const place of places) if (place.record === block.id) rows[place.row]?.push(place);
  return rows;
}

function step(
  { tints }: ViewContext,
  block: SeatBlock,
  row: readonly HousePlace[],
  [bottom, top]: readonly [number, number],
): Solid {
  const shown = block.curveRadius === 0 ? [row[0], row.at(-1)] : row;
  const edge = shown.flatMap((place) => (place ? [ahead(place)] : []));
  const parts = edge.slice(1).flatMap((b, index) => {
    const a = edge[index];
    if (!a) return [];
    return sheet(
      [
        { ...a, z: bottom },
        { ...b, z: bottom },
        { ...b, z: top },
        { ...a, z: top },
      ],
      { fill: tints.houseFloor },
    );
  });
  return { subject: block.id, parts, quiet: true };
}

function ahead({ x, y, facing }: HousePlace): { x: number; y: number } {
  const look = facingVector(facing);
  return { x: x + look.x * STEP_AHEAD, y: y + look.y * STEP_AHEAD };
}
