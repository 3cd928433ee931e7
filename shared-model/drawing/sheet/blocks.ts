/** Pieces of a text sheet, each of a known height, stacked by flow.ts. */

import { line } from '../outline.ts';
import type { Palette } from '../palette.ts';
import type { GroupRole, MeasureText, Primitive } from '../primitives.ts';
import { ASCENT, LEADING, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine, wrapped, type Type } from '../text.ts';

export interface TextTools {
  readonly palette: Palette;
  readonly measure: MeasureText;
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Block {
  readonly height: number;
  readonly draw: (at: Spot) => Primitive[];
  /** Must not be the last one in its column. */
  readonly keepsWithNext?: boolean;
  /** Rows of one table share its header, which is repeated at the top of every column they go on in. */
  readonly header?: Block;
  /** The table that this row is of may go on in another column though it would fit whole into one. */
  readonly mayPart?: boolean;
  /** What stands over the repeated header: which table it is that goes on. */
  readonly again?: Block;
  /** Nothing but air: left out at the ends of a column. */
  readonly air?: boolean;
}

/** Long words take more lines, so that nothing beside the column is run into; what is longer than that is cut. */
export function heading(words: string, width: number, { palette, measure }: TextTools): Block {
  const before = 3.5;
  const leading = TEXT.heading * LEADING;
  const lines = headingLines(words, width, measure);
  return {
    height: before + lines.length * leading + 1,
    keepsWithNext: true,
    draw: ({ x, y }) => {
      const baseline = y + before + TEXT.heading * ASCENT;
      const under = baseline + (lines.length - 1) * leading + 1.9;
      const rule = line({ x, y: under }, { x: x + width, y: under });
      const look = { ...HEADING_TYPE, colour: palette.ink };
      return [
        grouped(
          'heading',
          lines.map((text, index) => textLine(text, { x, y: baseline + index * leading }, look)),
        ),
        { kind: 'path', path: rule, stroke: { colour: palette.ink, width: WEIGHT.medium } },
      ];
    },
  };
}

const MOST_HEADING_LINES = 3;

function headingLines(words: string, width: number, measure: MeasureText): readonly string[] {
  const lines = wrapped(words, width, HEADING_TYPE, measure);
  if (lines.length <= MOST_HEADING_LINES) return lines;
  const rest = lines.slice(MOST_HEADING_LINES - 1).join(' ');
  return [...lines.slice(0, MOST_HEADING_LINES - 1), fitted(rest, width, HEADING_TYPE, measure)];
}

export const HEADING_TYPE = { size: TEXT.heading, weight: 'bold' } as const;

export interface ParagraphLook {
  readonly type?: Type;
  readonly colour?: string;
  /** Room below, mm. */
  readonly after?: number;
  readonly keepsWithNext?: boolean;
}

export function paragraph(words: string, width: number, tools: TextTools, look: ParagraphLook = {}): Block {
  const { type = BODY, colour = tools.palette.ink, after = 1.2, keepsWithNext = false } = look;
  const lines = wrapped(words, width, type, tools.measure);
  return {
    height: lines.length * type.size * LEADING + after,
    keepsWithNext,
    draw: (at) => [grouped('paragraph', linesOfText(lines, at, { ...type, colour }))],
  };
}

export const BODY: Type = { size: TEXT.body, weight: 'regular' };
export const BODY_BOLD: Type = { size: TEXT.body, weight: 'bold' };

export function gap(height: number): Block {
  return { height, draw: () => [], air: true };
}

/** Lines under each other; `at` is the top left corner of the first. */
export function linesOfText(
  lines: readonly string[],
  { x, y }: Spot,
  look: Type & { readonly colour: string },
): Primitive[] {
  return lines.map((words, index) =>
    textLine(words, { x, y: y + look.size * (ASCENT + LEADING * index) }, look),
  );
}

export function grouped(role: GroupRole, children: readonly Primitive[]): Primitive {
  return { kind: 'group', role, children };
}
