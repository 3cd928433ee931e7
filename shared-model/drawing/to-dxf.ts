/**
 * The plan of one setup as DXF for the venue's drawing program: version AC1021 (2007), text in UTF-8, millimetres. The
 * drawing's x and y are those of the stage frame, so that everything lies where the document has it.
 */

import { allOf, concertOf, placedInSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { formatPosition, type Units } from '../document/measures.ts';
import type { PlacedRecord } from '../document/records.ts';
import { drawHouse, drawPlatform } from './dxf/ground.ts';
import { LETTERS } from './dxf/letters.ts';
import { DxfPen } from './dxf/pen.ts';
import { drawThing, itemContext } from './dxf/things.ts';
import { joinBoxes } from './bounds.ts';
import { PALETTES } from './palette.ts';
import { planExtent } from './plan/extent.ts';
import type { Box } from './primitives.ts';
import { shortMarks } from './plan/short-marks.ts';

/** The whole text of the file. */
export function planToDxf(document: Document, setup: Id<'setup'>): string {
  const { units } = concertOf(document);
  const pen = new DxfPen();
  drawHouse(pen, document);
  drawPlatform(pen, document, units);
  const records = placedInSetup(document, setup);
  // The symbols hold no words, so nothing is measured.
  const context = itemContext({ document, setup, units, palette: PALETTES.print, measure: () => 0 });
  for (const record of risersFirst(records)) drawThing(pen, record, context);
  const marks = shortMarks(records);
  for (const record of records) drawWords(pen, record, { mark: marks.get(record.id) ?? '', units });
  drawWaitingPlaces(pen, document);
  return pen.finish(joinBoxes([planExtent(document), ...waitingBoxes(document)]) ?? planExtent(document));
}

function risersFirst(records: readonly PlacedRecord[]): PlacedRecord[] {
  const isRiser = ({ kind }: PlacedRecord): boolean => kind === 'riser';
  return [...records.filter(isRiser), ...records.filter((record) => !isRiser(record))];
}

interface Words {
  readonly mark: string;
  readonly units: Units;
}

/** The exact spot as a point, and beside it mark, name, and where it is in the crew's words: each on its own layer. */
function drawWords(pen: DxfPen, record: PlacedRecord, { mark, units }: Words): void {
  const { x, y } = record;
  const below = (lines: number) => ({ x, y: y - lines * 1.6 * LETTERS.small });
  pen.point('marks', { x, y });
  pen.words(mark, { layer: 'marks', at: { x, y: y + 0.5 * LETTERS.small }, height: LETTERS.mark });
  pen.words(record.name, { layer: 'names', at: below(1), height: LETTERS.small });
  pen.words(formatPosition(record, units), { layer: 'dimensions', at: below(2), height: LETTERS.small });
}

/** Beyond the platform lie places that have no size. */
function waitingBoxes(document: Document): Box[] {
  return allOf(document, 'storage').map(({ x, y }) => ({ x, y, width: 0, height: LETTERS.small }));
}

function drawWaitingPlaces(pen: DxfPen, document: Document): void {
  for (const { name, x, y } of allOf(document, 'storage')) {
    pen.point('waiting-places', { x, y });
    pen.words(name, { layer: 'waiting-places', at: { x, y: y + LETTERS.small }, height: LETTERS.small });
  }
}
