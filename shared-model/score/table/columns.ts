/** Which column of a table means what. */

import { Refusal } from '../problem.ts';
import type { Row } from './cells.ts';
import { t } from '../../words/say.ts';

export type Column = 'page' | 'first bar' | 'last bar' | 'tempo' | 'seconds' | 'beats' | 'free hands';

const NAMES: Readonly<Record<Column, readonly string[]>> = {
  page: ['page', 'p', 'seite'],
  'first bar': [
    ...'first bar, first, from, from bar, first measure'.split(', '),
    ...'erster takt, erster, von, ab, von takt, ab takt'.split(', '),
  ],
  'last bar': [
    ...'last bar, last, to, to bar, last measure'.split(', '),
    ...'letzter takt, letzter, bis, bis takt'.split(', '),
  ],
  tempo: [
    ...'tempo, quarters a minute, qpm, bpm, tempo or seconds'.split(', '),
    ...'viertel je minute, viertel pro minute, tempo oder sekunden'.split(', '),
  ],
  seconds: ['seconds', 'duration', 'time', 's', 'sekunden', 'dauer', 'zeit', 'sek'],
  beats: [
    ...'beats, beats a bar, quarters a bar'.split(', '),
    ...'viertel, viertel je takt, viertel pro takt'.split(', '),
    ...'zählzeiten, zählzeiten je takt, schläge, schläge je takt'.split(', '),
  ],
  'free hands': [
    ...'free hands, free, free bars, rests'.split(', '),
    ...'freie hände, frei, freie takte, pausen'.split(', '),
  ],
};

const WORDS: Readonly<Record<Column, () => string>> = {
  page: () => t`page`,
  'first bar': () => t`first bar`,
  'last bar': () => t`last bar`,
  tempo: () => t`tempo`,
  seconds: () => t`seconds`,
  beats: () => t`beats`,
  'free hands': () => t`free hands`,
};

/** What a column is called in a sentence. */
export function columnWords(column: Column): string {
  return WORDS[column]();
}

/** Of a table that names none. */
const USUAL: readonly Column[] = ['page', 'first bar', 'last bar', 'tempo', 'free hands'];
const NEEDED: readonly Column[] = ['page', 'first bar', 'last bar'];

export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** The first row may name the columns, in any order. Throws `Refusal` for a name that is unknown or missing. */
export function withColumns(rows: readonly Row[]): Table {
  const [head, ...rest] = rows;
  if (!head) throw new Refusal({ code: 'table.empty' });
  if (/^\d/.test(head.cells[0] ?? '')) return { columns: USUAL, rows };
  const columns = head.cells.map((name) => columnNamed(name, head));
  const missing = NEEDED.find((column) => !columns.includes(column));
  if (missing !== undefined)
    throw new Refusal({
      code: 'table.missingColumn',
      column: columnWords(missing),
      found: head.cells.join(', ').slice(0, 200),
    });
  if (rest.length === 0) throw new Refusal({ code: 'table.empty' });
  return { columns, rows: rest };
}

function columnNamed(name: string, { line, cells }: Row): Column {
  const wanted = name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[_\s]+/g, ' ')
    .trim();
  const found = (Object.keys(NAMES) as Column[]).find((column) => NAMES[column].includes(wanted));
  const times = cells.filter((other) => other.toLowerCase() === name.toLowerCase()).length;
  if (found !== undefined && times === 1) return found;
  const all = Object.values(WORDS).map((word) => word());
  const advice = found === undefined ? t`columns are ${all.join(', ')}` : t`it is there twice`;
  throw new Refusal({
    code: 'table.cell',
    row: line,
    column: name.slice(0, 40),
    given: name.slice(0, 40),
    advice,
  });
}

/** Throws `Refusal` for a cell beyond the columns. */
export function refuseSpare({ line, cells }: Row, columns: number): void {
  const extra = cells.slice(columns).find((cell) => cell !== '');
  if (extra === undefined) return;
  throw new Refusal({
    code: 'table.cell',
    row: line,
    column: t`no. ${columns + 1}`,
    given: extra.slice(0, 40),
    advice: t`there is no such column; put a number with a comma into quotes`,
  });
}
