/** The demo concert, measured as is usual where it is looked at. */

import { concertOf, type Document } from '#model/document/document.ts';
import { unitsIn } from '#model/document/regions.ts';
import { readDocument, type ReadResult } from '#model/file-format/read.ts';

export function readDemo(text: string, locale: string): ReadResult {
  const reading = readDocument(text);
  return reading.ok ? { ...reading, document: measuredIn(reading.document, locale) } : reading;
}

function measuredIn(document: Document, locale: string): Document {
  const concert = { ...concertOf(document), units: unitsIn(locale) };
  return { records: new Map(document.records).set(concert.id, concert) };
}
