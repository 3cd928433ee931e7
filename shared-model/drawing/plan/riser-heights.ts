/** The height of every riser, written where nothing that stands on it hides it. */

import { formatBare } from '../../document/measures.ts';
import type { Point, Riser } from '../../document/records.ts';
import { placed } from '../../geometry/frame.ts';
import { boxesOverlap, textPieces } from '../bounds.ts';
import type { Occupancy } from '../occupancy.ts';
import type { GroupPrimitive, TextPrimitive } from '../primitives.ts';
import { CAP_HEIGHT, TEXT } from '../style.ts';
import { textLine } from '../text.ts';
import { onPage, type PlanContext } from './context.ts';
import { centreLineBox } from './datum.ts';

export interface HeightRoom {
  /** Texts: heights never overlap them. Grows by the heights. */
  readonly texts: Occupancy;
  /** What stands on the stage; heights keep off it as long as there is free ground. */
  readonly things: Occupancy;
}

/** "+200" in a corner of each riser, or along its edges; beside it where things and marks fill all of it. */
export function drawRiserHeights(context: PlanContext, room: HeightRoom): GroupPrimitive[] {
  if (!context.layers.words) return [];
  return context.risers.flatMap((riser) => {
    const text = placeHeight(context, riser, room);
    if (!text) return [];
    for (const piece of textPieces(text, context.measure)) room.texts.take(piece);
    return [{ kind: 'group', subject: riser.id, children: [text] } as const];
  });
}

function placeHeight(
  context: PlanContext,
  riser: Riser,
  { texts, things }: HeightRoom,
): TextPrimitive | null {
  const free = spots(context, riser).filter((text) =>
    textPieces(text, context.measure).every((piece) => !texts.isTaken(piece)),
  );
  const centre = centreLineBox(context);
  const clear = free.find((text) =>
    textPieces(text, context.measure).every(
      (piece) => !things.isTaken(piece) && !boxesOverlap(piece, centre),
    ),
  );
  return clear ?? free[0] ?? null;
}

/** Between the letters and the riser's edge, mm on paper. */
const PAD = 1.1;
/** Where along its edge a height is tried, from one corner to the other. */
const ALONG = [-1, 1, -0.85, 0.85, -0.7, 0.7, -0.5, 0.5, -0.25, 0.25, 0] as const;

/** Inside along the edge nearest to the house, the one behind, and the sides; then outside. */
function spots(context: PlanContext, riser: Riser): TextPrimitive[] {
  const words = `+${formatBare(riser.height, context.units)}`;
  const half = {
    x: (context.measure(words, TEXT.small, 'regular') / 2) * context.scale,
    y: ((CAP_HEIGHT * TEXT.small) / 2) * context.scale,
  };
  const pad = PAD * context.scale;
  const [x, y] = [riser.width / 2 - half.x - pad, riser.depth / 2 - half.y - pad];
  const rows = [-y, y, 0, -y / 2, y / 2];
  const inside =
    x < 0 || y < 0 ? [] : rows.flatMap((row) => ALONG.map((share) => ({ x: share * x, y: row })));
  const [outX, outY] = [riser.width / 2 + half.x + pad, riser.depth / 2 + half.y + pad];
  const outside = [
    ...ALONG.flatMap((share) => [
      { x: share * Math.max(x, 0), y: -outY },
      { x: share * Math.max(x, 0), y: outY },
    ]),
    ...[-1, 1, 0].flatMap((share) => [
      { x: outX, y: share * Math.max(y, 0) },
      { x: -outX, y: share * Math.max(y, 0) },
    ]),
  ];
  return [...inside, ...outside].map((spot) => heightAt(context, riser, { words, spot }));
}

interface HeightWords {
  readonly words: string;
  /** The letters' middle, in the riser's own frame. */
  readonly spot: Point;
}

/** Turned with the riser, but never upside down. */
function heightAt(context: PlanContext, riser: Riser, { words, spot }: HeightWords): TextPrimitive {
  const turn = upright(-riser.facing);
  const middle = onPage(context, placed(riser, spot));
  const drop = (CAP_HEIGHT * TEXT.small) / 2;
  const angle = (turn * Math.PI) / 180;
  const at = { x: middle.x - Math.sin(angle) * drop, y: middle.y + Math.cos(angle) * drop };
  const look = { size: TEXT.small, weight: 'regular', anchor: 'middle', turn } as const;
  return textLine(words, at, { ...look, colour: context.palette.faint });
}

/** The same turn within a quarter to either side, so that letters stay readable. */
function upright(angle: number): number {
  const turned = (((angle % 360) + 540) % 360) - 180;
  if (turned > 90) return turned - 180;
  return turned <= -90 ? turned + 180 : turned;
}
