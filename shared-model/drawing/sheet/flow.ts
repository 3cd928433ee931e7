/** Stacks blocks into columns and pages. Nothing is cut, nothing overlaps; table headers are repeated. */

import type { Box, Primitive } from '../primitives.ts';
import { grouped, type Block } from './blocks.ts';

const COLUMN_GAP = 8;
/** A column of text narrower than this would cramp the tables. */
const LEAST_COLUMN = 170;

/** Columns side by side in the body of a page. */
export function columnsOf(body: Box): Box[] {
  const count = Math.max(1, Math.floor((body.width + COLUMN_GAP) / (LEAST_COLUMN + COLUMN_GAP)));
  const width = (body.width - (count - 1) * COLUMN_GAP) / count;
  return Array.from({ length: count }, (_, index) => ({
    ...body,
    x: body.x + index * (width + COLUMN_GAP),
    width,
  }));
}

/** The drawings of as many pages as the blocks need, all with the same body. */
export function flow(blocks: readonly Block[], body: Box): Primitive[][] {
  const columns = columnsOf(body);
  const stacks = fillColumns(blocks, body.height);
  const pages: Primitive[][] = [];
  stacks.forEach((stack, index) => {
    const column = columns[index % columns.length];
    if (!column) return;
    if (index % columns.length === 0) pages.push([]);
    pages.at(-1)?.push(...drawStack(stack, column));
  });
  return pages;
}

type Stack = readonly Block[];

function fillColumns(blocks: readonly Block[], height: number): Stack[] {
  const stacks: Stack[] = [];
  let stack: Block[] = [];
  let used = 0;
  const open = (header: Block | undefined): void => {
    if (stack.length > 0) stacks.push(stack);
    stack = header ? [header] : [];
    used = header?.height ?? 0;
  };
  blocks.forEach((block, index) => {
    const first = block.header !== undefined && blocks[index - 1]?.header !== block.header;
    const own = block.height + (first ? (block.header?.height ?? 0) : 0);
    if (used + own + heightKeptWith(blocks, index) > height && stack.length > 0) {
      open(block.header);
    } else if (first && block.header) {
      stack.push(block.header);
      used += block.header.height;
    }
    stack.push(block);
    used += block.height;
  });
  open(undefined);
  return stacks;
}

/** Room that what follows needs so that this block does not stand alone at the foot of a column. */
function heightKeptWith(blocks: readonly Block[], index: number): number {
  let height = 0;
  for (let at = index; blocks[at]?.keepsWithNext; at++) {
    const next = blocks[at + 1];
    if (!next) break;
    height += next.height + (next.header?.height ?? 0);
  }
  return height;
}

/** Draws from the top down; the rows of a table, with their header, become one table. */
function drawStack(stack: Stack, column: Box): Primitive[] {
  const drawn: Primitive[] = [];
  let y = column.y;
  let rows: Primitive[] = [];
  const closeTable = (): void => {
    if (rows.length > 0) drawn.push(grouped('table', rows));
    rows = [];
  };
  stack.forEach((block, index) => {
    const inTable = block.header !== undefined || stack[index + 1]?.header === block;
    if (!inTable || (block.header === undefined && rows.length > 0)) closeTable();
    const parts = block.draw({ x: column.x, y });
    if (inTable) rows.push(...parts);
    else drawn.push(...parts);
    y += block.height;
  });
  closeTable();
  return drawn;
}
