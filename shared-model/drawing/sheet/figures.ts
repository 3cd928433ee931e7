/** The figures of the checks as tables: who is seen from where, and who gets to what. */

import type { Hand, HouseFigure, ReachResult } from '../../checks/report.ts';
import { find } from '../../document/document.ts';
import { asId } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { formatBare } from '../../document/measures.ts';
import { fixed } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import { oneLine } from '../text.ts';
import type { PlotSheetRequest } from './request.ts';
import type { Table } from './table.ts';

export function sightTable(request: PlotSheetRequest): Table {
  const figures = request.report?.sight.figures ?? [];
  return {
    columns: [
      { title: t`Player`, parts: 40, bold: true },
      { title: t`Seen well`, parts: 19, align: 'end' },
      { title: t`Median`, parts: 16, align: 'end' },
      { title: t`Worst place`, parts: 35 },
      { title: t`under 25`, parts: 18, align: 'end' },
      { title: '25-50', parts: 13, align: 'end' },
      { title: '50-75', parts: 13, align: 'end' },
      { title: '75-90', parts: 13, align: 'end' },
      { title: t`over 90`, parts: 17, align: 'end' },
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
      { title: t`Player`, parts: 34, bold: true },
      { title: t`Gets to`, parts: 40 },
      { title: t`For`, parts: 26 },
      { title: t`How`, parts: 18 },
      { title: t`Hand`, parts: 14 },
      { title: t`Distance`, parts: 18, align: 'end' },
      { title: t`Arm`, parts: 15, align: 'end' },
      { title: t`Time, s`, parts: 26, align: 'end' },
      { title: t`Free, s`, parts: 15, align: 'end' },
    ],
    rows: results.map((result) => reachRow(request, result)),
  };
}

const PURPOSES: Readonly<Record<ReachResult['grip']['purpose'], () => string>> = {
  turnCorner: () => t`page corner`,
  turnRidge: () => t`leaf at the ridge`,
  pickUp: () => t`picking up`,
};

const MANNERS: Readonly<Record<ReachResult['manner'], () => string>> = {
  reach: () => t`reach`,
  lean: () => t`lean`,
  step: () => t`step`,
  walk: () => t`walk`,
  none: () => t`not at all`,
};

const HANDS: Readonly<Record<Hand, () => string>> = {
  left: () => t`left`,
  right: () => t`right`,
};

export function handWord(hand: Hand): string {
  return HANDS[hand]();
}

function reachRow({ document, setup, units }: PlotSheetRequest, result: ReachResult): string[] {
  const { grip } = result;
  const player = find(document, asId<'player'>(grip.player));
  const [least, most] = result.secondsRange;
  const possible = result.manner !== 'none' && Number.isFinite(result.seconds);
  return [
    oneLine(player?.name ?? '') || labelOf(document, setup, grip.player),
    labelOf(document, setup, grip.item),
    PURPOSES[grip.purpose](),
    MANNERS[result.manner](),
    result.hand === null ? t`none free` : handWord(result.hand),
    formatBare(result.distance, units),
    formatBare(result.armReach, units),
    possible ? `${seconds(result.seconds)} (${seconds(least)}-${seconds(most)})` : '',
    result.freeTime === null ? '' : seconds(result.freeTime),
  ];
}

function seconds(value: number): string {
  return fixed(value, 1);
}
