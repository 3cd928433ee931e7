/** What the whole concert needs, as the inventory says it on paper and in a table for a spreadsheet. */

import { inSetup, programmeOf, type Document } from '../../document/document.ts';
import type { Setup } from '../../document/records.ts';
import { stockCheck } from '../../programme/stock-check.ts';
import { thingName } from '../../programme/thing.ts';
import { capitalised, instrumentName } from './marks-table.ts';

export interface NeedLine {
  readonly what: string;
  /** In the order of the programme; what stays for the whole concert is counted in each. */
  readonly needs: readonly number[];
  /** The most that have to be there at once. */
  readonly most: number;
}

export interface StockedLine extends NeedLine {
  /** null: nobody counted things of this kind. */
  readonly owned: number | null;
  readonly borrowed: number | null;
  readonly missing: number | null;
}

export interface ConcertNeeds {
  /** Pieces as they are played; versions of a setup that are not, are left out. */
  readonly setups: readonly Setup[];
  readonly things: readonly StockedLine[];
  readonly instruments: readonly NeedLine[];
}

export function concertNeeds(document: Document): ConcertNeeds {
  const setups = programmeOf(document);
  return { setups, things: stockedLines(document, setups), instruments: instrumentLines(document, setups) };
}

function stockedLines(document: Document, played: readonly Setup[]): StockedLine[] {
  const { setups, lines } = stockCheck(document);
  const columns = played.map(({ id }) => setups.findIndex((setup) => setup.id === id));
  const of = (counts: readonly number[]): number[] => columns.map((column) => counts[column] ?? 0);
  return lines.map(({ thing, needs, most, owned, borrowed, short }) => ({
    what: capitalised(thingName(thing)),
    ...{ needs: of(needs), most, owned, borrowed },
    missing: owned === null ? null : mostOf(of(short)),
  }));
}

function instrumentLines(document: Document, played: readonly Setup[]): NeedLine[] {
  const counts = played.map(({ id }) => countsOf(inSetup(document, id, 'instrument').map(instrumentName)));
  const names = [...new Set(counts.flatMap((each) => [...each.keys()]))];
  return names.map((name) => {
    const needs = counts.map((each) => each.get(name) ?? 0);
    return { what: capitalised(name), needs, most: mostOf(needs) };
  });
}

function mostOf(counts: readonly number[]): number {
  return counts.reduce((most, count) => Math.max(most, count), 0);
}

function countsOf(names: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return counts;
}
