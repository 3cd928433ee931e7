/** A few words laid over the margin of a page, on white so that they can be read. */

import { rectangle } from '../outline.ts';
import type { Primitive, TextPrimitive } from '../primitives.ts';
import { grouped, type TextTools } from '../sheet/blocks.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, LEADING, WEIGHT } from '../style.ts';
import { fitted, textLine, type Type } from '../text.ts';

/** From the edge of the panel: what most printers leave white (common practice, no source). */
export const CLEAR = 4.5;

/** Room in the middle of an edge for the words about taping. */
export const BAND = { middle: 62 } as const;

export interface NoteSpot {
  /** The anchor, and the lowest edge of the words. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly anchor: TextPrimitive['anchor'];
  readonly framed?: boolean;
  /** Degrees about (x, y); the words then run along an upright edge. */
  readonly turn?: 90 | -90;
}

const PAD = 0.8;

/** Each line is cut to the width. */
export function note(
  lines: readonly string[],
  spot: NoteSpot,
  type: Type,
  { palette, measure }: TextTools,
): Primitive {
  const shown = lines.map((words) => fitted(words, spot.width, type, measure));
  const width = shown.reduce((most, words) => Math.max(most, measure(words, type.size, type.weight)), 0);
  const height = type.size * (CAP_HEIGHT + DESCENT + LEADING * (shown.length - 1));
  const baseline = spot.y - type.size * DESCENT;
  const look = { ...type, colour: palette.ink, anchor: spot.anchor };
  const ground = {
    x: spot.x - PAD - (spot.anchor === 'start' ? 0 : spot.anchor === 'end' ? width : width / 2),
    y: spot.y - height - PAD / 2,
    width: width + 2 * PAD,
    height: height + PAD,
  };
  const frame = spot.framed ? { stroke: { colour: palette.ink, width: WEIGHT.fine } } : {};
  const texts = shown.map((words, index) =>
    textLine(words, { x: spot.x, y: baseline - type.size * LEADING * (shown.length - 1 - index) }, look),
  );
  return grouped('paragraph', [
    { kind: 'path', path: rectangle(ground), fill: palette.paper, ...frame },
    ...texts,
  ]);
}

/** One line along an upright edge, its middle at the spot. */
export function uprightNote(
  words: string,
  spot: NoteSpot,
  type: Type,
  { palette, measure }: TextTools,
): Primitive {
  const shown = fitted(words, spot.width, type, measure);
  const [length, height] = [measure(shown, type.size, type.weight) + 2 * PAD, type.size * (ASCENT + DESCENT)];
  const turn = spot.turn ?? 90;
  // Turned by 90 degrees the letters stand to the right of their baseline, by -90 to the left.
  const baseline = spot.x + (turn === 90 ? 1 : -1) * type.size * DESCENT;
  const ground = {
    x: turn === 90 ? spot.x : spot.x - height,
    y: spot.y - length / 2,
    width: height,
    height: length,
  };
  const look = { ...type, colour: palette.ink, anchor: 'middle' as const, turn };
  return grouped('paragraph', [
    { kind: 'path', path: rectangle(ground), fill: palette.paper },
    textLine(shown, { x: baseline, y: spot.y }, look),
  ]);
}
