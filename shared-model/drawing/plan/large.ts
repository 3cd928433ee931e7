/** Pianos and the instruments that stand on the floor, from above. */

import {
  largeInstrumentModel,
  USUAL_OUTLINE,
  type LargeInstrumentModel,
} from '../../catalogue/large-instruments.ts';
import { lidQuads, pianoModel, USUAL_PIANO, type PianoModel } from '../../catalogue/pianos.ts';
import type { LargeInstrument, Piano } from '../../document/records.ts';
import type { Affine } from '../affine.ts';
import { circle, line, polygon, polyline, rectangle } from '../outline.ts';
import type { PathItem, Primitive } from '../primitives.ts';
import { DASH, WEIGHT } from '../style.ts';
import type { Palette } from '../palette.ts';
import { caseSymbol, type CaseSymbol } from './case-symbols.ts';
import { itemToPage, paint, pen, type PlanContext } from './context.ts';

export function drawPiano(context: PlanContext, piano: Piano): Primitive[] {
  const { palette } = context;
  const map = itemToPage(context, piano);
  const model = pianoModel(piano.model) ?? USUAL_PIANO;
  const lid = lidQuads(model, piano.lid).map(([a, b, c, d]) => polyline([a, d, c, b]));
  return [
    paint(map, polygon(model.outline), { fill: palette.wood, ...pen(palette.ink, WEIGHT.medium) }),
    ...drawKeys(context, map, model),
    ...lid.map((path) => paint(map, path, pen(palette.ink, WEIGHT.thin, DASH.dashed))),
  ];
}

/** Front of the keys behind the case's edge, their length, and the cheeks at both ends, mm. */
const KEYS = { inset: 40, length: 150, cheek: 130 };

function drawKeys(context: PlanContext, map: Affine, model: PianoModel): Primitive[] {
  const { palette } = context;
  const [half, front] = [model.width / 2 - KEYS.cheek, model.length / 2 - KEYS.inset];
  const keyboard = rectangle({ x: -half, y: front - KEYS.length, width: 2 * half, height: KEYS.length });
  const octaves: PathItem[] = [];
  for (let octave = 1; octave < 7; octave++) {
    const x = -half + (2 * half * octave) / 7;
    octaves.push(...line({ x, y: front - KEYS.length }, { x, y: front }));
  }
  const fallboard = line({ x: -half, y: front - KEYS.length - 70 }, { x: half, y: front - KEYS.length - 70 });
  return [
    paint(map, keyboard, { fill: palette.page, ...pen(palette.ink, WEIGHT.thin) }),
    paint(map, octaves, pen(palette.ink, WEIGHT.hair)),
    paint(map, fallboard, pen(palette.ink, WEIGHT.thin)),
  ];
}

export function drawLargeInstrument(context: PlanContext, instrument: LargeInstrument): Primitive[] {
  const { palette } = context;
  const map = itemToPage(context, instrument);
  const model = largeInstrumentModel(instrument.model);
  const body = { fill: palette.wood, ...pen(palette.ink, WEIGHT.fine) };
  if (!model) return [paint(map, polygon(USUAL_OUTLINE), body)];
  if (isDrums(model)) {
    return model.boxes.flatMap(({ x, y, width }) => [
      paint(map, circle({ x, y }, width / 2), body),
      paint(map, circle({ x, y }, width / 2 - 25), { fill: palette.page, ...pen(palette.ink, WEIGHT.hair) }),
    ]);
  }
  const symbol = caseSymbol(model);
  if (symbol) return drawCase({ palette, map }, model, symbol);
  const bars = isBars(model) ? [paint(map, barLines(model), pen(palette.ink, WEIGHT.hair))] : [];
  return [paint(map, polygon(model.outline), body), ...bars];
}

/** A hair line round the room that it takes where the body leaves some of that free. */
function drawCase(
  { palette, map }: { readonly palette: Palette; readonly map: Affine },
  { outline }: LargeInstrumentModel,
  { body, pale, lines, edges }: CaseSymbol,
): Primitive[] {
  return [
    paint(map, polygon(outline), pen(palette.faint, WEIGHT.hair, DASH.dotted)),
    ...(edges ? [paint(map, edges, pen(palette.metal, WEIGHT.bold))] : []),
    paint(map, body, { fill: palette.wood, ...pen(palette.ink, WEIGHT.fine) }),
    ...(pale ? [paint(map, pale, { fill: palette.page, ...pen(palette.ink, WEIGHT.hair) })] : []),
    ...(lines ? [paint(map, lines, pen(palette.ink, WEIGHT.hair))] : []),
  ];
}

/** A shell seen from above is as deep as it is wide. */
export function isDrums(model: LargeInstrumentModel): boolean {
  return model.boxes.every((box) => box.width === box.depth && box.width < model.width + 1);
}

/** Keyboard percussion is a trapeze; what has a plain case is a rectangle. */
export function isBars(model: LargeInstrumentModel): boolean {
  const area = model.width * model.depth;
  return model.outline.length === 4 && model.boxes.length > 1 && area > 0;
}

/** Bars across the frame and the gap between the two rows of them. */
function barLines({ outline, width }: LargeInstrumentModel): PathItem[] {
  const [nearLow, nearHigh, farHigh, farLow] = outline;
  if (!nearLow || !nearHigh || !farHigh || !farLow) return [];
  const count = Math.round(width / BAR_PITCH);
  const path: PathItem[] = [];
  for (let bar = 1; bar < count; bar++) {
    const share = bar / count;
    const near = between(nearLow, nearHigh, share);
    const far = between(farLow, farHigh, share);
    path.push(...line(between(near, far, 0.07), between(near, far, 0.5)));
    // The far row has the gaps of a keyboard: two bars, a gap, three bars, a gap.
    if (bar % 7 !== 3 && bar % 7 !== 0)
      path.push(...line(between(near, far, 0.56), between(near, far, 0.93)));
  }
  path.push(...line(between(nearLow, farLow, 0.53), between(nearHigh, farHigh, 0.53)));
  return path;
}

const BAR_PITCH = 75;

type Spot = { readonly x: number; readonly y: number };

function between(a: Spot, b: Spot, share: number): Spot {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}
