/** The demo concert, measured and named as is usual where it is looked at. */

import { concertOf, type Document } from '../document/document.ts';
import type { Part } from '../document/music.ts';
import type { AnyRecord } from '../document/records.ts';
import { unitsIn } from '../document/regions.ts';
import { readDocument, type ReadResult } from './read.ts';
import { language } from '../words/catalogue.ts';
import { DEMO_IN_GERMAN } from './demo-in-german.ts';

/** `locale`: a language tag with the region whose units are usual. */
export function readDemo(text: string, locale: string): ReadResult {
  const reading = readDocument(text);
  return reading.ok ? { ...reading, document: measuredIn(named(reading.document), locale) } : reading;
}

function measuredIn(document: Document, locale: string): Document {
  const concert = { ...concertOf(document), units: unitsIn(locale) };
  return { records: new Map(document.records).set(concert.id, concert) };
}

function named(document: Document): Document {
  if (language() === 'en') return document;
  return { records: new Map([...document.records].map(([id, record]) => [id, renamed(record)])) };
}

function renamed(record: AnyRecord): AnyRecord {
  const own = { ...record, name: inGerman(record.name) };
  if (own.kind === 'setup') return { ...own, notes: inGerman(own.notes) };
  if (own.kind === 'score')
    return { ...own, music: { ...own.music, parts: own.music.parts.map(renamedPart) } };
  if (own.kind !== 'concert') return own;
  return { ...own, contacts: own.contacts.map((one) => ({ ...one, role: inGerman(one.role) })) };
}

function renamedPart(part: Part): Part {
  const instruments = part.instruments.map((each) => ({ ...each, name: inGerman(each.name) }));
  return { ...part, name: inGerman(part.name), instruments };
}

function inGerman(name: string): string {
  return DEMO_IN_GERMAN[name] ?? name;
}
