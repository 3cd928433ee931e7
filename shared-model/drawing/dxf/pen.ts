/** The only door to the library that writes DXF: it trusts what it is given, so here all of it is made safe. */

import {
  DxfWriter,
  LWPolylineFlags,
  point3d,
  TextHorizontalAlignment,
  Units,
  type DxfBlock,
} from '@tarikjabiri/dxf';
import type { Vec2 } from '../../geometry/frame.ts';
import type { Box, PathItem } from '../primitives.ts';
import { oneLine } from '../text.ts';
import { flattened } from './flatten.ts';
import { LAYERS, type LayerName } from './layers.ts';

/** Curves are chains of lines that are nowhere farther off, mm. */
const CURVE_TOLERANCE = 0.1;

export interface Placing {
  readonly layer: LayerName;
  readonly at: Vec2;
  /** Degrees anticlockwise. */
  readonly turn: number;
}

export interface Lettering {
  readonly layer: LayerName;
  /** The middle of the line, on its baseline. */
  readonly at: Vec2;
  /** Of capitals, mm. */
  readonly height: number;
  /** Degrees anticlockwise. */
  readonly turn?: number;
}

/** Draws in millimetres of the stage. Numbers that are not finite are bugs and throw. */
export class DxfPen {
  readonly #writer = new DxfWriter();
  /** Names of blocks by what is in them, so that things that are alike share one. */
  readonly #blocks = new Map<string, string>();
  readonly #counts = new Map<LayerName, number>();

  constructor() {
    this.#writer.setUnits(Units.Millimeters);
    // 1: metric hatches and line types; and lengths in millimetres with a decimal point.
    this.#writer.setVariable('$MEASUREMENT', { 70: 1 });
    this.#writer.setVariable('$LUNITS', { 70: 2 });
    this.#writer.setVariable('$LASTSAVEDBY', { 1: 'Standlines' });
    for (const [name, colour] of Object.entries(LAYERS)) this.#writer.addLayer(name, colour, 'CONTINUOUS');
  }

  path(layer: LayerName, path: readonly PathItem[]): void {
    drawPath(this.#writer.modelSpace, layer, path);
  }

  point(layer: LayerName, { x, y }: Vec2): void {
    this.#writer.modelSpace.addPoint(finite(x), finite(y), 0, { layerName: layer });
  }

  /** One thing as a block, in its own frame, which can be taken and moved as a whole; the same block for all that look alike. */
  thing(paths: readonly (readonly PathItem[])[], { layer, at, turn }: Placing): void {
    const block = this.#blockOf(paths, layer);
    const spot = point3d(finite(at.x), finite(at.y), 0);
    this.#writer.modelSpace.addInsert(block, spot, { rotationAngle: finite(turn), layerName: layer });
  }

  /** In one line. A line break in a text would end it, and what follows be read as drawing. */
  words(text: string, { layer, at, height, turn = 0 }: Lettering): void {
    const line = oneLine(text)
      .replace(/[\p{Cc}\u2028\u2029]/gu, '')
      .trim();
    if (line === '') return;
    const spot = point3d(finite(at.x), finite(at.y), 0);
    this.#writer.modelSpace.addText(spot, height, escaped(line), {
      layerName: layer,
      rotation: finite(turn),
      horizontalAlignment: TextHorizontalAlignment.Center,
      secondAlignmentPoint: spot,
    });
  }

  /** The whole file, as text in UTF-8. */
  finish({ x, y, width, height }: Box): string {
    this.#writer.setVariable('$EXTMIN', { 10: finite(x), 20: finite(y), 30: 0 });
    this.#writer.setVariable('$EXTMAX', { 10: finite(x + width), 20: finite(y + height), 30: 0 });
    return `${this.#writer.stringify()}\n`;
  }

  #blockOf(paths: readonly (readonly PathItem[])[], layer: LayerName): string {
    const content = JSON.stringify([layer, paths]);
    const known = this.#blocks.get(content);
    if (known !== undefined) return known;
    const count = (this.#counts.get(layer) ?? 0) + 1;
    this.#counts.set(layer, count);
    const name = `${layer}-${count}`;
    const block = this.#writer.addBlock(name);
    // What is on layer 0 of a block takes the layer that the block is put on.
    for (const path of paths) drawPath(block, '0', path);
    this.#blocks.set(content, name);
    return name;
  }
}

function drawPath(where: DxfBlock, layerName: string, path: readonly PathItem[]): void {
  for (const { points, closed } of flattened(path, CURVE_TOLERANCE)) {
    const vertices = points.map(({ x, y }) => ({ point: { x: finite(x), y: finite(y) } }));
    where.addLWPolyline(vertices, {
      layerName,
      flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None,
    });
  }
}

/** Two percent signs begin a sign of its own in a text: "%%d" is a degree. */
function escaped(text: string): string {
  return text.replaceAll('%%', '% %');
}

/** A thousandth of a millimetre is enough, and keeps exponents out of the file. */
function finite(value: number): number {
  if (!Number.isFinite(value)) throw new Error('a drawing holds a number that is not finite');
  return Math.round(value * 1000) / 1000 || 0;
}
