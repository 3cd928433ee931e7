/** The plan outline of everything that is set on the platform, in the stage frame. */

import { convexHull } from '../geometry/convex-hull.ts';
import { placed } from '../geometry/frame.ts';
import { desksOf } from '../document/desks.ts';
import type { PlacedRecord, Player, Point, Seat, Stand } from '../document/records.ts';
import { USUAL_FOOT_RADIUS, instrumentStandModel } from './instrument-stands.ts';
import { largeInstrumentModel, USUAL_OUTLINE } from './large-instruments.ts';
import { bodies } from './people.ts';
import { pianoModel, USUAL_PIANO } from './pianos.ts';
import { seatModel, USUAL_SEAT } from './seats.ts';
import { circle, ellipse, rectangle } from './shapes.ts';
import { standModel, USUAL_STAND } from './stands.ts';

/** Chest to back with clothes. Common practice, no source. */
export const BODY_DEPTH = 300;
/** Foot of a floor lamp or of a lamp on a stand. Common practice, no source. */
const LAMP_FOOT_RADIUS = 150;

/**
 * Corners of the room a record takes on plan, a simple ring in the stage frame, mm.
 *
 * Player: shoulders by body depth (the tall end when anyone may play; without his chair, see `chairOutline`). Stand:
 * the hull of its foot and its desks, paper not counted. A model the catalogue does not know is taken for the usual one.
 */
export function outlineOf(record: PlacedRecord): Point[] {
  if (record.kind === 'stand') return standOutline(record);
  return localOutline(record).map((corner) => placed(record, corner));
}

/** The chair a player sits on, at his spot; null when he stands. */
export function chairOutline(player: Player): Point[] | null {
  return player.chair && seatOutline(player.chair.model).map((corner) => placed(player, corner));
}

function localOutline(record: Exclude<PlacedRecord, Stand>): readonly Point[] {
  switch (record.kind) {
    case 'player':
      return shouldersOf(record);
    case 'instrumentStand':
      return footOf(instrumentStandModel(record.model)?.footRadius ?? USUAL_FOOT_RADIUS);
    case 'table':
    case 'riser':
      return rectangle(record.width, record.depth);
    case 'seat':
      return seatOutline(record.model);
    case 'piano':
      return (pianoModel(record.model) ?? USUAL_PIANO).outline;
    case 'largeInstrument':
      return largeInstrumentModel(record.model)?.outline ?? USUAL_OUTLINE;
    case 'lamp':
      return footOf(LAMP_FOOT_RADIUS);
    case 'shape':
      return record.outline;
  }
}

const HERE: Point = { x: 0, y: 0 };

const footOf = (radius: number): Point[] => circle(HERE, radius);

function shouldersOf(player: Player): Point[] {
  const { tall } = bodies(player.person, player.chair?.height ?? null);
  return ellipse(HERE, tall.shoulderBreadth / 2, BODY_DEPTH / 2);
}

function seatOutline(model: Seat['model']): readonly Point[] {
  const { width, depth, round, outline } = seatModel(model) ?? USUAL_SEAT;
  if (outline) return outline;
  return round ? ellipse(HERE, width / 2, depth / 2) : rectangle(width, depth);
}

function standOutline(stand: Stand): Point[] {
  const { baseRadius } = standModel(stand.model) ?? USUAL_STAND;
  const boards = desksOf(stand).flatMap((desk) => desk.board.map(({ x, y }) => ({ x, y })));
  return convexHull([...footSpots(stand).flatMap((spot) => circle(spot, baseRadius)), ...boards]);
}

/** A foot stands under the middle of each desk. */
function footSpots(stand: Stand): Point[] {
  return desksOf(stand).map(({ board: [a, , c] }) => ({ x: (a.x + c.x) / 2, y: (a.y + c.y) / 2 }));
}
