/** The figures of the checks as tables: who is seen from where, and who gets to what. */

import type { HouseFigure, ReachResult } from '../../checks/report.ts';
import { find } from '../../document/document.ts';
import { asId } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { formatBare } from '../../document/measures.ts';
import { oneLine } from '../text.ts';
import type { PlotSheetRequest } from './request.ts';
import type { Table } from './table.ts';

export function sightTable(request: PlotSheetRequest): Table {
  const figures = request.report?.sight.figures ?? [];
  return {
    columns: [
      { title: 'Player', parts: 40, bold: true },
      { title: 'Seen well', parts: 19, align: 'end' },
      { title: 'Median', parts: 16, align: 'end' },
      { title: 'Worst place', parts: 35 },
      { title: 'under 25', parts: 18, align: 'end' },
      { title: '25-50', parts: 13, align: 'end' },
      { title: '50-75', parts: 13, align: 'end' },
      { title: '75-90', parts: 13, align: 'end' },
      { title: 'over 90', parts: 17, align: 'end' },
    ],
    rows: figures.map((figure) => sightRow(request, figure)),
  };
}

function sightRow(request: PlotSheetRequest, figure: HouseFigure): string[] {
  const { document, setup, report } = request;
  const seat = report?.sight.scene.seats.find((each) => each.id === figure.worst.seat);
  return [
    labelOf(document, setup, figure.player),
    percent(figure.seenWell),
    percent(figure.median),
    `${seat ? oneLine(seat.label) : figure.worst.seat}: ${percent(figure.worst.share)}`,
    ...figure.bands.map(String),
  ];
}

export function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

export function reachTable(request: PlotSheetRequest): Table {
  const results = request.report?.reach ?? [];
  return {
    columns: [
      { title: 'Player', parts: 34, bold: true },
      { title: 'Gets to', parts: 40 },
      { title: 'For', parts: 26 },
      { title: 'How', parts: 18 },
      { title: 'Hand', parts: 14 },
      { title: 'Distance', parts: 18, align: 'end' },
      { title: 'Arm', parts: 15, align: 'end' },
      { title: 'Time, s', parts: 26, align: 'end' },
      { title: 'Free, s', parts: 15, align: 'end' },
    ],
    rows: results.map((result) => reachRow(request, result)),
  };
}

const PURPOSES: Readonly<Record<ReachResult['grip']['purpose'], string>> = {
  turnCorner: 'page corner',
  turnRidge: 'leaf at the ridge',
  pickUp: 'picking up',
};

const MANNERS: Readonly<Record<ReachResult['manner'], string>> = {
  reach: 'reach',
  lean: 'lean',
  step: 'step',
  walk: 'walk',
  none: 'not at all',
};

function reachRow({ document, setup, units }: PlotSheetRequest, result: ReachResult): string[] {
  const { grip } = result;
  const player = find(document, asId<'player'>(grip.player));
  const [least, most] = result.secondsRange;
  const possible = result.manner !== 'none' && Number.isFinite(result.seconds);
  return [
    oneLine(player?.name ?? '') || labelOf(document, setup, grip.player),
    labelOf(document, setup, grip.item),
    PURPOSES[grip.purpose],
    MANNERS[result.manner],
    result.hand ?? 'none free',
    formatBare(result.distance, units),
    formatBare(result.armReach, units),
    possible ? `${seconds(result.seconds)} (${seconds(least)}-${seconds(most)})` : '',
    result.freeTime === null ? '' : seconds(result.freeTime),
  ];
}

function seconds(value: number): string {
  return value.toFixed(1);
}
