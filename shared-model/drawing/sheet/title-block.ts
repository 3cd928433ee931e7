/** The title block: who, what, when, which revision, at what scale, on which sheet. Fields after EN ISO 7200:2004. */

import { t } from '../../words/say.ts';
import { line, rectangle, type Path } from '../outline.ts';
import type { Box, MeasureText, Primitive } from '../primitives.ts';
import { ASCENT, TEXT, WEIGHT } from '../style.ts';
import { fitted, oneLine, textLine, wrapped, type Type } from '../text.ts';
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
export const TITLE_STRIP_HEIGHT = 2 * ROW;

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
const LEAST_BESIDE = 64;

export function titleBlock(fields: TitleFields, box: Box, tools: TextTools): Primitive[] {
  const rows: Field[][] = [
    [
      { caption: t`Owner or venue`, value: fields.owner, parts: 62 },
      { caption: t`Title`, value: fields.title, parts: 78, strong: true, role: 'title' },
      { caption: t`Document`, value: fields.documentType, parts: 40 },
    ],
    [
      { caption: t`Piece`, value: fields.piece, parts: 90, strong: true },
      { caption: t`Concert`, value: fields.concertDate, parts: 32 },
      { caption: t`Issued`, value: fields.issued, parts: 32 },
      { caption: t`Revision`, value: fields.revision, parts: 26 },
    ],
    [
      { caption: t`Drawn by`, value: fields.creator, parts: 40 },
      // Left empty for a signature on paper.
      { caption: t`Checked`, value: '', parts: 30 },
      { caption: t`Scale`, value: fields.scale, parts: 54 },
      { caption: t`Units`, value: fields.units, parts: 16 },
      { caption: t`Paper`, value: fields.paper, parts: 20 },
      { caption: t`Sheet`, value: sheetNumber(fields), parts: 20 },
    ],
  ];
  return [...drawRows(rows, box, tools), outline(box, tools)];
}

/** The same in two lines, for the sheets that follow. */
export function titleStrip(fields: TitleFields, box: Box, tools: TextTools): Primitive[] {
  const rows: Field[][] = [
    [
      { caption: t`Title`, value: fields.title, parts: 66, strong: true },
      { caption: t`Piece`, value: fields.piece, parts: 56, strong: true },
      { caption: t`Document`, value: fields.documentType, parts: 58, role: 'title' },
    ],
    [
      { caption: t`Concert`, value: fields.concertDate, parts: 24 },
      { caption: t`Issued`, value: fields.issued, parts: 24 },
      { caption: t`Revision`, value: fields.revision, parts: 20 },
      { caption: t`Scale`, value: fields.scale, parts: 54 },
      { caption: t`Units`, value: fields.units, parts: 16 },
      { caption: t`Paper`, value: fields.paper, parts: 18 },
      { caption: t`Sheet`, value: sheetNumber(fields), parts: 24, strong: true },
    ],
  ];
  return [...drawRows(rows, box, tools), outline(box, tools)];
}

function sheetNumber({ sheet, sheets }: TitleFields): string {
  return t`${sheet} of ${sheets}`;
}

function drawRows(rows: readonly (readonly Field[])[], box: Box, tools: TextTools): Primitive[] {
  const height = box.height / rows.length;
  const drawn = rows.flatMap((fields, index) => {
    const y = box.y + index * height;
    const rule = index > 0 ? [stroke(line({ x: box.x, y }, { x: box.x + box.width, y }), tools)] : [];
    return [...rule, ...drawRow(fields, { ...box, y, height }, tools)];
  });
  // Whoever has the sheet read to him hears first what it is.
  return drawn.toSorted((a, b) => Number(isTitle(b)) - Number(isTitle(a)));
}

function isTitle(primitive: Primitive): boolean {
  return primitive.kind === 'group' && primitive.role === 'title';
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
  const width = cell.width - 2 * PAD;
  const caption = fitted(field.caption, width, CAPTION, measure);
  const { lines, type } = setValue(field, width, measure);
  const baseline = cell.y + cell.height - (lines.length > 1 ? LOW_FOOT : FOOT);
  const x = cell.x + PAD;
  const ink = { ...type, colour: palette.ink };
  return grouped(field.role ?? 'paragraph', [
    textLine(
      caption,
      { x, y: cell.y + CAPTION_TOP + CAPTION.size * ASCENT },
      { ...CAPTION, colour: palette.faint },
    ),
    ...lines.map((line, index) =>
      textLine(line, { x, y: baseline - (lines.length - 1 - index) * VALUE_LEADING }, ink),
    ),
  ]);
}

const CAPTION: Type = { size: TEXT.small, weight: 'regular' };
/** Two lines of small letters below the caption just fill a row. */
const CAPTION_TOP = 0.6;
const VALUE_LEADING = 2.9;
const FOOT = 1.5;
const LOW_FOOT = 0.9;

interface SetValue {
  readonly lines: readonly string[];
  readonly type: Type;
}

/** In its own size, else smaller, else on two lines; only what is longer still is cut. */
function setValue({ value, strong = false }: Field, width: number, measure: MeasureText): SetValue {
  const weight = strong ? 'bold' : 'regular';
  const whole = oneLine(value);
  const full: Type = { size: strong ? TEXT.strong : TEXT.body, weight };
  const small: Type = { size: TEXT.small, weight };
  if (whole === '') return { lines: [], type: small };
  const fits = (type: Type): boolean => measure(whole, type.size, weight) <= width;
  if (fits(full)) return { lines: [whole], type: full };
  if (fits(small)) return { lines: [whole], type: small };
  const [first = '', ...rest] = wrapped(whole, width, small, measure);
  return { lines: [first, fitted(rest.join(' '), width, small, measure)], type: small };
}

const PAD = 1.5;

function outline(box: Box, tools: TextTools): Primitive {
  return { kind: 'path', path: rectangle(box), stroke: { colour: tools.palette.ink, width: WEIGHT.medium } };
}

function stroke(path: Path, tools: TextTools): Primitive {
  return { kind: 'path', path, stroke: { colour: tools.palette.ink, width: WEIGHT.thin } };
}
