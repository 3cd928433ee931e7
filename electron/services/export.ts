/** What the venue's and the crew's other programs take: the plan as DXF, marks and inventory as CSV. */

import type { ExportRequest } from '#contract/contract.ts';
import { find, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import { csvText, type CsvOptions } from '#model/drawing/csv.ts';
import { inventoryRows, markRows } from '#model/drawing/csv-tables.ts';
import { planToDxf } from '#model/drawing/to-dxf.ts';
import { readDocument } from '#model/file-format/read.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';

/** The bytes of the file. Throws `FaultError` when the text is no document, or it has no such setup. */
export function renderExport({ text, setup, what }: ExportRequest): Uint8Array {
  const read = readDocument(text);
  if (!read.ok) throw new FaultError('export.notADocument', read.problem.message);
  const id = asId<'setup'>(setup);
  if (!find(read.document, id))
    throw new FaultError('export.noSetup', t`The concert has no setup "${setup}".`);
  return Buffer.from(textOf(read.document, id, what));
}

/** Spreadsheets read names in every language only from a file with a byte order mark. */
const MARKED: CsvOptions = { byteOrderMark: true };

export function textOf(
  document: Document,
  setup: Id<'setup'>,
  what: ExportRequest['what'],
  options: CsvOptions = MARKED,
): string {
  switch (what) {
    case 'dxf':
      return planToDxf(document, setup);
    case 'marks':
      return csvText(markRows(document, setup), options);
    case 'inventory':
      return csvText(inventoryRows(document), options);
  }
}
