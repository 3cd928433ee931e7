/** Which entries of a pack are printed, and in which order. */

import type { PackEntry } from '#model/drawing/pack/pack.ts';

export interface PackChoice {
  /** All entries, as they would follow each other. */
  readonly order: readonly PackEntry[];
  /** Names of those that are printed. */
  readonly printed: ReadonlySet<string>;
}

export function usualChoice(entries: readonly PackEntry[]): PackChoice {
  const usual = entries.filter((entry) => entry.usual);
  return { order: entries, printed: new Set(usual.map(({ name }) => name)) };
}

export function chosenNames({ order, printed }: PackChoice): string[] {
  return order.filter(({ name }) => printed.has(name)).map(({ name }) => name);
}

export function withPrinted(choice: PackChoice, names: readonly string[], isPrinted: boolean): PackChoice {
  const printed = new Set(choice.printed);
  for (const name of names) {
    if (isPrinted) printed.add(name);
    else printed.delete(name);
  }
  return { ...choice, printed };
}

/** One place earlier or later; as it is at the ends. */
export function moved(choice: PackChoice, name: string, by: 1 | -1): PackChoice {
  const at = choice.order.findIndex((entry) => entry.name === name);
  const [entry, other] = [choice.order[at], choice.order[at + by]];
  if (!entry || !other) return choice;
  return { ...choice, order: choice.order.with(at, other).with(at + by, entry) };
}

/** Neighbours of one piece. */
export interface Stretch {
  readonly key: string;
  readonly setup: PackEntry['setup'];
  readonly entries: readonly PackEntry[];
}

export function stretchesOf({ order }: PackChoice): Stretch[] {
  const stretches: { key: string; setup: PackEntry['setup']; entries: PackEntry[] }[] = [];
  for (const entry of order) {
    const last = stretches.at(-1);
    if (last?.setup === entry.setup) last.entries.push(entry);
    else stretches.push({ key: entry.name, setup: entry.setup, entries: [entry] });
  }
  return stretches;
}
