/** The sections of text that sheets are filled with, each with its heading and what its figures mean. */

import { concertOf, find } from '../../document/document.ts';
import { t } from '../../words/say.ts';
import { TEXT } from '../style.ts';
import { heading, paragraph, type Block, type TextTools } from './blocks.ts';
import { cautions } from './cautions.ts';
import { reachTable, sightTable } from './figures.ts';
import { findingBlocks } from './findings.ts';
import { headsCounted } from './heads.ts';
import { inventoryTable } from './inventory.ts';
import { marksTable } from './marks-table.ts';
import type { PlotSheetRequest } from './request.ts';
import { rakeTable } from './section-table.ts';
import { tableBlocks, type Table } from './table.ts';

export interface Section {
  readonly title: string;
  readonly intro: string;
  /** Of its table, mm; left out: as wide as the column. */
  readonly widest?: number;
}

/** Nothing where there is nothing to say. */
export function section(
  { title, intro }: Section,
  blocks: readonly Block[],
  width: number,
  tools: TextTools,
): Block[] {
  if (blocks.length === 0) return [];
  const faint = { ...INTRO, colour: tools.palette.faint };
  return [heading(title, width, tools), paragraph(intro, width, tools, faint), ...blocks];
}

const INTRO = { type: { size: TEXT.small, weight: 'regular' }, keepsWithNext: true } as const;

/** A section that is one table. */
export function tableSection(words: Section, rows: Table, width: number, tools: TextTools): Block[] {
  const across = Math.min(width, words.widest ?? Infinity);
  return section(words, tableBlocks(rows, across, tools, words.title), width, tools);
}

export function unitWords({ units }: Pick<PlotSheetRequest, 'units'>): string {
  return units === 'metric' ? t`Millimetres` : t`Feet and inches`;
}

export function marksSection(request: PlotSheetRequest, width: number): Block[] {
  const intro = t`${unitWords(request)}. SL and SR: to stage left or right of the centre line. US: upstage of the front edge. Lip: height of a desk’s lower edge. Tilt: of a desk from the horizontal.`;
  return tableSection({ title: t`Marks`, intro }, marksTable(request), width, request);
}

export function inventorySection(request: PlotSheetRequest, width: number): Block[] {
  const intro = t`What the setup needs. Players bring what is named as an instrument unless agreed otherwise.`;
  const words = { title: t`Inventory`, intro, widest: INVENTORY_WIDTH };
  return tableSection(words, inventoryTable(request), width, request);
}

/** Wider than this, the counts stand too far from the boxes to tick. */
const INVENTORY_WIDTH = 130;

/** Who is seen from where, row over row, and who gets to what; `asked` has balconies where they are. */
export function figureSections(asked: PlotSheetRequest, request: PlotSheetRequest, width: number): Block[] {
  const unit = unitWords(request);
  return [
    ...sightSection(request, width),
    ...tableSection(
      {
        title: t`Rows`,
        intro: t`${unit}. Each row over the next, towards the platform’s front edge. D and R: from the front viewer’s eye to the edge, along and up. N and T: from row to row, up and along. C: how far the line of sight passes above the front viewer’s eye. Head in line: the nearest row whose heads are straight in front; what the row sees is judged over it. N for a C: the step up to this row that would give it there, the rows before staying as they are.`,
      },
      rakeTable(asked),
      width,
      request,
    ),
    ...tableSection(
      {
        title: t`Reach`,
        intro: t`${unit} from the nearer free shoulder; arm: what the arm alone reaches. Time with its range; free: the rest the player has.`,
      },
      reachTable(request),
      width,
      request,
    ),
  ];
}

function sightSection(request: PlotSheetRequest, width: number): Block[] {
  if (!request.report) return [];
  const words = { title: t`Sightlines`, intro: sightIntro(request) };
  if (request.report.sight.scene.seats.length > 0)
    return tableSection(words, sightTable(request), width, request);
  return [heading(words.title, width, request), paragraph(noPlaces(), width, request)];
}

function noPlaces(): string {
  return t`The house has no places yet, so it cannot be said how well anybody is seen.`;
}

function sightIntro({ document }: PlotSheetRequest): string {
  const well = Math.round(concertOf(document).limits.seesWell * 100);
  const columns = t`Seen well: share of the places that see at least ${well} % of the player. Median and worst: share of the player that is seen. On the right: places in each band, in % seen.`;
  return `${columns} ${headsCounted({ document })}`;
}

export function findingsSection(request: PlotSheetRequest, width: number): Block[] {
  if (!request.report) return [];
  const found = findingBlocks(request, width);
  const blocks =
    found.length > 0 ? found : [paragraph(t`The checks found nothing to report.`, width, request)];
  const intro = t`Measured by the tool against the limits set for this concert.`;
  return section({ title: t`Findings`, intro }, blocks, width, request);
}

export function cautionsSection(
  request: Pick<PlotSheetRequest, 'document' | 'units' | 'palette' | 'measure'>,
  width: number,
): Block[] {
  const blocks = cautions(request).map((words) => paragraph(words, width, request));
  return section({ title: t`Cautions`, intro: t`Read before setting.` }, blocks, width, request);
}

export function setupNotes(request: PlotSheetRequest, width: number): Block[] {
  const setup = find(request.document, request.setup);
  if (!setup || setup.notes.trim() === '') return [];
  return [heading(t`Notes`, width, request), paragraph(setup.notes, width, request)];
}
