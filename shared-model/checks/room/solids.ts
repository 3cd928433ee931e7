/** What takes up room: outlines on plan with the heights between which they are solid. */

import { chairOutline, outlineOf } from '../../catalogue/outlines.ts';
import { largeInstrumentModel } from '../../catalogue/large-instruments.ts';
import { bodies } from '../../catalogue/people.ts';
import { pianoModel, USUAL_PIANO } from '../../catalogue/pianos.ts';
import { circle } from '../../catalogue/shapes.ts';
import { standModel, USUAL_STAND } from '../../catalogue/stands.ts';
import { desksOf, type Rectangle3 } from '../../document/desks.ts';
import { floorHeightOn } from '../../document/levels.ts';
import type { PlacedRecord, Player, Point, Riser, Stand } from '../../document/records.ts';
import type { LocalBox } from '../../catalogue/boxes.ts';
import type { Polygon } from '../../geometry/polygon.ts';

/**
 * `foot`: spread legs, between which other legs may stand. `pole`: what of a stand is in the way of everything.
 * `whole`: an item that is one thing.
 */
export type Part = 'body' | 'chair' | 'foot' | 'pole' | 'whole';

export interface Solid {
  readonly record: PlacedRecord;
  readonly part: Part;
  readonly outline: Polygon;
  /** Heights above the platform's floor. */
  readonly low: number;
  readonly high: number;
}

/** A tilted board: a desk, or the paper on it. */
export interface Board {
  readonly record: Stand;
  readonly corners: Rectangle3;
}

/** Legs of stands are this high at their outer ends. Common practice, no source. */
const FOOT_HEIGHT = 150;
/** A lamp, a tray or a desk up to here is not a large instrument: height of one the catalogue does not know. */
const USUAL_HEIGHT = 1000;

export function solidsOf(record: PlacedRecord, risers: readonly Riser[]): Solid[] {
  const floor = floorUnder(record, risers);
  const whole = (high: number, low = 0): Solid[] => [
    { record, part: 'whole', outline: outlineOf(record), low: floor + low, high: floor + high },
  ];
  switch (record.kind) {
    case 'player':
      return playerSolids(record, floor);
    case 'stand':
      return standSolids(record, floor);
    case 'piano': {
      const { height, boxes } = pianoModel(record.model) ?? USUAL_PIANO;
      return whole(height, undersideOf(boxes));
    }
    case 'largeInstrument': {
      const model = largeInstrumentModel(record.model);
      return model ? whole(model.height, undersideOf(model.boxes)) : whole(USUAL_HEIGHT);
    }
    default:
      return whole(record.height);
  }
}

export function boardsOf(record: PlacedRecord, risers: readonly Riser[]): Board[] {
  if (record.kind !== 'stand') return [];
  return desksOf(record, floorUnder(record, risers)).flatMap(({ board, paper }) =>
    (paper ? [board, paper] : [board]).map((corners) => ({ record, corners })),
  );
}

/** Levels and parts of the building stand on the platform itself; everything else on the highest level under it. */
export function floorUnder(record: PlacedRecord, risers: readonly Riser[]): number {
  const onTheFloor = record.kind === 'riser' || (record.kind === 'shape' && record.fixed);
  return onTheFloor ? 0 : floorHeightOn(risers, record);
}

function playerSolids(player: Player, floor: number): Solid[] {
  const { crown } = bodies(player.person, player.chair?.height ?? null).tall;
  const body = {
    record: player,
    part: 'body',
    outline: outlineOf(player),
    low: floor,
    high: floor + crown,
  } as const;
  const chair = chairOutline(player);
  if (!chair || !player.chair) return [body];
  return [
    body,
    { record: player, part: 'chair', outline: chair, low: floor, high: floor + player.chair.height },
  ];
}

function standSolids(stand: Stand, floor: number): Solid[] {
  const { baseRadius } = standModel(stand.model) ?? USUAL_STAND;
  const part = (part: Part, middle: Point, radius: number, height: number): Solid => ({
    record: stand,
    part,
    outline: circle(middle, radius),
    low: floor,
    high: floor + height,
  });
  return feetOf(stand).flatMap((middle) => [
    part('foot', middle, baseRadius, FOOT_HEIGHT),
    // Two stands' legs interleave until a leg of the one meets the pole of the other: half a radius each.
    part('pole', middle, baseRadius / 2, stand.lip),
  ]);
}

/** A foot stands under the middle of each desk. */
function feetOf(stand: Stand): Point[] {
  return desksOf(stand).map(({ board: [a, , c] }) => ({ x: (a.x + c.x) / 2, y: (a.y + c.y) / 2 }));
}

function undersideOf(boxes: readonly LocalBox[]): number {
  return boxes.reduce((low, box) => Math.min(low, box.bottom), boxes[0]?.bottom ?? 0);
}
