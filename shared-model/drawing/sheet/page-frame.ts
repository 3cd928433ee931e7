/** What every sheet has round what it shows: a border, and below it title, piece, dates, scale, paper, units and number. */

import { dayOnPrint } from '../issued.ts';
import { concertOf, find } from '../../document/document.ts';
import { t } from '../../words/say.ts';
import { rectangle } from '../outline.ts';
import type { Page } from '../papers.ts';
import type { Box, Primitive, Sheet } from '../primitives.ts';
import { scaleDesignation } from '../scales.ts';
import { WEIGHT } from '../style.ts';
import { oneLine } from '../text.ts';
import type { PlotSheetRequest } from './request.ts';
import { titleStrip, TITLE_STRIP_HEIGHT, type TitleFields } from './title-block.ts';

/** What title blocks are filled from. `setup` null: the sheet is of the whole concert. */
export interface TitleSource extends Pick<
  PlotSheetRequest,
  'document' | 'issued' | 'units' | 'palette' | 'measure'
> {
  readonly setup: PlotSheetRequest['setup'] | null;
}

export interface SheetFacts {
  readonly documentType: string;
  /** The ratio's denominator; null: nothing on the sheet is to scale. */
  readonly scale: number | null;
  readonly sheet: number;
  readonly sheets: number;
}

export function titleFields(source: TitleSource, { paper }: Page, facts: SheetFacts): TitleFields {
  const concert = concertOf(source.document);
  return {
    owner: concert.venue,
    title: titleOf(source),
    piece: pieceOf(source),
    concertDate: dayOnPrint(concert.date, source.units, 'short'),
    issued: dayOnPrint(source.issued, source.units, 'short'),
    revision: concert.revision,
    creator: concert.author,
    units: source.units === 'metric' ? 'mm' : 'ft, in',
    paper,
    ...facts,
    scale: facts.scale === null ? t`not to scale` : scaleDesignation(facts.scale),
  };
}

export function titleOf({ document }: Pick<TitleSource, 'document'>): string {
  return concertOf(document).name || t`Concert`;
}

export function pieceOf({ document, setup }: Pick<TitleSource, 'document' | 'setup'>): string {
  if (setup === null) return t`Whole concert`;
  const record = find(document, setup);
  if (!record) throw new Error(`no setup ${setup}`);
  return record.name || t`Setup ${record.order}`;
}

/** What the drawing or the text of a sheet with a title strip may fill. */
export function bodyOf({ frame }: Page): Box {
  const inset = 2;
  return {
    x: frame.x + inset,
    y: frame.y + inset,
    width: frame.width - 2 * inset,
    height: frame.height - TITLE_STRIP_HEIGHT - 2 * inset,
  };
}

/** The border with the title strip in it, round `children`. */
export function framed(
  source: TitleSource,
  page: Page,
  children: readonly Primitive[],
  facts: SheetFacts,
): Primitive[] {
  const { frame } = page;
  const strip = { ...frame, y: frame.y + frame.height - TITLE_STRIP_HEIGHT, height: TITLE_STRIP_HEIGHT };
  const stroke = { colour: source.palette.ink, width: WEIGHT.bold };
  return [
    { kind: 'path', path: rectangle(frame), stroke },
    ...titleStrip(titleFields(source, page, facts), strip, source),
    ...children,
  ];
}

export function sheetOn({ width, height }: Page, title: string, children: readonly Primitive[]): Sheet {
  return { title: oneLine(title), width, height, children };
}
