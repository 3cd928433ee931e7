/** A setup as a scene in plain numbers: eye points, windows and everything that can stand in between. */

import { belongsTo, concertOf, find, inSetup, platformOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightOn } from '../../document/levels.ts';
import type { Millimetres, Point, Shape } from '../../document/records.ts';
import { pointInPolygon } from '../../geometry/polygon.ts';
import type { Occluder, Scene } from '../scene.ts';
import {
  largeInstrumentOccluders,
  pianoOccluders,
  riserOccluder,
  shapeOccluders,
  standOccluders,
  tableOccluder,
  waitingOccluder,
} from './furniture.ts';
import { headOccluders, platformOccluders, railOccluders, seatPoints } from './house.ts';
import { bodyOccluders, targetOf, type PlayerOnFloor } from './people.ts';

/**
 * Order is fixed (places by block and row, items by kind and natural id order), so equal documents give equal scenes.
 * Left out because they are slender: lamps, the columns of stands, empty chairs, and most instruments on their pegs.
 */
export function buildScene(document: Document, setup: Id<'setup'>): Scene {
  const players = playersOnFloor(document, setup);
  return {
    seats: seatPoints(document),
    targets: players.map(targetOf),
    occluders: [
      ...itemOccluders(document, setup),
      ...players.flatMap(bodyOccluders),
      ...platformOccluders(document),
      ...railOccluders(document),
      ...(concertOf(document).headsInFront ? headOccluders(document) : []),
    ],
  };
}

function playersOnFloor(document: Document, setup: Id<'setup'>): PlayerOnFloor[] {
  const risers = inSetup(document, setup, 'riser');
  const held = inSetup(document, setup, 'instrument').filter(({ support }) => support === null);
  return inSetup(document, setup, 'player').map((player) => ({
    player,
    floor: floorHeightOn(risers, player),
    held: held.filter((instrument) => instrument.player === player.id),
  }));
}

function itemOccluders(document: Document, setup: Id<'setup'>): Occluder[] {
  const risers = inSetup(document, setup, 'riser');
  const floorAt = (point: Point): Millimetres => floorHeightOn(risers, point);
  return [
    ...inSetup(document, setup, 'stand').flatMap((stand) => standOccluders(stand, floorAt(stand))),
    ...inSetup(document, setup, 'table').map((table) => tableOccluder(table, floorAt(table))),
    ...inSetup(document, setup, 'piano').flatMap((piano) => pianoOccluders(piano, floorAt(piano))),
    ...inSetup(document, setup, 'largeInstrument').flatMap((item) =>
      largeInstrumentOccluders(item, floorAt(item)),
    ),
    ...inSetup(document, setup, 'instrument').flatMap((instrument) => {
      const support = find(document, instrument.support);
      return support && belongsTo(support, setup)
        ? waitingOccluder(instrument, support, floorAt(support))
        : [];
    }),
    ...risers.map(riserOccluder),
    ...inSetup(document, setup, 'shape').flatMap((shape) => shapeOnItsFloor(document, shape, floorAt)),
  ];
}

/** Heights count from the platform's floor; what stands beside the platform goes down to the house floor. */
function shapeOnItsFloor(
  document: Document,
  shape: Shape,
  floorAt: (point: Point) => Millimetres,
): Occluder[] {
  const platform = platformOf(document);
  if (!pointInPolygon(shape, platform.outline)) return shapeOccluders(shape, -platform.height, shape.height);
  const floor = floorAt(shape);
  return shapeOccluders(shape, floor, floor + shape.height);
}
