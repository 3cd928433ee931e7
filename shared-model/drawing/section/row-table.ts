/** The figures of the rows, each in a column under (or over) its row. */

import type { RakeRow } from '../../checks/sightlines/rake.ts';
import { t } from '../../words/say.ts';
import { line } from '../outline.ts';
import { pen } from '../plan/context.ts';
import type { GroupPrimitive, Primitive, TextPrimitive } from '../primitives.ts';
import { bandMark, bandRim } from '../sight-bands.ts';
import { ASCENT, CAP_HEIGHT, TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import { planeToPage, type SectionContext } from './context.ts';
import { AIR, columnsOf, DISC, LINE, NAME_TYPE, NONE, TYPE, type Columns } from './row-columns.ts';
import { placeTables, type PlacedTable } from './row-lanes.ts';

/** Blocks on the ground have their figures under the house floor, upper levels over their heads. */
export function drawRowFigures(context: SectionContext): GroupPrimitive[] {
  const columns = columnsOf(context);
  return placeTables(context, columns).map((table) => drawTable(context, table, columns));
}

function drawTable(context: SectionContext, table: PlacedTable, columns: Columns): GroupPrimitive {
  const { rake, top, titled } = table;
  const first = top + (columns.named ? LINE + AIR : 0);
  const shown = rake.rows.filter(({ row }) => row % columns.every === 0);
  return {
    kind: 'group',
    subject: rake.block,
    description: rake.name === '' ? t`C-values of the seats` : t`C-values of ${rake.name}`,
    children: [
      ...(columns.named ? drawBlockName(context, table) : []),
      ...(titled ? drawTitles(context, columns, { x: table.from - TITLE_GAP, y: first }) : []),
      ...shown.flatMap((row) => drawColumn(context, row, columns, first)),
    ],
  };
}

/** The name over a line as long as its rows. */
function drawBlockName({ palette }: SectionContext, { name, from, to, top }: PlacedTable): Primitive[] {
  const y = top + LINE;
  const rule = line({ x: from, y }, { x: to, y });
  const text = textLine(
    name,
    { x: (from + to) / 2, y: y - AIR },
    { ...NAME_TYPE, colour: palette.faint, anchor: 'middle' },
  );
  return [{ kind: 'path', path: rule, ...pen(palette.faint, WEIGHT.thin) }, ...(name === '' ? [] : [text])];
}

/** From the words on the left to the first column, mm on paper. */
const TITLE_GAP = 2;
/** Figures stand a little nearer to the line above them than to the one below. */
const LIFT = 0.3;
const HALF_CAP = (TEXT.small * CAP_HEIGHT) / 2;

interface Spot {
  readonly x: number;
  readonly y: number;
}

function drawTitles(
  { palette }: SectionContext,
  { lines, figureHeight }: Columns,
  { x, y }: Spot,
): TextPrimitive[] {
  const look = { ...TYPE, colour: palette.faint, anchor: 'end' } as const;
  return [
    textLine(t`Row`, { x, y: y + TEXT.small * ASCENT }, look),
    ...lines.map(({ title }, index) => {
      const middle = y + LINE + (index + 0.5) * figureHeight;
      return textLine(title, { x, y: middle + HALF_CAP - LIFT }, look);
    }),
  ];
}

function drawColumn(context: SectionContext, row: RakeRow, columns: Columns, top: number): Primitive[] {
  const { palette } = context;
  const { lines, figureHeight, turned } = columns;
  const { x } = planeToPage(context, row.out, 0);
  const ink = { ...TYPE, colour: palette.ink } as const;
  const figures = lines.map(({ textOf }, index) => {
    const y = top + LINE + index * figureHeight;
    const words = textOf(row);
    return turned && words !== NONE
      ? textLine(words, { x: x + HALF_CAP, y: y + figureHeight - AIR }, { ...ink, turn: -90 })
      : textLine(words, { x, y: y + figureHeight / 2 + HALF_CAP - LIFT }, { ...ink, anchor: 'middle' });
  });
  const name = { ...NAME_TYPE, colour: palette.ink, anchor: 'middle' } as const;
  return [
    textLine(row.name, { x, y: top + TEXT.small * ASCENT }, name),
    ...figures,
    ...levelDisc(context, row, { x, y: top + LINE + lines.length * figureHeight + DISC + 0.2 }),
  ];
}

/** Filled as far as the row sees well: the same signs as for the bands of the seat map. */
function levelDisc({ palette }: SectionContext, { level }: RakeRow, at: Spot): Primitive[] {
  if (level === null) return [];
  return [
    { kind: 'path', path: bandMark(level, at, DISC), fill: palette.ink },
    { kind: 'path', path: bandRim(at, DISC), ...pen(palette.ink, WEIGHT.thin) },
  ];
}
