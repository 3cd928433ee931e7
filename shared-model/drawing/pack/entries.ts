/** What a pack of a concert can have in it, each under a name that stays the same from print to print. */

import { find, inSetup, programmeOf, setupsOf, concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import type { Setup } from '../../document/records.ts';
import { housePlaces } from '../../document/seating.ts';
import { judgedPlan } from '../../pages/kept/judged.ts';
import { t } from '../../words/say.ts';
import { oneLine } from '../text.ts';
import { PACK_KINDS, type PackEntry, type PackKind } from './request.ts';

/**
 * Every entry that a pack of the document could have, in the order in which it usually has them: the cover, each
 * setup's sheets with the changeover that leads to it before them, versions of a setup after it, then what is of the whole concert.
 */
export function packEntries(document: Document): PackEntry[] {
  const programme = programmeOf(document);
  const setups = programme.flatMap((setup, index) => {
    const number = String(index + 1);
    const before = programme[index - 1];
    return [
      changeover(document, before ?? null, { setup, number }),
      ...setupEntries(document, { setup, number }, true),
      ...versionsOf(document, setup).flatMap((version, which) =>
        setupEntries(document, { setup: version, number: `${number}${letter(which)}` }, false),
      ),
    ];
  });
  const whole = (kind: PackKind, title: string): PackEntry => ({
    ...{ name: kind, kind, title },
    ...{ setup: null, subject: null, usual: true },
  });
  return [
    whole('cover', t`Cover and programme`),
    ...setups,
    ...programme.slice(-1).map((setup) => lastStrike(document, setup)),
    whole('inventory', t`Inventory and power`),
    whole('cautions', t`Cautions`),
  ];
}

interface NumberedSetup {
  readonly setup: Setup;
  readonly number: string;
}

function versionsOf(document: Document, { id }: Setup): Setup[] {
  return setupsOf(document).filter(({ variantOf }) => variantOf === id);
}

/** The second version of a setup is "b": the setup itself is the first. */
function letter(index: number): string {
  return index < 25 ? String.fromCharCode('b'.charCodeAt(0) + index) : `-${index + 2}`;
}

function changeover(document: Document, before: Setup | null, { setup, number }: NumberedSetup): PackEntry {
  return {
    name: `changeover-${number}`,
    kind: 'changeover',
    title: before ? oneLine(t`Changeover from ${nameOf(document, before)}`) : t`First set-up`,
    setup: setup.id,
    subject: before?.id ?? null,
    usual: true,
  };
}

/** What is struck after the last piece leads to no setup. */
function lastStrike(document: Document, last: Setup): PackEntry {
  const title = oneLine(t`Last strike: ${nameOf(document, last)}`);
  return { name: 'changeover-end', kind: 'changeover', title, setup: null, subject: last.id, usual: true };
}

function nameOf(document: Document, { id, name }: Setup): string {
  return name || labelOf(document, id, id);
}

/** A view or a seat map of one player goes by the number that its sheet has in the house's or the setup's own order. */
function setupEntries(document: Document, { setup, number }: NumberedSetup, usual: boolean): PackEntry[] {
  const entry = (kind: PackKind, title: string, more: Partial<PackEntry> = {}): PackEntry => ({
    name: `${kind}-${number}`,
    ...{ kind, title, setup: setup.id, subject: null, usual },
    ...more,
  });
  const hasHouse = housePlaces(document).length > 0;
  return [
    entry('plot', t`Stage plot`),
    entry('marks', t`Marks`),
    entry('floor', t`Rehearsal floor`),
    ...(hasHouse ? [entry('section', t`Sections`)] : []),
    ...(hasHouse ? [entry('seats', t`Seat map`), ...playerMaps(document, setup.id, entry)] : []),
    ...viewEntries(document, entry),
    ...planEntries(document, setup.id, entry),
    entry('figures', t`Figures and findings`),
  ];
}

type Entry = (kind: PackKind, title: string, more?: Partial<PackEntry>) => PackEntry;

function playerMaps(document: Document, setup: Id<'setup'>, entry: Entry): PackEntry[] {
  return inSetup(document, setup, 'player').map(({ id }, index) => {
    const { name } = entry('seats', '');
    const title = oneLine(t`Seat map: ${labelOf(document, setup, id)}`);
    return entry('seats', title, { name: `${name}-p${index + 1}`, subject: id });
  });
}

function viewEntries(document: Document, entry: Entry): PackEntry[] {
  const places = new Map(housePlaces(document).map((place) => [place.id, place]));
  return concertOf(document).views.flatMap((id, index) => {
    const place = places.get(id);
    if (!place) return [];
    const { name } = entry('view', '');
    return [
      entry('view', oneLine(t`View from ${place.label}`), { name: `${name}-${index + 1}`, subject: id }),
    ];
  });
}

/** What a setup has on paper once a page plan is kept. */
function planEntries(document: Document, setup: Id<'setup'>, entry: Entry): PackEntry[] {
  const planned = judgedPlan(document, setup);
  if (!planned) return [];
  const bound = planned.plan.stations.filter(({ leaves }) => leaves > 0);
  return [
    entry('turns', t`Page plan`),
    entry('cards', t`Cue cards`),
    ...bound.map(({ station }, index) => {
      const { name } = entry('booklet', '');
      const title = oneLine(t`Booklet of ${labelOf(document, setup, station)}`);
      return entry('booklet', title, { name: `${name}-${index + 1}`, subject: station });
    }),
  ];
}

/** What is asked for in words: names of entries, or kinds, which stand for all of that kind that are usual. */
export function chosenEntries(
  document: Document,
  words: readonly string[],
): { readonly entries: PackEntry[] } | { readonly unknown: string } {
  const all = packEntries(document);
  const chosen: PackEntry[] = [];
  for (const word of words) {
    const own = all.filter(({ name }) => name === word);
    const found = own.length > 0 ? own : all.filter(({ kind, usual }) => kind === word && usual);
    if (found.length === 0) return { unknown: word };
    for (const entry of found) if (!chosen.includes(entry)) chosen.push(entry);
  }
  return { entries: chosen };
}

/** Why there is no such sheet, and what there is, in a sentence or two. */
export function unknownSheetWords(document: Document, word: string): string {
  const name = oneLine(word).slice(0, 60);
  const all = packEntries(document);
  const isPlanned = PLANNED.some((kind) => name === kind || name.startsWith(`${kind}-`));
  if (isPlanned && !all.some(({ kind }) => PLANNED.includes(kind))) {
    return t`The pack of this concert has no sheet "${name}": no plan of page turns is kept. Plan the turns first: in the window open the page turns, plan them and keep the plan. Cue cards alone come from the verb turns with --cards.`;
  }
  const groups = PACK_KINDS.flatMap((kind) => {
    const names = all.filter((entry) => entry.kind === kind).map((entry) => entry.name);
    return names.length === 0 ? [] : [names.length < 3 ? names.join(', ') : rangeOf(names)];
  });
  return t`The pack of this concert has no sheet "${name}". It can have ${groups.join('; ')}.`;
}

/** Kinds that there are once a page plan is kept. */
const PLANNED: readonly PackKind[] = ['turns', 'cards', 'booklet'];

/** "seats-1 ... seats-3-p3 (12)". */
function rangeOf(names: readonly string[]): string {
  return `${names[0] ?? ''} ... ${names.at(-1) ?? ''} (${names.length})`;
}

/** The piece that an entry is of, for lists; empty: the whole concert. */
export function pieceOfEntry(document: Document, { setup }: PackEntry): string {
  return setup === null ? '' : find(document, setup)?.name || labelOf(document, setup, setup);
}
