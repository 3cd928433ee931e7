/** Where things wait that are not on the platform. */

import { allOf, find, type Document } from '../document/document.ts';
import type { Stock, StockItem, Storage } from '../document/records.ts';
import { thingOfStock, type Thing } from './thing.ts';

/** Risers, lamps and cables have no models: they are counted together, whatever they are called. */
export function isPooled(item: StockItem): boolean {
  return item === 'riser' || item === 'lamp' || item === 'cable';
}

/** All places where this thing may wait: those of its model, else those of any model; none: nobody said. */
export function storagesFor(document: Document, thing: Thing): Storage[] {
  const rows = allOf(document, 'stock').filter(({ item }) => item === thing.item);
  const own = rows.filter((row) => isPooled(row.item) || sameName(thingOfStock(row).model, thing.model));
  const any = rows.filter((row) => thingOfStock(row).model === '');
  const said = placesOf(document, own);
  return said.length > 0 ? said : placesOf(document, any);
}

function placesOf(document: Document, rows: readonly Stock[]): Storage[] {
  return [...new Set(rows.flatMap(({ storage }) => find(document, storage) ?? []))];
}

function sameName(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}
