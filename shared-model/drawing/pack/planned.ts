/** What a kept page plan puts on paper: the plan itself, cue cards, and how booklets are put together. */

import { labelOf } from '../../document/labels.ts';
import { judgedPlan } from '../../pages/kept/judged.ts';
import { brokenRulesWords } from '../../pages/planner/broken-rules.ts';
import type { StationPlan, Turn } from '../../pages/planner/plan.ts';
import { barWords } from '../../score/words/bar-words.ts';
import { clockWords } from '../../score/words/clock-words.ts';
import { scoreOf } from '../../document/parts.ts';
import { stripOf } from '../../pages/bindings/strip.ts';
import { language } from '../../words/catalogue.ts';
import { fixed } from '../../words/numbers.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
import { assemblyBlocks } from '../booklet/assembly.ts';
import { layoutOf } from '../booklet/layout.ts';
import type { Size } from '../booklet/order.ts';
import { pageRoom } from '../booklet/page-room.ts';
import { bookletOfStation } from '../booklet/planned.ts';
import { cardSheets } from '../cards/card-sheets.ts';
import type { PlannedPaper } from '../cards/order.ts';
import { pageOf, paperNamed } from '../papers.ts';
import { paragraph, type Block } from '../sheet/blocks.ts';
import { handWord } from '../sheet/figures.ts';
import { bodyOf } from '../sheet/page-frame.ts';
import { tableSection } from '../sheet/sections.ts';
import type { Table } from '../sheet/table.ts';
import { NO_PAGES, packSheet, textPages } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';
import { shifted } from './view.ts';

function plannedOf({ document }: PackRequest, { setup }: PackEntry): PlannedPaper | null {
  const judged = setup === null ? null : judgedPlan(document, setup);
  return judged && setup !== null ? { document, setup, instance: judged.instance, plan: judged.plan } : null;
}

/** Where which page is, and every turn: for whoever leads the rehearsal. */
export function turnsPages(request: PackRequest, entry: PackEntry): EntryPages {
  const planned = plannedOf(request, entry);
  if (!planned) return NO_PAGES;
  return textPages(request, entry, (width) => [
    ...warning(planned, request, width),
    ...tableSection(turnsWords(), turnsTable(planned), width, request),
    ...planned.plan.stations.flatMap((station) => stationSection(planned, request, station, width)),
  ]);
}

const turnsWords = () => ({
  title: t`Turns`,
  intro: t`Counted in strict time from the score: try every turn in rehearsal. To spare: what is left of the time in which the hand is free.`,
});

function warning(planned: PlannedPaper, request: PackRequest, width: number): Block[] {
  const words = brokenRulesWords(planned);
  return words === null ? [] : [paragraph(words, width, request, { colour: request.palette.warning })];
}

function turnsTable(planned: PlannedPaper): Table {
  const { document, setup, plan } = planned;
  const name = (id: string): string => labelOf(document, setup, id);
  return {
    columns: [
      { title: numberTitle(), parts: 11, align: 'end', bold: true },
      { title: t`Time`, parts: 15, align: 'end' },
      { title: t`Bar`, parts: 34 },
      { title: t`Who`, parts: 40 },
      { title: t`Where`, parts: 34 },
      { title: t`Hand`, parts: 14 },
      { title: t`To spare`, parts: 20, align: 'end' },
    ],
    rows: plan.turns.map((turn, index) => [
      String(index + 1),
      clockWords(turn.at),
      turn.bar === null ? '' : barWords(turn.bar, turn.pass),
      name(turn.player),
      turn.direction === 'back' ? t`${name(turn.station)}, back` : name(turn.station),
      handWord(turn.hand),
      spareWords(turn),
    ]),
  };
}

/** The English word is one for what is done to a thing as well, which German has another for. */
function numberTitle(): string {
  return language() === 'de' ? t`No.` : 'Turn';
}

function spareWords({ margin }: Turn): string {
  return Number.isFinite(margin) ? `${fixed(Math.max(0, margin), 1)} s` : t`any`;
}

interface StationWords {
  readonly planned: PlannedPaper;
  readonly station: StationPlan;
}

function stationSection(
  planned: PlannedPaper,
  request: PackRequest,
  station: StationPlan,
  width: number,
): Block[] {
  const { document, setup } = planned;
  const { leaves } = station;
  const paper = [KINDS[station.kind](), ngettext(msgid`${leaves} leaf`, `${leaves} leaves`, leaves)];
  const intro = t`${paper.join(', ')}. Pages from the reader’s left to his right; a dash is an empty place.`;
  const words = { title: t`Pages on ${labelOf(document, setup, station.station)}`, intro };
  return tableSection(words, viewsTable({ planned, station }), width, request);
}

const KINDS: Readonly<Record<StationPlan['kind'], () => string>> = {
  loose: () => t`Loose pages side by side`,
  book: () => t`A book`,
  concertina: () => t`A concertina`,
  ridge: () => t`A booklet over the ridge`,
};

/** One row a state: at first, and after each leaf. */
function viewsTable({ planned, station }: StationWords): Table {
  const { document, setup, instance } = planned;
  const sides = instance.stations.find(({ id }) => id === station.station)?.sides ?? [];
  const read = station.views.flatMap((views, side) => {
    const reader = sides[side]?.reader ?? null;
    return reader === null ? [] : [{ views, reader }];
  });
  return {
    columns: [
      { title: t`Leaves turned`, parts: 26, align: 'end', bold: true },
      ...read.map(({ reader }) => ({ title: labelOf(document, setup, reader), parts: 60 })),
    ],
    rows: Array.from({ length: station.leaves + 1 }, (_, state) => [
      String(state),
      ...read.map(({ views }) => (views[state] ?? []).map((page) => page ?? '–').join('   ')),
    ]),
  };
}

/** Cards to be cut out of the sheet; round them stays the border with what the sheet is. */
export function cardPages(request: PackRequest, entry: PackEntry): EntryPages {
  const planned = plannedOf(request, entry);
  if (!planned) return NO_PAGES;
  const lying = bodyOf(pageOf(request.paper, 'landscape'));
  const { sheets } = cardSheets({
    ...planned,
    units: request.units,
    paper: { width: lying.height, height: lying.width },
    tools: request,
  });
  const isLying = (sheets[0]?.width ?? 0) > (sheets[0]?.height ?? 0);
  const page = pageOf(request.paper, isLying ? 'landscape' : 'portrait');
  const body = bodyOf(page);
  return {
    count: sheets.length,
    notes: [],
    draw: (index, numbering) => {
      const children = shifted(sheets[index]?.children ?? [], body.x, body.y);
      const sheet = packSheet({ request, entry, page, index, scale: null }, children, numbering);
      return { sheet, notes: [] };
    },
  };
}

/** How the booklet of one stand is folded and taped; its panels are printed by themselves, at true size. */
export function bookletPages(request: PackRequest, entry: PackEntry): EntryPages {
  const planned = plannedOf(request, entry);
  const station = planned?.plan.stations.find((each) => each.station === entry.subject);
  if (!planned || !station) return NO_PAGES;
  const binding = bookletOfStation(planned, station);
  const strip = stripOf(binding.binding);
  for (const paper of [request.paper, ...LARGER]) {
    const common = { page: pageRoom(pageSizes(planned)), sizeOf: () => null, tools: request };
    const order = { ...binding, ...common, paper: paperNamed(paper) };
    const layout = layoutOf(order, strip);
    if (layout)
      return textPages(request, entry, (width) => assemblyBlocks(order, strip, layout, { width, factor: 1 }));
  }
  return { ...NO_PAGES, notes: [t`${entry.title}: its pages go on no paper that is offered.`] };
}

/** What panels are printed on when they do not go on the pack's own paper. */
const LARGER = ['A3', 'Tabloid'] as const;

function pageSizes({ document, setup }: PlannedPaper): Size[] {
  const pdfs = scoreOf(document, setup)?.pdfs ?? [];
  return pdfs.flatMap((pdf) => pdf?.sizes ?? []);
}
