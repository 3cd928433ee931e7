/** Tables while they are typed: a grid for each player, checked together at every change. */

import type { Document } from '#model/document/document.ts';
import { inSetup } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { labelOf } from '#model/document/labels.ts';
import type { Music, Part } from '#model/document/music.ts';
import { scoreOf } from '#model/document/parts.ts';
import type { ScoreRecord } from '#model/document/records.ts';
import type { Outcome } from '#model/score/problem.ts';
import {
  GRID_COLUMNS,
  gridFrom,
  PART_COLUMNS,
  textOfGrid,
  type GridColumn,
  type GridRow,
} from '#model/score/table/grid.ts';
import { partFromTable, tableOfPart } from '#model/score/table/part-of-music.ts';
import { freeTypedId, isTyped, musicFromTables } from '#model/score/table/part-table.ts';
import { tableOf } from '#model/score/table/table-text.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';

export interface TableDraft {
  /** Tells tables apart while others come and go. */
  readonly key: number;
  readonly name: string;
  readonly player: Id<'player'> | null;
  readonly columns: readonly GridColumn[];
  /** A cell for each of the columns. */
  readonly rows: readonly GridRow[];
}

const FIRST_ROWS = 4;

/** The tables that the setup's music was typed in; else an empty one for its first player. */
export function draftsFrom(document: Document, setup: Id<'setup'>): TableDraft[] {
  const score = scoreOf(document, setup);
  if (!score || !isTyped(score.music)) return [emptyDraft(document, setup, [])];
  return score.music.parts.map((part, index) => {
    const grid = gridFrom(tableOf(score.music, part));
    const rows = grid.ok ? grid.value : [];
    return {
      key: index,
      name: part.name,
      player: score.players[index] ?? null,
      columns: GRID_COLUMNS,
      rows: withEmptyEnd(rows, GRID_COLUMNS),
    };
  });
}

/** For the first player who has none yet. */
export function emptyDraft(
  document: Document,
  setup: Id<'setup'>,
  drafts: readonly TableDraft[],
): TableDraft {
  return {
    key: 1 + drafts.reduce((most, { key }) => Math.max(most, key), -1),
    ...forNext(document, setup, (id) => drafts.some(({ player }) => player === id)),
    columns: GRID_COLUMNS,
    rows: Array.from({ length: FIRST_ROWS }, () => emptyRow(GRID_COLUMNS)),
  };
}

function forNext(
  document: Document,
  setup: Id<'setup'>,
  hasOne: (player: Id<'player'>) => boolean,
): Pick<TableDraft, 'name' | 'player'> {
  const next = inSetup(document, setup, 'player').find(({ id }) => !hasOne(id));
  return { name: next ? next.name || labelOf(document, setup, next.id) : '', player: next?.id ?? null };
}

/** Of one part of music that is there already; `part` null: of a further one, with one row for all bars. */
export function partDraft(document: Document, score: ScoreRecord, part: number | null): TableDraft {
  const before = part === null ? null : (score.music.parts[part] ?? null);
  const grid = gridFrom(tableOfPart(score.music, before), PART_COLUMNS);
  const whose =
    part === null
      ? forNext(document, score.setup, (id) => score.players.includes(id))
      : { name: before?.name ?? '', player: score.players[part] ?? null };
  return {
    key: 0,
    ...whose,
    columns: PART_COLUMNS,
    rows: withEmptyEnd(grid.ok ? grid.value : [], PART_COLUMNS),
  };
}

/** Of the draft of a part; `part` null: a further one. */
export function partOfDraft(music: Music, draft: TableDraft, part: number | null): Outcome<Part> {
  const before = part === null ? null : (music.parts[part] ?? null);
  const read = partFromTable(music, textOfGrid(draft.rows, draft.columns), before);
  if (!read.ok) return read;
  const kept = before ?? { id: freeTypedId(music), instruments: [], transpositions: [] };
  return { ok: true, value: { ...kept, ...read.value, name: draft.name.trim() } };
}

export type DraftMusic =
  | { readonly ok: true; readonly music: Music }
  /** `table`: the index of the one to mend. */
  | { readonly ok: false; readonly table: number; readonly problem: string };

export function musicOfDrafts(drafts: readonly TableDraft[], title: string): DraftMusic {
  const tables = drafts.map(({ name, rows }) => ({ name: name.trim(), text: textOfGrid(rows) }));
  const outcome = musicFromTables(tables, title.trim());
  if (outcome.ok) return { ok: true, music: outcome.value };
  return { ok: false, table: outcome.table, problem: problemSentence(outcome.problem) };
}

/** Nothing has been typed yet. */
export function isEmpty({ rows }: TableDraft): boolean {
  return rows.every((row) => row.every((cell) => cell.trim() === ''));
}

/** With a cell typed; there is always an empty row below. */
export function withCell(
  draft: TableDraft,
  [row, column]: readonly [number, number],
  cell: string,
): TableDraft {
  const rows = draft.rows.map((cells, index) => (index === row ? cells.with(column, cell) : cells));
  return withRows(draft, rows);
}

/**
 * What is pasted at a cell; null: it is one cell's text. A block that names columns, or begins in the first of them,
 * goes to the columns it means; any other fills cells to the right and down.
 */
export function withPasted(
  draft: TableDraft,
  [row, column]: readonly [number, number],
  pasted: string,
): TableDraft | { readonly problem: string } | null {
  const text = pasted.replace(/[\r\n]+$/, '');
  if (!/[\t\n]|[;,].*[;,]/.test(text)) return null;
  if (column > 0 && !/^[a-z]/i.test(text)) return withBlock(draft, [row, column], text);
  const grid = gridFrom(text, draft.columns);
  if (!grid.ok) return { problem: problemSentence(grid.problem) };
  return withRows(draft, draft.rows.toSpliced(row, grid.value.length, ...grid.value));
}

function withBlock(draft: TableDraft, [row, column]: readonly [number, number], text: string): TableDraft {
  return text.split(/\r\n?|\n/).reduce<TableDraft>(
    (rows, line, down) =>
      line
        .split('\t')
        .slice(0, draft.columns.length - column)
        .reduce((filled, cell, right) => withCell(filled, [row + down, column + right], cell.trim()), rows),
    draft,
  );
}

/** The whole table from a file. */
export function withFile(draft: TableDraft, text: string): TableDraft | { readonly problem: string } {
  const grid = gridFrom(text, draft.columns);
  return grid.ok ? withRows(draft, grid.value) : { problem: problemSentence(grid.problem) };
}

function withRows(draft: TableDraft, rows: readonly GridRow[]): TableDraft {
  return { ...draft, rows: withEmptyEnd(rows, draft.columns) };
}

function withEmptyEnd(rows: readonly GridRow[], columns: readonly GridColumn[]): readonly GridRow[] {
  return rows.at(-1)?.every((cell) => cell === '') === true ? rows : [...rows, emptyRow(columns)];
}

function emptyRow(columns: readonly GridColumn[]): GridRow {
  return columns.map(() => '');
}
