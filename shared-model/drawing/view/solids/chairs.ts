/** What people sit on. */

import { seatModel, USUAL_SEAT, WHEELCHAIR } from '../../../catalogue/seats.ts';
import { ellipse, rectangle } from '../../../catalogue/shapes.ts';
import type { Chair, Seat } from '../../../document/records.ts';
import { floorUnder, placeOn, type ViewContext } from '../context.ts';
import { allOver, limb, prism, type Part, type Place, type Solid } from '../mesh.ts';

export function seatSolid(context: ViewContext, seat: Seat): Solid {
  const place = placeOn(seat, floorUnder(context, seat));
  return { subject: seat.id, parts: chairParts(context, seat, place) };
}

const THICKNESS = 45;
/** Height of a back over the seat: from and to. Common practice, no source. */
const BACK = [130, 400] as const;

export function chairParts(
  { tints }: ViewContext,
  chair: Pick<Chair, 'model' | 'height'>,
  place: Place,
): Part[] {
  const { width, depth, round, back } = seatModel(chair.model) ?? USUAL_SEAT;
  const { height } = chair;
  if (chair.model === WHEELCHAIR.id) return wheelchairParts(tints, height, place);
  const outline = round ? ellipse({ x: 0, y: 0 }, width / 2, depth / 2) : rectangle(width, depth);
  const [x, y] = round ? [width * 0.3, depth * 0.3] : [width / 2 - 25, depth / 2 - 25];
  const legs = [
    [x, y],
    [-x, y],
    [-x, -y],
    [x, -y],
  ].map(([lx = 0, ly = 0]) =>
    limb(place(lx, ly, height - THICKNESS), place(lx, ly, 0), 11, tints.chairFrame),
  );
  return [
    ...legs,
    prism(outline, [height - THICKNESS, height], place, allOver(tints.seat)),
    ...(back ? backParts(tints, { width, depth, height }, place) : []),
  ];
}

interface Size {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
}

function backParts(tints: ViewContext['tints'], { width, depth, height }: Size, place: Place): Part[] {
  const [from, to] = BACK;
  const y = depth / 2;
  const board = [
    { x: -width / 2, y: y - 30 },
    { x: width / 2, y: y - 30 },
    { x: width / 2, y },
    { x: -width / 2, y },
  ];
  const posts = [1, -1].map((side) => {
    const x = side * (width / 2 - 30);
    return limb(place(x, y - 15, height - THICKNESS), place(x, y - 15, height + from), 11, tints.chairFrame);
  });
  return [...posts, prism(board, [height + from, height + to], place, allOver(tints.seat))];
}

/** Seat and wheels of a wheelchair as drawn: wheels of 24 in, the seat between them. Common practice, no source. */
const WHEEL = { radius: 305, x: WHEELCHAIR.width / 2 - 15, y: 90, spokes: 16 } as const;
const CUSHION = { width: 430, depth: 430 } as const;

/** A seat with a back between two large wheels, and rests for the feet. */
function wheelchairParts(tints: ViewContext['tints'], height: number, place: Place): Part[] {
  const { width, depth } = CUSHION;
  const feet = [1, -1].map((side) => {
    const x = side * 120;
    return limb(place(x, -depth / 2, height - THICKNESS), place(x, -560, 120), 11, tints.chairFrame);
  });
  return [
    ...[1, -1].flatMap((side) => wheelParts(tints, side, place)),
    ...feet,
    prism(rectangle(width, depth), [height - THICKNESS, height], place, allOver(tints.seat)),
    ...backParts(tints, { width, depth, height }, place),
  ];
}

function wheelParts(tints: ViewContext['tints'], side: number, place: Place): Part[] {
  const { radius, x, y, spokes } = WHEEL;
  const at = (spoke: number) => {
    const angle = (2 * Math.PI * spoke) / spokes;
    return place(side * x, y + radius * Math.cos(angle), radius + radius * Math.sin(angle));
  };
  return Array.from({ length: spokes }, (_, spoke) => limb(at(spoke), at(spoke + 1), 13, tints.chairFrame));
}
