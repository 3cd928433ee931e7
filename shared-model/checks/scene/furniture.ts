/** Desks, tables, instruments on the floor, pianos, risers and free shapes as occluders. */

import { instrumentModel } from '../../catalogue/instruments.ts';
import { largeInstrumentModel } from '../../catalogue/large-instruments.ts';
import type { LocalBox } from '../../catalogue/boxes.ts';
import { lidQuads, pianoModel, USUAL_PIANO, type LocalQuad } from '../../catalogue/pianos.ts';
import { desksOf, type Rectangle3 } from '../../document/desks.ts';
import type {
  Instrument,
  InstrumentStand,
  LargeInstrument,
  Millimetres,
  Piano,
  PlacedRecord,
  Point,
  Riser,
  Shape,
  Stand,
  Table,
} from '../../document/records.ts';
import { placed, type Vec3 } from '../../geometry/frame.ts';
import type { BoxOccluder, QuadOccluder, Triple } from '../scene.ts';

/** Boards and paper, one quadrilateral each; their union is what hides. The thin column under them is left out. */
export function standOccluders(stand: Stand, floor: Millimetres): QuadOccluder[] {
  return desksOf(stand, floor).flatMap(({ sideIndex, board, paper }) => {
    const part = (name: string, corners: Rectangle3): QuadOccluder =>
      quad(stand.id, `${name}-${sideIndex + 1}`, corners);
    return paper ? [part('desk', board), part('paper', paper)] : [part('desk', board)];
  });
}

/** Closed down to the floor: what hangs or lies under a table top is not known. */
export function tableOccluder(table: Table, floor: Millimetres): BoxOccluder {
  return blockOf(table, floor);
}

export function riserOccluder(riser: Riser): BoxOccluder {
  return blockOf(riser, 0);
}

export function largeInstrumentOccluders(item: LargeInstrument, floor: Millimetres): BoxOccluder[] {
  return boxesOf(item, largeInstrumentModel(item.model)?.boxes ?? [], floor);
}

/** A large instrument that waits: upright on the stand or table that keeps it, which is what to move. */
export function waitingOccluder(
  instrument: Instrument,
  support: InstrumentStand | Table,
  floor: Millimetres,
): BoxOccluder[] {
  const held = instrumentModel(instrument.model)?.held;
  if (!held) return [];
  const bottom = support.kind === 'table' ? support.height : 0;
  const upright = { ...held, x: 0, y: 0, bottom, top: bottom + held.top - held.bottom };
  return boxesOf(support, [upright], floor).map((box) => ({ ...box, id: `${instrument.id}:waiting` }));
}

/** The case as boxes, the open lid and the music desk as quadrilaterals. */
export function pianoOccluders(piano: Piano, floor: Millimetres): (BoxOccluder | QuadOccluder)[] {
  const model = pianoModel(piano.model) ?? USUAL_PIANO;
  const lid = lidQuads(model, piano.lid).map((part, index) =>
    localQuad(piano, `lid-${index + 1}`, part, floor),
  );
  return [
    ...boxesOf(piano, model.boxes, floor),
    ...lid,
    localQuad(piano, 'music-desk', model.musicDesk, floor),
  ];
}

/**
 * The walls of a prism that stands on a floor. They are enough: a line from outside that enters through the top has to
 * leave through a wall, because it cannot leave through the floor.
 */
export function shapeOccluders(shape: Shape, bottom: Millimetres, top: Millimetres): QuadOccluder[] {
  const corners = shape.outline.map((corner) => placed(shape, corner));
  return wallsOf(shape.id, corners, [bottom, top]);
}

/** One upright quadrilateral for each edge of a ring. */
export function wallsOf(
  record: string,
  ring: readonly Point[],
  [bottom, top]: readonly [Millimetres, Millimetres],
): QuadOccluder[] {
  return ring.map((a, index) => {
    const b = ring[(index + 1) % ring.length] ?? a;
    return upright(record, `wall-${index + 1}`, [a, b], [bottom, top]);
  });
}

export function upright(
  record: string,
  part: string,
  [a, b]: readonly [Point, Point],
  [bottom, top]: readonly [Millimetres, Millimetres],
): QuadOccluder {
  return quad(record, part, [
    { ...pointOf(a), z: bottom },
    { ...pointOf(b), z: bottom },
    { ...pointOf(b), z: top },
    { ...pointOf(a), z: top },
  ]);
}

const pointOf = ({ x, y }: Point): Point => ({ x, y });

function quad(record: string, part: string, corners: readonly [Vec3, Vec3, Vec3, Vec3]): QuadOccluder {
  const [a, b, c, d] = corners;
  const triple = ({ x, y, z }: Vec3): Triple => [x, y, z];
  return {
    id: `${record}:${part}`,
    record,
    kind: 'quad',
    corners: [triple(a), triple(b), triple(c), triple(d)],
  };
}

function localQuad(item: PlacedRecord, part: string, corners: LocalQuad, floor: Millimetres): QuadOccluder {
  const lift = (corner: Vec3): Vec3 => ({ ...placed(item, corner), z: floor + corner.z });
  const [a, b, c, d] = corners;
  return quad(item.id, part, [lift(a), lift(b), lift(c), lift(d)]);
}

function boxesOf(item: PlacedRecord, boxes: readonly LocalBox[], floor: Millimetres): BoxOccluder[] {
  return boxes.map((box, index) => {
    const { x, y } = placed(item, box);
    return {
      id: `${item.id}:body-${index + 1}`,
      record: item.id,
      kind: 'box',
      center: [x, y, floor + (box.bottom + box.top) / 2],
      size: [box.width, box.depth, box.top - box.bottom],
      yaw: item.facing,
    };
  });
}

function blockOf(item: Table | Riser, floor: Millimetres): BoxOccluder {
  const { x, y, width, depth, height } = item;
  return {
    id: `${item.id}:body-1`,
    record: item.id,
    kind: 'box',
    center: [x, y, floor + height / 2],
    size: [width, depth, height],
    yaw: item.facing,
  };
}
