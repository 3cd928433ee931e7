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
  return placesOf(document, stockRowsFor(document, thing));
}

/** The rows of the stock that say where this thing waits: those of its model, else those of any model. */
export function stockRowsFor(document: Document, thing: Thing): Stock[] {
  const rows = allOf(document, 'stock').filter(({ item }) => item === thing.item);
  const own = rows.filter((row) => isPooled(row.item) || sameName(thingOfStock(row).model, thing.model));
  const any = rows.filter((row) => thingOfStock(row).model === '');
  return placesOf(document, own).length > 0 ? own : any;
}

/** Whether things of this model are taken from what these rows count. */
export function isCountedIn(rows: readonly Stock[], thing: Thing): boolean {
  return rows.some((row) => {
    const { item, model } = thingOfStock(row);
    return item === thing.item && (isPooled(item) || model === '' || sameName(model, thing.model));
  });
}

function placesOf(document: Document, rows: readonly Stock[]): Storage[] {
  return [...new Set(rows.flatMap(({ storage }) => find(document, storage) ?? []))];
}

function sameName(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}
