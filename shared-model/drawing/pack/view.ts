/** What is seen from a chosen place of the house: the picture, and what of each player that place sees. */

import { labelOf } from '../../document/labels.ts';
import { formatLength } from '../../document/measures.ts';
import { inSetup } from '../../document/document.ts';
import { t } from '../../words/say.ts';
import { mapPath, shift } from '../affine.ts';
import { rectangle } from '../outline.ts';
import { pageOf, type Page } from '../papers.ts';
import type { Box, Primitive } from '../primitives.ts';
import { heading, paragraph, type Block } from '../sheet/blocks.ts';
import { percent } from '../sheet/figures.ts';
import { columnIn, heightWithHeaders } from '../sheet/flow.ts';
import { bodyOf } from '../sheet/page-frame.ts';
import type { PlotSheetRequest } from '../sheet/request.ts';
import { tableBlocks, type Table } from '../sheet/table.ts';
import { WEIGHT } from '../style.ts';
import { cameraOf } from '../view/camera.ts';
import { pictureHeight, viewDrawing, viewFromSeat, type View } from '../view/view-drawing.ts';
import { NO_PAGES, packSheet, pieceName, plotRequestOf } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';

export function viewPages(request: PackRequest, entry: PackEntry): EntryPages {
  const plot = plotRequestOf(request, entry, false);
  const view = entry.subject === null ? null : viewFromSeat(plot.document, plot.setup, entry.subject);
  if (!view)
    return {
      ...NO_PAGES,
      notes: [t`${pieceName(request, entry)}: there is no place ${entry.subject ?? ''} any more.`],
    };
  const page = pageOf(request.paper, 'landscape');
  return {
    count: 1,
    notes: [],
    draw: (index, numbering) => {
      const children = drawView(plotRequestOf(request, entry, true), view, page);
      const sheet = packSheet({ request, entry, page, index, scale: null }, children, numbering);
      return { sheet, notes: [] };
    },
  };
}

/** Of the body, below the picture, at the most; what does not fit there nobody asked for. */
const MOST_BELOW = 0.5;
const AIR = { over: 2, under: 3 } as const;

/** As large as it can be over what is said below it, in the middle where it is narrower than the sheet. */
function drawView(plot: PlotSheetRequest, view: View, page: Page): Primitive[] {
  const body = bodyOf(page);
  const title = heading(t`View from ${view.label}`, body.width, plot);
  const below = Math.min(heightBelow(plot, view, body), MOST_BELOW * body.height);
  const most = body.height - title.height - AIR.over - AIR.under - below;
  const width = Math.min(body.width, (most * body.width) / pictureHeight(view, body.width));
  const height = Math.min(most, pictureHeight(view, width));
  const picture = {
    ...{ x: body.x + (body.width - width) / 2, y: body.y + title.height + AIR.over },
    ...{ width, height },
  };
  const top = picture.y + height + AIR.under;
  const rest = { ...body, y: top, height: body.y + body.height - top };
  return [
    ...title.draw(body),
    ...pictureIn(plot, view, picture),
    ...columnIn(blocksBelow(plot, view, { picture, width: body.width }), rest),
  ];
}

/** The words are as long whatever the picture's size, but for a figure. */
function heightBelow(plot: PlotSheetRequest, view: View, body: Box): number {
  const picture = { ...body, height: pictureHeight(view, body.width) };
  return heightWithHeaders(blocksBelow(plot, view, { picture, width: body.width }));
}

function pictureIn(plot: PlotSheetRequest, view: View, { x, y, width, height }: Box): Primitive[] {
  const { document, setup, palette, measure, units } = plot;
  const drawn = viewDrawing({
    ...{ document, setup, view, width, height, palette, measure, units },
    names: true,
    show: 'figures',
  });
  const frame = { colour: palette.ink, width: WEIGHT.thin };
  return [...shifted(drawn, x, y), { kind: 'path', path: rectangle({ x, y, width, height }), stroke: frame }];
}

/** The same drawing elsewhere on the page. */
export function shifted(primitives: readonly Primitive[], x: number, y: number): Primitive[] {
  return primitives.map((primitive): Primitive => {
    if (primitive.kind === 'path') return { ...primitive, path: mapPath(shift(x, y), primitive.path) };
    if (primitive.kind === 'text') return { ...primitive, x: primitive.x + x, y: primitive.y + y };
    const children = shifted(primitive.children, x, y);
    const { clip } = primitive;
    return clip
      ? { ...primitive, children, clip: { ...clip, x: clip.x + x, y: clip.y + y } }
      : { ...primitive, children };
  });
}

interface ViewRoom {
  readonly picture: Box;
  readonly width: number;
}

/** Nobody sees so many players that they need a second page. */
function blocksBelow(plot: PlotSheetRequest, view: View, { picture, width }: ViewRoom): Block[] {
  const widest = Math.min(width, WIDEST);
  return [
    paragraph(holdingWords(plot, view, picture), width, plot, { after: 2 }),
    ...tableBlocks(seenTable(plot, view), widest, plot, t`What is seen`),
  ];
}

/** Wider than this, figures stand too far from the names they belong to. */
const WIDEST = 190;

/** A picture in central projection looks as it is from one distance only. */
function holdingWords({ units }: PlotSheetRequest, view: View, { width, height }: Box): string {
  const { focal } = cameraOf(view, width, height);
  return t`Held ${formatLength(focal, units)} from the eye, this looks as large as from the seat. Bodies are drawn as the sight check has them where anyone may play: as the tallest who may.`;
}

function seenTable({ document, setup, report }: PlotSheetRequest, view: View): Table {
  const columns = [
    { title: t`Player`, parts: 60, bold: true },
    { title: t`Seen from here`, parts: 30, align: 'end' },
    { title: t`Seen well in the house`, parts: 40, align: 'end' },
  ] as const;
  const seat = report?.sight.scene.seats.findIndex(({ id }) => id === view.subject) ?? -1;
  if (!report || seat < 0) return { columns, rows: [] };
  const { scene, visible, figures } = report.sight;
  const rows = inSetup(document, setup, 'player').flatMap(({ id }) => {
    const target = scene.targets.findIndex((each) => each.id === id);
    if (target < 0) return [];
    const share = visible[seat * scene.targets.length + target] ?? 0;
    const house = figures.find(({ player }) => player === id);
    return [[labelOf(document, setup, id), percent(share), house ? percent(house.seenWell) : '']];
  });
  return { columns, rows };
}
