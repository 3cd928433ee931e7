/**
 * Where the head of each pin stands: close to its spot, and if there is room anywhere about it on no word of the plan
 * and on no other head, so that both can be read.
 */

import { boxContains, overlapArea } from '#model/drawing/bounds.ts';
import { createOccupancy, type Occupancy } from '#model/drawing/occupancy.ts';
import type { Box } from '#model/drawing/primitives.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { toScreen, visibleExtent, type Camera, type Extent, type ViewSize } from './camera.ts';
import { hangs, isSmallAt, PIN, type Pin } from './pins.ts';

/** A pin that may have others gathered under it. */
export interface Headed extends Pin {
  readonly chosen: boolean;
  readonly more: number;
}

/** One whose head stands somewhere: in pixels from its spot, y down. */
export type Standing = Pick<Headed, 'more'> & { readonly head: Vec2 };

export interface PinSurroundings {
  readonly camera: Camera;
  readonly view: ViewSize;
  /** Where something is written on the plan, and where something stands, in mm of the stage. */
  readonly words: readonly Extent[];
  readonly things: readonly Extent[];
}

/** Half the size of a pin's head here, in pixels. */
export function headSize({ chosen }: Pick<Headed, 'chosen'>, scale: number): number {
  return chosen ? PIN.chosen : isSmallAt(scale) ? PIN.small : PIN.usual;
}

/** The pins, each with its head's place: in pixels from the spot, y down. The first choose first. */
export function withHeads<P extends Headed>(
  pins: readonly P[],
  around: PinSurroundings,
): (P & { readonly head: Vec2 })[] {
  const room: Room = {
    words: createOccupancy(inView(around.words, around)),
    things: createOccupancy(inView(around.things, around)),
    view: around.view,
  };
  return pins.map((pin) => {
    const spot = toScreen(around.camera, around.view, pin.where);
    const size = headSize(pin, around.camera.scale);
    const head = bestPlace(pin, { spot, size }, room);
    room.words.take(headBox({ ...pin, head }, size, spot));
    return { ...pin, head };
  });
}

/** What a head of that half size covers with its slip, which stands on the side away from the spot; in pixels. */
export function headBox({ more, head }: Standing, size: number, spot: Vec2): Box {
  const slip = more > 0 && size > PIN.small ? SLIP + DIGIT * String(more).length : 0;
  const [half, up] = [size + HALO, size * 1.2 + HALO];
  const left = spot.x + head.x - half - (hasSlipLeft({ head }) ? slip : 0);
  return { x: left, y: spot.y + head.y - up, width: 2 * half + slip, height: up + half };
}

/** Whether what is gathered under a pin is counted on the left of its head. */
export function hasSlipLeft({ head }: Pick<Standing, 'head'>): boolean {
  return head.x < 0;
}

/** Paper round a head; what "+" takes beside it, and each figure after it. Pixels. */
const [HALO, SLIP, DIGIT] = [2, 12, 7];

/** As boxes on the screen; what lies elsewhere is in nobody's way. */
function inView(boxes: readonly Extent[], { camera, view }: PinSurroundings): Box[] {
  const seen = visibleExtent(camera, view);
  return boxes
    .filter((box) => overlapArea(box, seen) > 0)
    .map((box) => {
      const { x, y } = toScreen(camera, view, { x: box.x, y: box.y + box.height });
      return { x, y, width: box.width * camera.scale, height: box.height * camera.scale };
    });
}

/** What must be read and what is better seen. */
interface Room {
  readonly words: Occupancy;
  readonly things: Occupancy;
  readonly view: ViewSize;
}

interface Seat {
  readonly spot: Vec2;
  readonly size: number;
}

function bestPlace(pin: Headed, { spot, size }: Seat, { words, things, view }: Room): Vec2 {
  const sheet = { x: 0, y: 0, ...view };
  let best: { readonly head: Vec2; readonly cost: number } | null = null;
  for (const { across, down, cost: far } of hangs(pin) ? HANGING : STANDING) {
    if (best && best.cost <= far) break;
    const head = { x: across * size, y: down * size };
    const box = headBox({ ...pin, head }, size, spot);
    const off = boxContains(sheet, box) ? 0 : COST.offTheSheet;
    const cost = far + off + words.coveredArea(box) * COST.word + things.coveredArea(box) * COST.thing;
    if (cost < (best?.cost ?? Infinity)) best = { head, cost };
  }
  return best?.head ?? { x: 0, y: 0 };
}

/** Of a square pixel of words or of things covered, and of running off the edge of the view. */
const COST = { word: 6, thing: 0.12, offTheSheet: 600 };

/** From the spot to the head, in half sizes of it. */
interface Way {
  readonly across: number;
  readonly down: number;
  /** What it costs not to stand in the usual place, as above. */
  readonly cost: number;
}

const SIDEWAYS: readonly Way[] = [
  { across: 1.4, down: -2.4, cost: 0 },
  { across: -1.4, down: -2.4, cost: 12 },
  { across: 2.7, down: -0.9, cost: 16 },
  { across: -2.7, down: -0.9, cost: 18 },
];
const turnedOver = ({ across, down, cost }: Way): Way => ({ across, down: -down, cost: cost + 20 });
const farther = (ways: readonly Way[], by: number, cost: number): Way[] =>
  ways.map((way) => ({ across: way.across * by, down: way.down * by, cost: way.cost + cost }));

/** All ways, the cheapest first. */
function allWays(near: readonly Way[]): readonly Way[] {
  const ways = [...near, ...farther(near, 1.6, 60), ...farther(near, 2.3, 130), ...farther(near, 3.2, 220)];
  return ways.toSorted((a, b) => a.cost - b.cost);
}

const STANDING = allWays([...SIDEWAYS, ...SIDEWAYS.map(turnedOver)]);
const HANGING = STANDING.map(({ across, down, cost }) => ({ across, down: -down, cost }));
