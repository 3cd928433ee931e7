/** What is seen from a chosen place of the house: the picture, and what of each player that place sees. */

import { labelOf } from '../../document/labels.ts';
import { formatLength } from '../../document/measures.ts';
import { inSetup } from '../../document/document.ts';
import { mapPath, shift } from '../affine.ts';
import { rectangle } from '../outline.ts';
import { pageOf, type Page } from '../papers.ts';
import type { Box, Primitive } from '../primitives.ts';
import { heading, paragraph, type Block } from '../sheet/blocks.ts';
import { percent } from '../sheet/figures.ts';
import { flow } from '../sheet/flow.ts';
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
      notes: [`${pieceName(request, entry)}: there is no place ${entry.subject} any more.`],
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

/** Of the body, below the picture. */
const TABLE_SHARE = 0.34;

function drawView(plot: PlotSheetRequest, view: View, page: Page): Primitive[] {
  const body = bodyOf(page);
  const title = heading(`View from ${view.label}`, body.width, plot);
  const most = body.height * (1 - TABLE_SHARE) - title.height;
  const width = Math.min(body.width, (most * body.width) / pictureHeight(view, body.width));
  const height = Math.min(most, pictureHeight(view, width));
  const picture = { x: body.x, y: body.y + title.height + 2, width, height };
  const below = { ...body, y: picture.y + height + 3, height: body.y + body.height - picture.y - height - 3 };
  return [...title.draw(body), ...pictureIn(plot, view, picture), ...tableIn(plot, view, { picture, below })];
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
  readonly below: Box;
}

/** On the first page of the room below; nobody sees so many players that it needs a second. */
function tableIn(plot: PlotSheetRequest, view: View, { picture, below }: ViewRoom): Primitive[] {
  const width = Math.min(below.width, WIDEST);
  const blocks: Block[] = [
    paragraph(holdingWords(plot, view, picture), below.width, plot, { after: 2 }),
    ...tableBlocks(seenTable(plot, view), width, plot, 'What is seen'),
  ];
  return flow(blocks, { ...below, width: below.width })[0] ?? [];
}

/** Wider than this, figures stand too far from the names they belong to. */
const WIDEST = 190;

/** A picture in central projection looks as it is from one distance only. */
function holdingWords({ units }: PlotSheetRequest, view: View, { width, height }: Box): string {
  const { focal } = cameraOf(view, width, height);
  return `Held ${formatLength(focal, units)} from the eye, this looks as large as from the seat. Bodies are drawn as the sight check has them where anyone may play: as the tallest who may.`;
}

function seenTable({ document, setup, report }: PlotSheetRequest, view: View): Table {
  const columns = [
    { title: 'Player', parts: 60, bold: true },
    { title: 'Seen from here', parts: 30, align: 'end' },
    { title: 'Seen well in the house', parts: 40, align: 'end' },
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
