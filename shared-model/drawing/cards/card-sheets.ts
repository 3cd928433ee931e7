/**
 * A cue card for each player: what he sets where, which page is where from his left to his right, and every turn that he makes or
 * that is made for him. A part with many turns goes on over several cards.
 */

import { brokenRulesWords } from '../../pages/planner/broken-rules.ts';
import { runOf, type Run } from '../../pages/running/run.ts';
import { concertOf, find, placedInSetup } from '../../document/document.ts';
import { asId } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { language } from '../../words/catalogue.ts';
import { t } from '../../words/say.ts';
import { line } from '../outline.ts';
import { shortMarks } from '../plan/short-marks.ts';
import type { Box, Primitive, Sheet } from '../primitives.ts';
import { gap, grouped, heading, paragraph, type Block } from '../sheet/blocks.ts';
import { flow } from '../sheet/flow.ts';
import { ASCENT, LEADING, TEXT, WEIGHT } from '../style.ts';
import { fitted, oneLine, textLine, type Type } from '../text.ts';
import { cardGrid, cutLines } from './imposition.ts';
import { momentsOf, type Moment } from './moments.ts';
import type { CardPlace, CardSheets, CardsOrder } from './order.ts';
import { paperOf } from './own-paper.ts';
import { entryBlock, headerBlock, pagesWidth, type Columns, type Entry } from './rows.ts';
import { settingOf } from './setting.ts';
import { wordsOfMoment, type Reader } from './words.ts';

export type { CardPlace, CardSheets, CardsOrder } from './order.ts';

/** From the edges of a card: printers leave 4 to 5 mm white (common practice, no source). */
const MARGIN = 8;
const HEAD = { name: TEXT.heading, piece: TEXT.small } as const;
const HEAD_HEIGHT = HEAD.name * LEADING + HEAD.piece * LEADING + 3;

/** Players in the order of the instance; their cards one after the other, on as few sheets as hold them. */
export function cardSheets(order: CardsOrder): CardSheets {
  const grid = cardGrid(order.paper);
  const [first] = grid.cards;
  if (!first) throw new Error('a sheet has at least one card');
  const run = runOf(order.instance, order.plan, order);
  const warning = brokenRulesWords(order);
  const drawn = order.instance.players.flatMap(({ id }) =>
    cardsOf({ order, run, warning, player: id }, first).map((card, index) => ({
      player: id,
      number: index + 1,
      card,
    })),
  );
  const perSheet = grid.cards.length;
  const count = Math.ceil(drawn.length / perSheet);
  const sheets = Array.from({ length: count }, (_, index): Sheet => {
    const here = drawn.slice(index * perSheet, (index + 1) * perSheet);
    const children = here.flatMap(({ card }, place) => card(grid.cards[place] ?? first));
    const title = oneLine(t`${pieceOf(order)}: cue cards, sheet ${index + 1}`);
    return { title, ...grid.sheet, children: [...children, ...cutLines(grid, order.tools.palette)] };
  });
  const cards = drawn.map(({ player, number }, index): CardPlace => ({
    player,
    number,
    sheet: Math.floor(index / perSheet),
  }));
  return { sheets, cards };
}

/** Draws a card where it belongs on its sheet. */
type Card = (box: Box) => Primitive[];

interface Owner {
  readonly order: CardsOrder;
  readonly run: Run;
  /** On every card; null: nothing is wrong with the plan. */
  readonly warning: string | null;
  readonly player: string;
}

function cardsOf(owner: Owner, size: Box): Card[] {
  const width = size.width - 2 * MARGIN;
  const warning = warningBlock(owner, width);
  const head = HEAD_HEIGHT + (warning?.height ?? 0);
  const inner = (box: Box): Box => ({
    x: box.x + MARGIN,
    y: box.y + MARGIN + head,
    width: box.width - 2 * MARGIN,
    height: box.height - 2 * MARGIN - head,
  });
  const blocks = blocksOf(owner, width);
  const count = flow(blocks, inner(size)).length;
  return Array.from({ length: count }, (_, index): Card => (box) => [
    ...headOf(owner, { box, number: index + 1, count }),
    ...(warning?.draw({ x: box.x + MARGIN, y: box.y + MARGIN + HEAD_HEIGHT }) ?? []),
    ...(flow(blocks, inner(box))[index] ?? []),
  ]);
}

function warningBlock({ order: { tools }, warning }: Owner, width: number): Block | null {
  if (warning === null) return null;
  const type = { size: TEXT.small, weight: 'bold' } as const;
  return paragraph(warning, width, tools, { type, colour: tools.palette.warning });
}

interface HeadPlace {
  readonly box: Box;
  readonly number: number;
  readonly count: number;
}

function headOf({ order, player }: Owner, { box, number, count }: HeadPlace): Primitive[] {
  const { palette, measure } = order.tools;
  const nameType: Type = { size: HEAD.name, weight: 'bold' };
  const pieceType: Type = { size: HEAD.piece, weight: 'regular' };
  const which = count === 1 ? t`cue card` : t`cue card ${number} of ${count}`;
  const [left, right] = [box.x + MARGIN, box.x + box.width - MARGIN];
  const room = right - left - measure(which, pieceType.size, pieceType.weight) - 4;
  const label = labelOf(order.document, order.setup, player);
  const goesOn = number === 1 ? '' : t`, continued`;
  const name = `${fitted(label, room - measure(goesOn, nameType.size, nameType.weight), nameType, measure)}${goesOn}`;
  const baseline = box.y + MARGIN + HEAD.name * ASCENT;
  const below = baseline + HEAD.name * 0.35 + HEAD.piece * LEADING;
  const rule = below + 2;
  return [
    grouped('title', [
      textLine(name, { x: left, y: baseline }, { ...nameType, colour: palette.ink }),
      textLine(which, { x: right, y: baseline }, { ...pieceType, colour: palette.ink, anchor: 'end' }),
    ]),
    grouped('paragraph', [
      textLine(
        fitted(concertWords(order), right - left, pieceType, measure),
        { x: left, y: below },
        { ...pieceType, colour: palette.ink },
      ),
    ]),
    {
      kind: 'path',
      path: line({ x: left, y: rule }, { x: right, y: rule }),
      stroke: { colour: palette.ink, width: WEIGHT.bold },
    },
  ];
}

function pieceOf({ document, setup }: CardsOrder): string {
  return find(document, setup)?.name || labelOf(document, setup, setup);
}

function concertWords(order: CardsOrder): string {
  const { name, date, revision } = concertOf(order.document);
  return [pieceOf(order), name, date, revision === '' ? '' : t`revision ${revision}`]
    .filter(Boolean)
    .join(' · ');
}

function blocksOf(owner: Owner, width: number): Block[] {
  const { tools } = owner.order;
  return [
    heading(t`Set up`, width, tools),
    ...settingBlocks(owner, width),
    ...sidesBlocks(owner, width),
    heading(t`Pages and turns`, width, tools),
    paragraph(t`Counted in strict time from the score: try every turn in rehearsal.`, width, tools, {
      type: { size: TEXT.small, weight: 'regular' },
      keepsWithNext: true,
    }),
    ...momentBlocks(owner, width),
  ];
}

/** English says its sides as the player has them; where they are said as from the house, he has to be told. */
function sidesBlocks({ order: { tools } }: Owner, width: number): Block[] {
  if (language() === 'en') return [];
  const words = t`SL, SR: left and right of one who faces the house; US: upstage, DS: downstage.`;
  return [gap(1), paragraph(words, width, tools, { type: { size: TEXT.small, weight: 'regular' } })];
}

const MARK_COLUMN = 9;
const TIME_COLUMN = 17;

function settingBlocks({ order, run, player }: Owner, width: number): Block[] {
  const inScore = run.swaps.some((swap) => swap.player === player);
  const columns: Columns = { width, left: MARK_COLUMN, right: 0 };
  return settingOf(order, player, inScore).map(({ mark, words }) =>
    entryBlock({ left: [mark], words: '', more: [words], warning: null, shown: [] }, columns, order.tools),
  );
}

function momentBlocks({ order, run, player }: Owner, width: number): Block[] {
  const { document, setup, tools } = order;
  const paper = paperOf(order, player);
  const marks = shortMarks(placedInSetup(document, setup));
  const stations = paper.map(({ plan, side }) => ({
    mark: marks.get(asId<'stand'>(plan.station)) ?? '',
    pages: plan.views[side]?.reduce((most, view) => Math.max(most, view.length), 0) ?? 0,
  }));
  const columns: Columns = {
    width,
    left: TIME_COLUMN,
    right: pagesWidth(stations.map(({ pages }) => pages)),
  };
  const header = headerBlock([t`When`, t`What, and what lies before you then`], stations, columns, tools);
  const again = heading(t`Pages and turns, continued`, width, tools);
  return momentsOf(order, run, player).map((moment) => ({
    ...entryBlock(entryOf({ planned: order, run, player }, moment), columns, tools, header),
    again,
  }));
}

function entryOf(reader: Reader, moment: Moment): Entry {
  const { when, what, more, warning } = wordsOfMoment(reader, moment);
  return { left: when, words: what, more, warning, shown: moment.kind === 'swap' ? [] : moment.shown };
}
