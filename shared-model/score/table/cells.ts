/** Rows and cells of a table pasted from a spreadsheet: tabs, semicolons or commas between them. RFC 4180 for quotes. */

export interface Row {
  /** Line of the text in which it begins, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** Rows that hold anything; cells without the white space round them. */
export function rowsOf(text: string): Row[] {
  const plain = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const separator = separatorOf(plain);
  const rows: Row[] = [];
  let [line, at] = [1, 0];
  while (at < plain.length) {
    const { cells, next } = rowAt(plain, at, separator);
    if (cells.some((cell) => cell !== '')) rows.push({ line, cells });
    line += plain.slice(at, next).split('\n').length - 1;
    at = next;
  }
  return rows;
}

/** A tab anywhere in the first line, otherwise a semicolon: where commas stand in numbers, semicolons part the cells. */
function separatorOf(text: string): string {
  const [first = ''] = text.split('\n', 1);
  const bare = first.replace(/"[^"]*"/g, '');
  return ['\t', ';'].find((mark) => bare.includes(mark)) ?? ',';
}

function rowAt(text: string, from: number, separator: string): { cells: string[]; next: number } {
  const cells: string[] = [];
  let at = from;
  for (;;) {
    const { cell, end } = cellAt(text, at, separator);
    cells.push(cell.trim());
    if (text[end] !== separator) return { cells, next: end + 1 };
    at = end + 1;
  }
}

/** `end`: of the cell, at a separator, a line break or the end of the text. */
function cellAt(text: string, from: number, separator: string): { cell: string; end: number } {
  let at = from;
  while (text[at] === ' ') at += 1;
  if (text[at] === '"') return quotedCell(text, at + 1, separator);
  const end = endOfCell(text, from, separator);
  return { cell: text.slice(from, end), end };
}

function endOfCell(text: string, from: number, separator: string): number {
  let at = from;
  while (at < text.length && text[at] !== separator && text[at] !== '\n') at += 1;
  return at;
}

/** Two quotes stand for one; what follows the closing one is dropped. */
function quotedCell(text: string, from: number, separator: string): { cell: string; end: number } {
  let cell = '';
  let at = from;
  for (; at < text.length; at += 1) {
    if (text[at] !== '"') cell += text[at];
    else if (text[at + 1] === '"') {
      cell += '"';
      at += 1;
    } else break;
  }
  return { cell, end: endOfCell(text, at, separator) };
}
