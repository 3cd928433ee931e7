/**
 * What stands at the edges of a sheet for the one who puts the booklet together. It is to be read while the sheets lie
 * one below the other in their order, so it stands upright on every sheet, even where the panel stands on its head.
 */

import type { Edge, Joint, Panel, Strip } from '../../pages/bindings/strip.ts';
import { t } from '../../words/say.ts';
import { rectangle } from '../outline.ts';
import type { Box, Primitive } from '../primitives.ts';
import { TEXT, WEIGHT } from '../style.ts';
import type { Type } from '../text.ts';
import type { Layout, Piece } from './layout.ts';
import { BAND, CLEAR, note, uprightNote } from './note.ts';
import type { BookletOrder } from './order.ts';

type FlatEdge = 'top' | 'bottom' | 'left' | 'right';

const TYPE: Type = { size: TEXT.small, weight: 'bold' };
const PLAIN: Type = { size: TEXT.small, weight: 'regular' };

export interface SheetOf {
  readonly strip: Strip;
  readonly layout: Layout;
  readonly piece: Piece;
  /** From 1. */
  readonly number: number;
}

export function assemblyMarks(order: BookletOrder, at: SheetOf): Primitive[] {
  const { layout, piece, number } = at;
  const panel = panelOf(at);
  const { box } = layout;
  const edges = new Map(edgeWords(order, at));
  const drawn = [...edges].map(([edge, words]) => edgeNote(words, edge, box, order));
  const headEdge = flatEdge('head', panel.upright);
  const y = headEdge === 'top' ? box.y + CLEAR + TEXT.small : box.y + box.height - CLEAR;
  const side = (box.width - BAND.middle) / 2 - CLEAR;
  const count = t`sheet ${number} of ${layout.pieces.length}`;
  drawn.push(
    note([count], { x: box.x + box.width - CLEAR, y, width: side, anchor: 'end' }, PLAIN, order.tools),
  );
  if (panel.card && piece.places.includes(0))
    drawn.push(
      note(
        [t`card behind this panel`],
        { x: box.x + CLEAR, y, width: side, anchor: 'start' },
        PLAIN,
        order.tools,
      ),
    );
  return [...cutLine(order, layout), ...drawn];
}

function panelOf({ strip, piece }: SheetOf): Panel {
  const panel = strip.panels[piece.panel];
  if (!panel) throw new Error(`the strip has no panel ${piece.panel}`);
  return panel;
}

function flatEdge(edge: Edge, upright: boolean): FlatEdge {
  if (edge === 'head' || edge === 'foot') return (edge === 'head') === upright ? 'top' : 'bottom';
  return (edge === 'left') === upright ? 'left' : 'right';
}

/** Edge by edge what is done there: what is taped to it, or that it stays free. */
function edgeWords(order: BookletOrder, at: SheetOf): [FlatEdge, string][] {
  const panel = panelOf(at);
  const { strip, piece } = at;
  const taped = strip.joints.flatMap((joint): [FlatEdge, string][] =>
    [joint.first, joint.second]
      .filter((end) => end.panel === piece.panel)
      .map((end) => [flatEdge(end.edge, panel.upright), jointWords(joint, at)]),
  );
  const fixed: [FlatEdge, string][] =
    order.binding.kind === 'ridge' && panel.leaf === null
      ? [[flatEdge('foot', panel.upright), fixWords(order.players[panel.side])]]
      : [];
  return [...fixed, ...seams(at), ...taped];
}

function fixWords(name: string | undefined): string {
  return name ? t`fix to ${name}’s desk` : t`fix to the empty desk`;
}

const KINDS: Readonly<Record<Joint['kind'], () => string>> = {
  ridge: () => t`ridge`,
  hem: () => t`hem`,
  inward: () => t`folds inward`,
  outward: () => t`folds outward`,
  both: () => t`folds both ways: score both sides`,
  flat: () => t`stays flat`,
};

/** "tape B to B (hem)"; with a page a sheet each page's edge has its number from the left: "tape B2 to B2 (hem)". */
function jointWords({ label, kind }: Joint, at: SheetOf): string {
  const panel = panelOf(at);
  const [place = 0] = at.piece.places;
  const fromLeft = panel.upright ? place + 1 : panel.pages.length - place;
  const isSplit = at.layout.perSheet === 'page' && panel.pages.length > 1;
  const mark = isSplit ? `${label}${fromLeft}` : label;
  return t`tape ${mark} to ${mark} (${KINDS[kind]()})`;
}

/** Between pages of one panel that come on sheets of their own. */
function seams(at: SheetOf): [FlatEdge, string][] {
  const panel = panelOf(at);
  const across = panel.pages.length;
  if (at.layout.perSheet === 'panel' || across === 1) return [];
  const [place = 0] = at.piece.places;
  const fromLeft = panel.upright ? place : across - 1 - place;
  const first = at.piece.panel * (across - 1) + 1;
  const seam = (index: number): string => t`tape ${first + index} to ${first + index} (side by side)`;
  return [
    ...(fromLeft > 0 ? [['left', seam(fromLeft - 1)] as [FlatEdge, string]] : []),
    ...(fromLeft < across - 1 ? [['right', seam(fromLeft)] as [FlatEdge, string]] : []),
  ];
}

function edgeNote(words: string, edge: FlatEdge, box: Box, { tools }: BookletOrder): Primitive {
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  if (edge === 'left' || edge === 'right') {
    const turn = edge === 'left' ? 90 : -90;
    const x = edge === 'left' ? box.x + CLEAR : box.x + box.width - CLEAR;
    return uprightNote(words, { x, y: middle.y, width: box.height / 2, anchor: 'middle', turn }, TYPE, tools);
  }
  const y = edge === 'top' ? box.y + CLEAR + TEXT.small : box.y + box.height - CLEAR;
  return note([words], { x: middle.x, y, width: BAND.middle - 2, anchor: 'middle' }, TYPE, tools);
}

/** Where the sheet is larger than what it carries. */
function cutLine({ tools }: BookletOrder, { sheet, box }: Layout): Primitive[] {
  const spare = Math.max(sheet.width - box.width, sheet.height - box.height);
  if (spare < LEAST_CUT) return [];
  const line: Primitive = {
    kind: 'path',
    path: rectangle(box),
    stroke: { colour: tools.palette.faint, width: WEIGHT.thin },
  };
  const below = sheet.height - box.y - box.height;
  if (below < 2 * CLEAR + TEXT.small) return [line];
  const words = t`cut out along this line`;
  const spot = {
    x: box.x + box.width / 2,
    y: box.y + box.height + 1.5 + TEXT.small,
    width: box.width,
    anchor: 'middle',
  };
  return [line, note([words], { ...spot, anchor: 'middle' }, PLAIN, tools)];
}

const LEAST_CUT = 1;
