/** The title block: who, what, when, which revision, at what scale, on which sheet. Fields after EN ISO 7200:2004. */

import { line, rectangle, type Path } from '../outline.ts';
import type { Box, Primitive } from '../primitives.ts';
import { ASCENT, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine, type Type } from '../text.ts';
import { grouped, type TextTools } from './blocks.ts';

export interface TitleFields {
  readonly owner: string;
  readonly title: string;
  /** The piece or setup that the plot is of. */
  readonly piece: string;
  readonly documentType: string;
  /** Day of the concert and day of issue, as they are to be printed; may be empty. */
  readonly concertDate: string;
  readonly issued: string;
  readonly revision: string;
  readonly creator: string;
  readonly scale: string;
  readonly units: string;
  readonly paper: string;
  readonly sheet: number;
  readonly sheets: number;
}

/** ISO 7200 (from memory): 180 mm wide, which is what A4 leaves inside its borders. */
const FULL_WIDTH = 180;
const ROW = 9.4;
export const TITLE_BLOCK_HEIGHT = 3 * ROW;
export const TITLE_STRIP_HEIGHT = 9.4;

interface Field {
  readonly caption: string;
  readonly value: string;
  readonly parts: number;
  readonly strong?: boolean;
  readonly role?: 'title';
}

/** At the bottom right of the frame; as wide as the frame when little would be left beside it. */
export function titleBlockBox(frame: Box): Box {
  const width = frame.width - FULL_WIDTH < LEAST_BESIDE ? frame.width : FULL_WIDTH;
  return {
    x: frame.x + frame.width - width,
    y: frame.y + frame.height - TITLE_BLOCK_HEIGHT,
    width,
    height: TITLE_BLOCK_HEIGHT,
  };
}

/** Narrower than this, the room beside the title block is of no use. */
const LEAST_BESIDE = 70;

export function titleBlock(fields: TitleFields, box: Box, tools: TextTools): Primitive[] {
  const rows: Field[][] = [
    [
      { caption: 'Owner or venue', value: fields.owner, parts: 62 },
      { caption: 'Title', value: fields.title, parts: 78, strong: true, role: 'title' },
      { caption: 'Document', value: fields.documentType, parts: 40 },
    ],
    [
      { caption: 'Piece', value: fields.piece, parts: 90, strong: true },
      { caption: 'Concert', value: fields.concertDate, parts: 32 },
      { caption: 'Issued', value: fields.issued, parts: 32 },
      { caption: 'Revision', value: fields.revision, parts: 26 },
    ],
    [
      { caption: 'Drawn by', value: fields.creator, parts: 40 },
      // Left empty for a signature on paper.
      { caption: 'Checked', value: '', parts: 30 },
      { caption: 'Scale', value: fields.scale, parts: 54 },
      { caption: 'Units', value: fields.units, parts: 16 },
      { caption: 'Paper', value: fields.paper, parts: 20 },
      { caption: 'Sheet', value: sheetNumber(fields), parts: 20 },
    ],
  ];
  return [...drawRows(rows, box, tools), outline(box, tools)];
}

/** The same in one line, for the sheets that follow. */
export function titleStrip(fields: TitleFields, box: Box, tools: TextTools): Primitive[] {
  const row: Field[] = [
    { caption: 'Title', value: fields.title, parts: 56 },
    { caption: 'Piece', value: fields.piece, parts: 46 },
    { caption: 'Document', value: fields.documentType, parts: 32, role: 'title' },
    { caption: 'Issued', value: fields.issued, parts: 20 },
    { caption: 'Revision', value: fields.revision, parts: 15 },
    { caption: 'Sheet', value: sheetNumber(fields), parts: 13 },
  ];
  return [...drawRows([row], box, tools), outline(box, tools)];
}

function sheetNumber({ sheet, sheets }: TitleFields): string {
  return `${sheet} / ${sheets}`;
}

function drawRows(rows: readonly (readonly Field[])[], box: Box, tools: TextTools): Primitive[] {
  const height = box.height / rows.length;
  return rows.flatMap((fields, index) => {
    const y = box.y + index * height;
    const rule = index > 0 ? [stroke(line({ x: box.x, y }, { x: box.x + box.width, y }), tools)] : [];
    return [...rule, ...drawRow(fields, { ...box, y, height }, tools)];
  });
}

function drawRow(fields: readonly Field[], row: Box, tools: TextTools): Primitive[] {
  const parts = fields.reduce((sum, field) => sum + field.parts, 0);
  const drawn: Primitive[] = [];
  let x = row.x;
  for (const field of fields) {
    const width = (field.parts / parts) * row.width;
    if (x > row.x) drawn.push(stroke(line({ x, y: row.y }, { x, y: row.y + row.height }), tools));
    drawn.push(drawField(field, { ...row, x, width }, tools));
    x += width;
  }
  return drawn;
}

function drawField(field: Field, cell: Box, { palette, measure }: TextTools): Primitive {
  const type: Type = {
    size: field.strong ? TEXT.strong : TEXT.body,
    weight: field.strong ? 'bold' : 'regular',
  };
  const width = cell.width - 2 * PAD;
  const caption: Type = { size: TEXT.small, weight: 'regular' };
  const captionY = cell.y + 0.7 + caption.size * ASCENT;
  const valueY = cell.y + cell.height - 1.5;
  const value = fitted(field.value, width, type, measure);
  return grouped(field.role ?? 'paragraph', [
    textLine(
      fitted(field.caption, width, caption, measure),
      { x: cell.x + PAD, y: captionY },
      { ...caption, colour: palette.faint },
    ),
    ...(value === ''
      ? []
      : [textLine(value, { x: cell.x + PAD, y: valueY }, { ...type, colour: palette.ink })]),
  ]);
}

const PAD = 1.5;

function outline(box: Box, tools: TextTools): Primitive {
  return { kind: 'path', path: rectangle(box), stroke: { colour: tools.palette.ink, width: WEIGHT.medium } };
}

function stroke(path: Path, tools: TextTools): Primitive {
  return { kind: 'path', path, stroke: { colour: tools.palette.ink, width: WEIGHT.thin } };
}
