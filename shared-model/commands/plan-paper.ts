/** The paper of a kept page plan, by hand: which stands hold some, how it is bound, and which page is where. */

import { find, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { BindingKind, KeptPin, KeptStation } from '../document/kept-plan.ts';
import type { Stand } from '../document/records.ts';
import { partPlayedBy } from '../document/parts.ts';
import { t } from '../words/say.ts';
import { refuse, type Command, type Outcome } from './command.ts';
import { changePlan, type OfSetup } from './page-plan.ts';
import { theRecord } from './targets.ts';
import { nameOf } from './words.ts';

/** The paper of one stand. */
export interface PaperOf extends OfSetup {
  readonly stand: Id<'stand'>;
}

/** Of a book a reader sees two pages at a time; of a concertina at least two, and a turn moves it on by two. */
const PAGES_IN_OPENING = 2;

/** Blank paper: on a pair a ridge booklet of one leaf, on a wide desk a book of one leaf, else loose pages. */
export const addPaper: Command<PaperOf> = (document, { setup, stand: id }) => {
  const target = theRecord(document, id, 'stand');
  if (!target.ok) return target;
  const stand = target.record;
  const name = nameOf(document, stand);
  return changePlan(document, setup, t`put paper on ${name}`, (plan) =>
    plan.stations.some(({ station }) => station === id)
      ? refuse(t`${name} has paper of this plan already.`)
      : { ...plan, stations: [...plan.stations, blankPaper(stand)] },
  );
};

/** Its turns and pins go with it. */
export const removePaper: Command<PaperOf> = (document, { setup, stand }) =>
  changePlan(document, setup, t`take the paper off ${standName(document, stand)}`, (plan) => ({
    ...plan,
    stations: plan.stations.filter(({ station }) => station !== stand),
    turns: plan.turns.filter(({ station }) => station !== stand),
    pins: plan.pins.filter(({ station }) => station !== stand),
  }));

export interface SetPage extends PaperOf {
  readonly side: number;
  readonly state: number;
  /** From the reader's left. */
  readonly slot: number;
  /** Null: a blank. */
  readonly page: number | null;
}

/** Null where it is none, or where nobody knows which pages the reader has. */
function beyondPart(
  document: Document,
  { setup, stand, side, page }: PaperOf & { readonly side: number; readonly page: number },
): string | null {
  const id = find(document, stand)?.sides[side]?.reader ?? null;
  const reader = id === null ? undefined : find(document, id);
  const part = reader && partPlayedBy(document, setup, reader.id)?.part;
  if (!reader || !part?.ownPages) return null;
  const last = part.pages.reduce((most, one) => Math.max(most, one.page), 0);
  if (page <= last) return null;
  const name = nameOf(document, reader);
  return last === 1
    ? t`${name} has no page ${page}: the part has one page.`
    : t`${name} has no page ${page}: the part has ${last} pages.`;
}

/** A pin on that place holds the new page from then on; a blank lets it go. Refused beyond the last page of the reader's part. */
export const setPage: Command<SetPage> = (document, { setup, stand, side, state, slot, page }) => {
  const name = standName(document, stand);
  const label = page === null ? t`leave a place blank on ${name}` : t`put page ${page} on ${name}`;
  return changePlan(document, setup, label, (plan) => {
    const place = plan.stations.find(({ station }) => station === stand)?.views[side]?.[state]?.[slot];
    if (place === undefined) return refuse(t`${name} has no such place for a page.`);
    const beyond = page === null ? null : beyondPart(document, { setup, stand, side, page });
    if (beyond !== null) return refuse(beyond);
    const isThere = (pin: KeptPin): boolean =>
      pin.kind === 'page' &&
      pin.station === stand &&
      pin.side === side &&
      pin.state === state &&
      pin.slot === slot;
    return {
      ...plan,
      stations: plan.stations.map((own) =>
        own.station === stand ? withPage(own, [side, state, slot], page) : own,
      ),
      pins: plan.pins.flatMap((pin) =>
        !isThere(pin) || pin.kind !== 'page' ? [pin] : page === null ? [] : [{ ...pin, page }],
      ),
    };
  });
};

export interface SetLeaves extends PaperOf {
  readonly leaves: number;
}

/** More leaves come blank, at the end; fewer lose their pages. */
export const setLeaves: Command<SetLeaves> = (document, { leaves, ...paper }) =>
  changePaper(
    document,
    paper,
    (name) => t`change the leaves on ${name}`,
    (own) => ({ ...own, leaves }),
  );

export interface SetPagesAcross extends PaperOf {
  readonly pages: number;
}

/** Of a ridge booklet on both sides; places are added and taken away at the reader's right. */
export const setPagesAcross: Command<SetPagesAcross> = (document, { pages, ...paper }) =>
  changePaper(
    document,
    paper,
    (name) => t`change the pages side by side on ${name}`,
    (own) => ({
      ...own,
      pagesAcross: own.pagesAcross.map(() => pages),
    }),
  );

export interface SetBinding extends PaperOf {
  readonly kind: BindingKind;
}

/** What the other binding has no place for is lost: loose pages have no leaves, a book and a concertina two pages in view. */
export const setBinding: Command<SetBinding> = (document, { kind, ...paper }) =>
  changePaper(
    document,
    paper,
    (name) => t`change the binding on ${name}`,
    (own) => ({
      ...own,
      kind,
      leaves: kind === 'loose' ? 0 : Math.max(1, own.leaves),
      pagesAcross: own.pagesAcross.map((pages) =>
        kind === 'book' || kind === 'concertina' ? PAGES_IN_OPENING : pages,
      ),
      stackSide: kind === 'ridge' ? own.stackSide : 0,
    }),
  );

export interface SetStackSide extends PaperOf {
  readonly stackSide: 0 | 1;
}

export const setStackSide: Command<SetStackSide> = (document, { stackSide, ...paper }) =>
  changePaper(
    document,
    paper,
    (name) => t`change where the leaves lie at first on ${name}`,
    (own) => (own.kind === 'ridge' ? { ...own, stackSide } : own),
  );

function changePaper(
  document: Document,
  { setup, stand }: PaperOf,
  label: (name: string) => string,
  change: (own: KeptStation) => KeptStation,
): Outcome {
  const name = standName(document, stand);
  return changePlan(document, setup, label(name), (plan) =>
    plan.stations.some(({ station }) => station === stand)
      ? {
          ...plan,
          stations: plan.stations.map((own) => (own.station === stand ? reshaped(change(own)) : own)),
        }
      : refuse(t`${name} has no paper in this plan.`),
  );
}

/** Its views with as many states and places as it says, blank where they are new. */
function reshaped(own: KeptStation): KeptStation {
  const { leaves, pagesAcross } = own;
  // What no file can hold is refused later, by the schema and in its words.
  if (![leaves, ...pagesAcross].every((count) => count >= 0 && count <= 10_000)) return own;
  const pageAt = own.kind === 'concertina' ? pagesInRow(own) : pagesInViews(own);
  return {
    ...own,
    views: pagesAcross.map((pages, side) =>
      Array.from({ length: leaves + 1 }, (_, state) =>
        Array.from({ length: pages }, (__, slot) => pageAt(side, state, slot)),
      ),
    ),
  };
}

type PageAt = (side: number, state: number, slot: number) => number | null;

function pagesInViews({ views }: KeptStation): PageAt {
  return (side, state, slot) => views[side]?.[state]?.[slot] ?? null;
}

/** The pages of a concertina hang together: what a view has in common with the one before stays the same. */
function pagesInRow({ views }: KeptStation): PageAt {
  const row = new Map<number, number>();
  for (const [state, view] of (views[0] ?? []).entries())
    for (const [slot, page] of view.entries())
      if (page !== null) row.set(state * PAGES_IN_OPENING + slot, page);
  return (_, state, slot) => row.get(state * PAGES_IN_OPENING + slot) ?? null;
}

/** In every view that shows this piece of paper: of a wide concertina several do. */
function withPage(
  own: KeptStation,
  [side, state, slot]: readonly [number, number, number],
  page: number | null,
): KeptStation {
  const step = own.kind === 'concertina' ? PAGES_IN_OPENING : Infinity;
  return {
    ...own,
    views: own.views.map((states, here) =>
      states.map((view, index) => {
        const place = state === index ? slot : slot + (state - index) * step;
        return here === side && place >= 0 && place < view.length ? view.with(place, page) : view;
      }),
    ),
  };
}

function blankPaper({ id, form, sides }: Stand): KeptStation {
  const widths = sides.map(({ pagesAcross }) => Math.max(1, pagesAcross));
  const narrowest = widths.reduce((least, width) => Math.min(least, width), Infinity);
  const isBook = form === 'single' && narrowest >= PAGES_IN_OPENING;
  const paper = { station: id, stackSide: 0, views: [] } as const;
  if (form === 'backToBack')
    return reshaped({ ...paper, kind: 'ridge', leaves: 1, pagesAcross: widths.map(() => narrowest) });
  if (isBook) return reshaped({ ...paper, kind: 'book', leaves: 1, pagesAcross: [PAGES_IN_OPENING] });
  return reshaped({ ...paper, kind: 'loose', leaves: 0, pagesAcross: widths });
}

function standName(document: Document, id: string): string {
  const record = document.records.get(id);
  return record ? nameOf(document, record) : t`the stand`;
}
