/** What has to be there: everything the setup needs, counted by kind and model. */

import { seatModel } from '../../catalogue/seats.ts';
import { inSetup, placedInSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { kindWord } from '../../document/labels.ts';
import type { PlacedRecord } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { capitalised, instrumentName, modelName } from './marks-table.ts';
import type { PlotSheetRequest } from './request.ts';
import type { Table } from './table.ts';

/** To be ticked with a pen. */
const BOX = '☐';

export function inventoryTable({ document, setup }: Pick<PlotSheetRequest, 'document' | 'setup'>): Table {
  return {
    columns: [
      { title: t`Count`, parts: 12, align: 'end', bold: true },
      { title: t`What`, parts: 90 },
      { title: t`There`, parts: 16 },
      { title: t`Set`, parts: 14 },
    ],
    rows: [...countedThings(document, setup)].map(([what, count]) => [String(count), what, BOX, BOX]),
  };
}

/** How many of each thing the setup needs, by what the crew calls it. */
function countedThings(document: Document, setup: Id<'setup'>): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const add = (thing: string, count = 1): void => {
    const what = capitalised(thing);
    counts.set(what, (counts.get(what) ?? 0) + count);
  };
  for (const record of placedInSetup(document, setup)) addRecord(record, add);
  for (const instrument of inSetup(document, setup, 'instrument')) add(instrumentName(instrument));
  return counts;
}

function addRecord(record: PlacedRecord, add: (what: string, count?: number) => void): void {
  if (record.kind === 'shape' && record.fixed) return;
  if (record.kind === 'player') {
    if (record.chair) add(seatModel(record.chair.model)?.name ?? t`Seat`);
    return;
  }
  const model = modelName(record);
  const what =
    record.kind === 'shape' ? record.name || kindWord(record.kind) : (model ?? kindWord(record.kind));
  // A back-to-back pair is two stands to carry.
  add(what, record.kind === 'stand' ? record.sides.length : 1);
  if (record.kind === 'lamp' && record.cable.length > 0)
    add(record.cableCovered ? t`cable with cover` : t`cable`);
}
