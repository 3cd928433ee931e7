/** Whether there is enough of everything: what each setup needs, and what the venue has or borrows. */

import { allOf, setupsOf, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Setup, Stock, StockItem } from '../document/records.ts';
import { thingOfStock, type Thing } from './thing.ts';
import { isPooled } from './storing.ts';
import { stayingUnits, unitsOf } from './units.ts';

export interface StockLine {
  readonly thing: Thing;
  /** In the order of `StockCheck.setups`; what stays for the whole concert is counted in each. */
  readonly needs: readonly number[];
  /** The most that any setup of the programme needs. */
  readonly most: number;
  /** Of this very model; null: nobody counted things of this kind. */
  readonly owned: number | null;
  readonly borrowed: number | null;
  /** What is missing in each setup, when things of any model have filled in where they can. */
  readonly short: readonly number[];
  /** What waits off the platform in each setup; null: not known. */
  readonly waiting: readonly (number | null)[];
  readonly rows: readonly Id<'stock'>[];
}

export interface StockCheck {
  /** All setups, variants too, in programme order. */
  readonly setups: readonly Setup[];
  readonly lines: readonly StockLine[];
  /** Things that fill in for any model of their kind. */
  readonly ofAnyModel: readonly {
    readonly item: StockItem;
    readonly count: number;
    readonly rows: readonly Id<'stock'>[];
  }[];
}

export interface Shortage {
  readonly thing: Thing;
  readonly setup: Setup;
  readonly needed: number;
  readonly short: number;
}

export function stockCheck(document: Document): StockCheck {
  const setups = setupsOf(document);
  const needs = setups.map((setup) => needsOf(document, setup.id));
  const rows = allOf(document, 'stock');
  const things = thingsIn(needs, rows);
  const spare = rows.filter(isForAny);
  const left = setups.map(() => new Map(counted(spare)));
  const lines = things.map((thing): StockLine => {
    const own = rows.filter((row) => !isForAny(row) && keyOf(thingOfStock(row)) === keyOf(thing));
    const isCounted = rows.some(({ item }) => item === thing.item);
    const [owned, borrowed] = [total(own, 'owned'), total(own, 'borrowed')];
    const needed = needs.map((each) => each.get(keyOf(thing))?.count ?? 0);
    const missing = needed.map((count) => Math.max(0, count - owned - borrowed));
    const short = missing.map((count, index) =>
      isCounted ? count - taken(left[index], thing.item, count) : 0,
    );
    return {
      thing,
      needs: needed,
      most: setups.reduce((m, { variantOf }, index) => (variantOf ? m : Math.max(m, needed[index] ?? 0)), 0),
      owned: isCounted ? owned : null,
      borrowed: isCounted ? borrowed : null,
      short,
      waiting: needed.map((count) => (isCounted ? Math.max(0, owned + borrowed - count) : null)),
      rows: own.map(({ id }) => id),
    };
  });
  return { setups, lines, ofAnyModel: anyOf(spare) };
}

export function shortages({ setups, lines }: StockCheck): Shortage[] {
  return lines.flatMap(({ thing, needs, short }) =>
    setups.flatMap((setup, index): Shortage[] => {
      const missing = short[index] ?? 0;
      return missing > 0 ? [{ thing, setup, needed: needs[index] ?? 0, short: missing }] : [];
    }),
  );
}

/** How many things of one line are missing for the setups that are played, at the setup that lacks most; variants do not count. */
export function missingOf({ setups }: StockCheck, { short }: StockLine): number {
  return setups.reduce(
    (most, { variantOf }, index) => (variantOf === null ? Math.max(most, short[index] ?? 0) : most),
    0,
  );
}

/** Things that have to be found before the evening can be played. */
export function thingsMissing(check: StockCheck): number {
  return check.lines.reduce((sum, line) => sum + missingOf(check, line), 0);
}

type Needs = ReadonlyMap<string, { readonly thing: Thing; readonly count: number }>;

/** What is on the platform in this setup; each lamp with a cable needs one. */
function needsOf(document: Document, setup: Id<'setup'>): Needs {
  const needs = new Map<string, { thing: Thing; count: number }>();
  const add = (thing: Thing): void => {
    const known = needs.get(keyOf(thing));
    needs.set(keyOf(thing), { thing, count: (known?.count ?? 0) + 1 });
  };
  for (const { thing, settings } of [...unitsOf(document, setup), ...stayingUnits(document, setup)]) {
    add(thing);
    if ((settings.cable?.length ?? 0) > 0) add({ item: 'cable', model: '' });
  }
  return needs;
}

const keyOf = ({ item, model }: Thing): string => (isPooled(item) ? item : `${item}|${model.toLowerCase()}`);

/** A row without a model of a kind that has models. */
function isForAny(row: Stock): boolean {
  return !isPooled(row.item) && thingOfStock(row).model === '';
}

/** Needed or in stock, in the order of the stock's kinds as they are met. */
function thingsIn(needs: readonly Needs[], rows: readonly Stock[]): Thing[] {
  const things = new Map<string, Thing>();
  for (const each of needs) for (const [key, { thing }] of each) if (!things.has(key)) things.set(key, thing);
  for (const row of rows) {
    const thing = thingOfStock(row);
    if (!isForAny(row) && !things.has(keyOf(thing))) things.set(keyOf(thing), thing);
  }
  return [...things.values()].sort((a, b) => ITEMS.indexOf(a.item) - ITEMS.indexOf(b.item));
}

const ITEMS: readonly StockItem[] = [
  'stand',
  'seat',
  'instrumentStand',
  'table',
  'piano',
  'largeInstrument',
  'lamp',
  'cable',
  'riser',
  'shape',
];

function total(rows: readonly Stock[], what: 'owned' | 'borrowed'): number {
  return rows.reduce((sum, row) => sum + row[what], 0);
}

function counted(rows: readonly Stock[]): [StockItem, number][] {
  return anyOf(rows).map(({ item, count }) => [item, count]);
}

function anyOf(rows: readonly Stock[]) {
  return [...new Set(rows.map(({ item }) => item))].map((item) => {
    const alike = rows.filter((row) => row.item === item);
    return { item, count: total(alike, 'owned') + total(alike, 'borrowed'), rows: alike.map(({ id }) => id) };
  });
}

/** How many of `count` the things of any model still fill in for; they are gone then. */
function taken(left: Map<StockItem, number> | undefined, item: StockItem, count: number): number {
  const there = Math.min(count, left?.get(item) ?? 0);
  left?.set(item, (left.get(item) ?? 0) - there);
  return there;
}
