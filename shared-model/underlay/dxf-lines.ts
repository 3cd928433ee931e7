/** A parsed DXF as the lines of an underlay: blocks put down, curves as chains, hidden layers left out, sizes bounded. */

import type { Point, UnderlayLines } from '../document/records.ts';
import type { Vec2 } from '../geometry/frame.ts';
import type { DxfDrawing, DxfEntity } from './dxf-entities.ts';
import { chainOf, insertedAt } from './entity-lines.ts';

export interface DxfLines {
  readonly content: UnderlayLines;
  /** Where the lower left corner lies in the drawing's own coordinates. */
  readonly corner: Point;
  /** Millimetres for one unit of the drawing; null: the drawing does not say. */
  readonly unit: number | null;
}

export type DxfProblem = 'empty' | 'tooMany' | 'tooLarge';

export type DxfLinesResult =
  { readonly ok: true; readonly lines: DxfLines } | { readonly ok: false; readonly problem: DxfProblem };

/** A file keeps at most 50 000 lines; the points keep it to a few megabytes. */
const MOST_LINES = 50_000;
const MOST_POINTS = 250_000;
const LONGEST_LINE = 5000;
const DEEPEST_INSERT = 8;
/** Units from one end to the other, as the file format takes it. */
const LONGEST_EXTENT = 1e9;

/** Codes of $INSUNITS (DXF reference, Autodesk), millimetres each. 0 says nothing, and of the others nobody builds. */
const UNITS: Readonly<Record<number, number>> = {
  1: 25.4,
  2: 304.8,
  4: 1,
  5: 10,
  6: 1000,
  7: 1e6,
  9: 0.0254,
  10: 914.4,
  14: 100,
};

export function dxfLines(drawing: DxfDrawing): DxfLinesResult {
  const gathered = new Gathering(drawing);
  if (!gathered.addAll(drawing.entities ?? [], IN_PLACE, 0)) return { ok: false, problem: 'tooMany' };
  const box = boxOf(gathered.chains);
  if (!box) return { ok: false, problem: 'empty' };
  const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
  const extent = Math.max(width, height);
  if (!(extent > 0) || extent > LONGEST_EXTENT)
    return { ok: false, problem: extent > 0 ? 'tooLarge' : 'empty' };
  const rounded = rounding(extent);
  const lines = gathered.chains.map((chain) =>
    chain.flatMap(({ x, y }) => [rounded(x - box.minX), rounded(y - box.minY)]),
  );
  const content: UnderlayLines = { type: 'lines', width: rounded(width), height: rounded(height), lines };
  const code = Number(drawing.header?.['$INSUNITS'] ?? 0);
  return { ok: true, lines: { content, corner: { x: box.minX, y: box.minY }, unit: UNITS[code] ?? null } };
}

/** To a millionth of the whole: no finer than anybody measures, and not 17 digits a number in the file. */
function rounding(extent: number): (value: number) => number {
  const digits = Math.max(0, Math.min(9, 6 - Math.floor(Math.log10(extent))));
  const factor = 10 ** digits;
  return (value) => Math.max(0, Math.round(value * factor) / factor);
}

type Placing = (point: Vec2) => Vec2;
const IN_PLACE: Placing = (point) => point;

class Gathering {
  readonly chains: Vec2[][] = [];
  #points = 0;

  constructor(private readonly drawing: DxfDrawing) {}

  /** False: there are more than an underlay takes. */
  addAll(entities: readonly DxfEntity[], place: Placing, depth: number): boolean {
    return entities.every((entity) => this.#isHidden(entity) || this.#add(entity, place, depth));
  }

  #isHidden({ visible, inPaperSpace, layer = '' }: DxfEntity): boolean {
    const layers = this.drawing.tables?.layer?.layers ?? {};
    const own = Object.hasOwn(layers, layer) ? layers[layer] : undefined;
    return visible === false || inPaperSpace === true || own?.visible === false || own?.frozen === true;
  }

  #add(entity: DxfEntity, place: Placing, depth: number): boolean {
    if (entity.type === 'INSERT') return this.#addInsert(entity, place, depth);
    const chain = chainOf(entity)?.map(place);
    if (!chain?.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))) return true;
    for (let from = 0; from < chain.length - 1; from += LONGEST_LINE - 1) {
      const piece = chain.slice(from, from + LONGEST_LINE);
      this.chains.push(piece);
      this.#points += piece.length;
    }
    return this.chains.length <= MOST_LINES && this.#points <= MOST_POINTS;
  }

  /** A block that is in itself goes so deep and no deeper. */
  #addInsert(insert: DxfEntity, place: Placing, depth: number): boolean {
    const blocks = this.drawing.blocks ?? {};
    const block = Object.hasOwn(blocks, insert.name ?? '') ? blocks[insert.name ?? ''] : undefined;
    if (!block?.entities?.length || depth >= DEEPEST_INSERT) return true;
    const base = block.position ?? { x: 0, y: 0 };
    for (const shift of arrayOf(insert)) {
      const placing: Placing = (point) => place(insertedAt(insert, base, point, shift));
      // Many empty blocks in each other would take for ever without adding a line.
      this.#points += 1;
      if (this.#points > MOST_POINTS || !this.addAll(block.entities, placing, depth + 1)) return false;
    }
    return true;
  }
}

/** An insert may put its block down in rows and columns. */
function* arrayOf({
  columnCount = 1,
  rowCount = 1,
  columnSpacing = 0,
  rowSpacing = 0,
}: DxfEntity): Generator<Vec2> {
  for (let row = 0; row < Math.max(1, rowCount); row++)
    for (let column = 0; column < Math.max(1, columnCount); column++)
      yield { x: column * columnSpacing, y: row * rowSpacing };
}

function boxOf(chains: readonly (readonly Vec2[])[]) {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const chain of chains) {
    for (const { x, y } of chain) {
      minX = Math.min(minX, x);
      minY = Math.min(minY, y);
      maxX = Math.max(maxX, x);
      maxY = Math.max(maxY, y);
    }
  }
  return minX > maxX ? null : { minX, minY, maxX, maxY };
}
