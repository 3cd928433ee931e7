/**
 * Tables as comma separated values (RFC 4180: CRLF, texts in quotes) that a spreadsheet may open without harm: it takes a
 * cell that begins like a formula for one, in quotes or not, so that a name could run a command (CWE-1236).
 */

/** Numbers stay numbers, and null is an empty cell. */
export type CsvCell = string | number | null;

export interface CsvOptions {
  /** Some spreadsheets take a file without one for their system's own code page. */
  readonly byteOrderMark: boolean;
}

/** Throws when a number is not finite. */
export function csvText(rows: readonly (readonly CsvCell[])[], { byteOrderMark }: CsvOptions): string {
  const lines = rows.map((cells) => `${cells.map(cellText).join(',')}\r\n`);
  return `${byteOrderMark ? '\ufeff' : ''}${lines.join('')}`;
}

function cellText(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'string') return `"${defused(cell).replaceAll('"', '""')}"`;
  if (!Number.isFinite(cell)) throw new Error('a table holds a number that is not finite');
  return String(Math.round(cell * 1000) / 1000 || 0);
}

/** The signs of OWASP's list, in their wide forms too; spaces before them are no protection everywhere. */
const FORMULA = /^[\s\u0000]*[=+\-@＝＋－＠\t\r\u0000]/;

/** An apostrophe before it makes a cell text for every spreadsheet. */
function defused(text: string): string {
  const whole = text.replace(/\p{Surrogate}/gu, '');
  return FORMULA.test(whole) || /^[\t\r\n]/.test(whole) ? `'${whole}` : whole;
}
