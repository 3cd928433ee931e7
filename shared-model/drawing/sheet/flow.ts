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
  return pagesOf(blocks, body).map((draw) => draw());
}

/** One column as wide as the box, however broad that is; what goes beyond its foot is left out. */
export function columnIn(blocks: readonly Block[], box: Box): Primitive[] {
  return drawStack(fillColumns(blocks, box.height)[0] ?? [], box);
}

/** Of blocks that stand in one column, the header of each table once. */
export function heightWithHeaders(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { height, header }, index) => {
    const begins = header !== undefined && blocks[index - 1]?.header !== header;
    return sum + height + (begins ? header.height : 0);
  }, 0);
}

/** The same pages, each drawn when it is asked for. */
export function pagesOf(blocks: readonly Block[], body: Box): (() => Primitive[])[] {
  return laidOut(blocks, body).map(({ draw }) => draw);
}

export interface FlowPage {
  /** What stands on it, headers of tables as often as they are repeated. */
  readonly blocks: readonly Block[];
  readonly draw: () => Primitive[];
}

export function laidOut(blocks: readonly Block[], body: Box): FlowPage[] {
  const columns = columnsOf(body);
  const stacks = evenColumns(blocks, body.height, columns.length);
  return Array.from({ length: Math.ceil(stacks.length / columns.length) }, (_, page) => {
    const own = stacks.slice(page * columns.length, (page + 1) * columns.length);
    return {
      blocks: own.flat(),
      draw: () => columns.flatMap((column, index) => drawStack(own[index] ?? [], column)),
    };
  });
}

type Stack = readonly Block[];

/** Lower than this share of the page, columns are not made for the sake of being even. */
const LOWEST = 0.35;
const STEPS = 12;

/** What would leave a column of its only page empty fills all of them alike. */
function evenColumns(blocks: readonly Block[], height: number, count: number): Stack[] {
  const stacks = fillColumns(blocks, height);
  if (stacks.length >= count) return stacks;
  let even = stacks;
  for (let step = 1; step <= STEPS; step++) {
    const lower = height * (1 - ((1 - LOWEST) * step) / STEPS);
    const tried = fillColumns(blocks, lower);
    const fits = tried.length <= count && tried.every((stack) => heightOf(stack) <= height);
    if (!fits) break;
    even = tried;
  }
  return even;
}

function fillColumns(blocks: readonly Block[], height: number): Stack[] {
  const columns = new Columns(height);
  for (const passage of passagesOf(blocks)) addPassage(columns, passage);
  return columns.stacks.filter((stack) => stack.some(({ air }) => !air));
}

/** What stays together if a column can hold it: headings with what they head, and the rows of a table. */
interface Passage {
  readonly lead: readonly Block[];
  /** Rows of one table, or a single block. */
  readonly body: readonly Block[];
}

function passagesOf(blocks: readonly Block[]): Passage[] {
  const passages: { lead: Block[]; body: Block[] }[] = [];
  let lead: Block[] = [];
  for (const block of blocks) {
    const last = passages.at(-1);
    const goesOn = block.header !== undefined && last?.body.at(-1)?.header === block.header;
    if (block.keepsWithNext) lead.push(block);
    else if (goesOn) last?.body.push(block);
    else {
      passages.push({ lead, body: [block] });
      lead = [];
    }
  }
  return lead.length > 0 ? [...passages, { lead, body: [] }] : passages;
}

class Columns {
  readonly stacks: Block[][] = [[]];
  readonly height: number;
  #used = 0;

  constructor(height: number) {
    this.height = height;
  }

  get room(): number {
    return this.height - this.#used;
  }

  get isEmpty(): boolean {
    return this.#used === 0;
  }

  open(): void {
    this.stacks.push([]);
    this.#used = 0;
  }

  add(blocks: readonly Block[]): void {
    this.stacks.at(-1)?.push(...blocks);
    this.#used += heightOf(blocks);
  }
}

function addPassage(columns: Columns, { lead, body }: Passage): void {
  const header = body[0]?.header;
  const whole = [...lead, ...(header ? [header] : []), ...body];
  if (body[0]?.air) {
    if (!columns.isEmpty && heightOf(whole) <= columns.room) columns.add(whole);
    return;
  }
  const isKept = !body[0]?.mayPart && heightOf(whole) <= columns.height;
  if (heightOf(whole) > columns.room && isKept && !columns.isEmpty) columns.open();
  if (heightOf(whole) <= columns.room || !header) {
    if (heightOf(whole) > columns.room && !columns.isEmpty) columns.open();
    columns.add(whole);
  } else addLongTable(columns, [...lead, header], body);
}

/** Fewer rows than this look lost at the head or the foot of a column. */
const FEWEST_ROWS = 3;

/** A table that no column holds, in pieces of as many rows as go in, none of them shorter than it need be. */
function addLongTable(columns: Columns, top: readonly Block[], rows: readonly Block[]): void {
  const again = [rows[0]?.again, rows[0]?.header].filter((block) => block !== undefined);
  let rest = rows;
  let over = top;
  while (rest.length > 0) {
    if (heightOf([...over, ...rest.slice(0, FEWEST_ROWS)]) > columns.room && !columns.isEmpty) columns.open();
    const count = rowsThatFit(rest, columns.room - heightOf(over));
    columns.add([...over, ...rest.slice(0, count)]);
    rest = rest.slice(count);
    over = again;
    if (rest.length > 0) columns.open();
  }
}

/** At least one, and no more than leaves enough for the next piece. */
function rowsThatFit(rows: readonly Block[], room: number): number {
  let count = 0;
  let used = 0;
  for (const { height } of rows) {
    used += height;
    if (used > room) break;
    count += 1;
  }
  const left = rows.length - count;
  const handedOn = left > 0 && left < FEWEST_ROWS ? FEWEST_ROWS - left : 0;
  return Math.max(1, count - handedOn >= FEWEST_ROWS ? count - handedOn : count);
}

function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { height }) => sum + height, 0);
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
