/** C-values row by row: how each row of a rake sees over the rows before it. */

import { concertOf, find, type Document } from '../../document/document.ts';
import { allOf } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { buildScene } from '../scene/build-scene.ts';
import type { Scene } from '../scene.ts';
import { clearanceLevel, clearanceOver, type ClearanceLevel, type RowClearance } from './rake-clearance.ts';
import { focusPoint, PLATFORM_EDGE, type FocusPoint, type RakeFocus } from './rake-focus.ts';
import { planeOfBlock, type SightPlane } from './rake-plane.ts';
import { rowsOnPlane, type PlaneBlock, type PlaneRow } from './rake-rows.ts';

export interface RakeRow extends PlaneRow {
  /** Rows before it whose heads may be in its line of sight, nearest first; those of blocks before its own too. */
  readonly ahead: readonly PlaneRow[];
  /** Over the next row and over the next but one; null where there is none. */
  readonly oneRow: RowClearance | null;
  readonly twoRows: RowClearance | null;
  /** Over the nearest row whose seats are in line with these: the one that counts where rows are staggered. */
  readonly inLine: RowClearance | null;
  /** How `inLine` is judged, an index of CLEARANCE_BANDS; null when nobody sits in line before this row. */
  readonly level: ClearanceLevel | null;
}

export interface BlockRake {
  readonly block: Id<'seatBlock'>;
  readonly focus: FocusPoint;
  /** From the front. */
  readonly rows: readonly RakeRow[];
}

/**
 * The rows of a seat block, or of all, each along the line that the middle of its block looks along (for a curved
 * block: the line through its middle seats). Distances run along that line; a focus beside it counts where it is
 * level with. A slanting line of sight would make D and T longer by the same factor, and C what it is.
 * Empty when there is no such block, or the player to look at is not in the setup.
 */
export function rakeFigures(
  document: Document,
  setup: Id<'setup'>,
  block: Id<'seatBlock'> | null,
  focus: RakeFocus = PLATFORM_EDGE,
): BlockRake[] {
  const scene = sceneWithoutHeads(document, setup);
  const blocks = block === null ? allOf(document, 'seatBlock') : [find(document, block)];
  return blocks.flatMap((each) => {
    if (!each) return [];
    const rakes = rakesOnPlane(document, scene, { plane: planeOfBlock(each), focus, beside: false });
    return rakes.filter((rake) => rake.block === each.id);
  });
}

export interface RakeView {
  readonly plane: SightPlane;
  readonly focus: RakeFocus;
  /** Whether rows to one side of the plane are looked at too. */
  readonly beside: boolean;
}

/** Every block that a plane shows. */
export function rakesOnPlane(document: Document, scene: Scene, view: RakeView): BlockRake[] {
  const blocks = rowsOnPlane(document, view.plane, view.beside);
  return blocks.flatMap((shown) => {
    const from = shown.rows[0]?.out ?? 0;
    const focus = focusPoint(document, scene, { ...view, from });
    if (!focus) return [];
    const rows = shown.rows.map((row) => rakeRow(row, rowsAhead(row, shown, blocks), focus));
    return [{ block: shown.block.id, focus, rows }];
  });
}

/** The scene of a setup as far as it does not depend on who sits in the house. */
export function sceneWithoutHeads(document: Document, setup: Id<'setup'>): Scene {
  const records = new Map(document.records);
  const concert = concertOf(document);
  records.set(concert.id, { ...concert, headsInFront: false });
  return buildScene({ records }, setup);
}

function rakeRow(row: PlaneRow, ahead: readonly PlaneRow[], focus: FocusPoint): RakeRow {
  const over = (front: PlaneRow | undefined): RowClearance | null =>
    front
      ? clearanceOver(front.name, {
          front: eyeOf(front, row.looks),
          rear: eyeOf(row, row.looks),
          focus: { out: focus.out * row.looks, z: focus.z },
        })
      : null;
  const nearest = ahead.findIndex(({ shifted }) => shifted === row.shifted);
  const inLine = over(ahead[nearest]);
  return {
    ...row,
    ahead,
    oneRow: over(ahead[0]),
    twoRows: over(ahead[1]),
    inLine,
    level: inLine && clearanceLevel(inLine.clearance),
  };
}

/** Turned so that whoever looks does so towards smaller `out`. */
function eyeOf({ out, eyeZ }: PlaneRow, looks: 1 | -1): { readonly out: number; readonly z: number } {
  return { out: out * looks, z: eyeZ };
}

/** Nearest first. */
function rowsAhead(row: PlaneRow, own: PlaneBlock, blocks: readonly PlaneBlock[]): PlaneRow[] {
  const inBlock = own.rows.filter((other) => other.row < row.row).reverse();
  const front = own.rows[0] ?? row;
  const before = blocks
    .filter((other) => other !== own && liesBefore(other, front))
    .flatMap(({ rows }) => rows)
    .sort((a, b) => (b.out - a.out) * row.looks);
  return [...inBlock, ...withoutTwins(before)];
}

/** Wholly before the front row, and not so low that its people's eyes are below that row's feet, as under a balcony. */
function liesBefore({ rows }: PlaneBlock, front: PlaneRow): boolean {
  return rows.every(
    ({ out, eyeZ, looks }) => looks === front.looks && (front.out - out) * looks > 0 && eyeZ > front.floorZ,
  );
}

/** Two rows side by side are one, seen from the side. */
function withoutTwins(rows: readonly PlaneRow[]): PlaneRow[] {
  return rows.filter((row, index) => {
    const last = rows[index - 1];
    return !last || Math.abs(last.out - row.out) > SAME_ROW;
  });
}

const SAME_ROW = 1;
