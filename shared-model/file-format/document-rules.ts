/** What has to hold between the records of a document, each of which is sound by itself. */

import { find, type Document } from '../document/document.ts';
import { kindWord } from '../document/labels.ts';
import { formatApart } from '../document/measures.ts';
import { edgeOf } from '../document/openings.ts';
import { referencesOf, type Reference } from '../document/references.ts';
import type { AnyRecord, Door, Group, Kind, Platform, Setup } from '../document/records.ts';
import { seatsInRow } from '../document/seating.ts';
import { notAllowed, shown, toldAs, type Complaint } from './complaint.ts';
import {
  MOST_CORNERS,
  MOST_PLACES,
  MOST_PLAYERS,
  MOST_RECORDS,
  MOST_ROWS,
  MOST_SETUPS,
  MOST_SIGHTLINES,
} from './limits.ts';
import { atMost as withDigits } from '../words/numbers.ts';
import { t } from '../words/say.ts';

export interface DocumentComplaint extends Complaint {
  /** The record to look at; null: the document as a whole. */
  readonly record: AnyRecord | null;
}

/** The first rule that the document breaks, or null. */
export function documentRuleBroken(document: Document): DocumentComplaint | null {
  return (
    countsBroken(document) ??
    referencesBroken(document) ??
    variantsBroken(document) ??
    doorsBroken(document) ??
    onceBroken(document) ??
    groupsBroken(document)
  );
}

function countsBroken(document: Document): DocumentComplaint | null {
  const tally = tallyOf(document);
  return (
    exactlyOne(tally.kinds, 'concert') ??
    exactlyOne(tally.kinds, 'platform') ??
    (tally.kinds.has('setup') ? null : whole(t`There is no setup; add a record of kind "setup".`)) ??
    atMost(document.records.size, MOST_RECORDS, tooManyRecords) ??
    atMost(tally.kinds.get('setup') ?? 0, MOST_SETUPS, tooManySetups) ??
    atMost(tally.places, MOST_PLACES, tooManyPlaces) ??
    atMost(tally.rows, MOST_ROWS, tooManyRows) ??
    atMost(tally.corners, MOST_CORNERS, tooManyCorners) ??
    playersBroken(document, tally)
  );
}

export function tooManyRecords(count: number): string {
  return t`There are ${count} records; at most ${MOST_RECORDS} are possible: make two concerts of it.`;
}

function tooManySetups(count: number): string {
  return t`There are ${count} setups; at most ${MOST_SETUPS} are possible: make two concerts of it.`;
}

function tooManyPlaces(count: number): string {
  return t`There are ${count} places; at most ${MOST_PLACES} are possible: leave out parts of the house.`;
}

function tooManyRows(count: number): string {
  return t`There are ${count} rows of seats; at most ${MOST_ROWS} are possible: leave out parts of the house.`;
}

function tooManyCorners(count: number): string {
  return t`There are ${count} corners of outlines and cables; at most ${MOST_CORNERS} are possible: draw them with fewer.`;
}

/** What the checks of one setup have to go through. */
function playersBroken(document: Document, { places, players }: Tally): DocumentComplaint | null {
  for (const record of document.records.values()) {
    if (record.kind !== 'setup') continue;
    const there = (players.get(record.id) ?? 0) + (players.get(null) ?? 0);
    const complaint = tooManyPlayers(record, there, places);
    if (complaint) return complaint;
  }
  return null;
}

function tooManyPlayers({ id, name }: Setup, players: number, places: number): DocumentComplaint | null {
  const setup = shown(name || id);
  if (players > MOST_PLAYERS) {
    return whole(
      t`Setup ${setup} has ${players} players; at most ${MOST_PLAYERS} are possible in one: take some out, or make two setups of it.`,
    );
  }
  const sightlines = players * places;
  if (sightlines <= MOST_SIGHTLINES) return null;
  return whole(
    t`Setup ${setup} has ${players} players before ${places} places, which makes ${sightlines} lines of sight; at most ${MOST_SIGHTLINES} are possible: leave out players, or parts of the house.`,
  );
}

interface Tally {
  readonly kinds: ReadonlyMap<Kind, number>;
  /** Seats and single places. */
  readonly places: number;
  readonly rows: number;
  readonly corners: number;
  /** Number of players by their setup; null: for the whole concert. */
  readonly players: ReadonlyMap<string | null, number>;
}

function tallyOf(document: Document): Tally {
  const kinds = new Map<Kind, number>();
  const players = new Map<string | null, number>();
  let [places, rows, corners] = [0, 0, 0];
  for (const record of document.records.values()) {
    kinds.set(record.kind, (kinds.get(record.kind) ?? 0) + 1);
    if (record.kind === 'platform' || record.kind === 'shape') corners += record.outline.length;
    if (record.kind === 'lamp') corners += record.cable.length;
    if (record.kind === 'place') places++;
    if (record.kind === 'player') players.set(record.setup, (players.get(record.setup) ?? 0) + 1);
    if (record.kind !== 'seatBlock') continue;
    rows += record.rows;
    for (let row = 0; row < record.rows; row++) places += seatsInRow(record, row);
  }
  return { kinds, places, rows, corners, players };
}

const NONE = {
  concert: () => t`There is no concert; add one record of kind "concert".`,
  platform: () => t`There is no platform; add one record of kind "platform".`,
};

function exactlyOne(kinds: ReadonlyMap<Kind, number>, kind: keyof typeof NONE): DocumentComplaint | null {
  const count = kinds.get(kind) ?? 0;
  if (count === 1) return null;
  if (count === 0) return whole(NONE[kind]());
  return whole(t`There are ${count} records of kind "${kind}"; there has to be exactly one.`);
}

function atMost(count: number, most: number, words: (count: number) => string): DocumentComplaint | null {
  return count <= most ? null : whole(words(count));
}

function whole(text: string): DocumentComplaint {
  return { record: null, field: '', text };
}

function referencesBroken(document: Document): DocumentComplaint | null {
  for (const record of document.records.values()) {
    for (const reference of referencesOf(record)) {
      const complaint = referenceBroken(document, record, reference);
      if (complaint) return { record, ...complaint };
    }
  }
  return null;
}

function referenceBroken(document: Document, record: AnyRecord, reference: Reference): Complaint | null {
  const { field, id, kinds } = reference;
  const target = document.records.get(id);
  const wanted = kinds.join(t` or `);
  if (!target) return notAllowed(field, id, t`there is no record of that id; name one of kind ${wanted}`);
  if (!kinds.includes(target.kind)) {
    return notAllowed(field, id, t`that is a record of kind ${target.kind}; name one of kind ${wanted}`);
  }
  if (meets(record, target)) return null;
  return { ...notAllowed(field, id, apart(target)), ...toldAs(() => apartWords(document, target)) };
}

/** Whether `target` is there whenever `record` is. */
function meets(record: AnyRecord, target: AnyRecord): boolean {
  if (!('setup' in target)) return true;
  const setup = record.kind === 'setup' ? record.id : 'setup' in record ? record.setup : null;
  return target.setup === null || target.setup === setup;
}

function apart(target: AnyRecord): string {
  const setup = 'setup' in target ? target.setup : null;
  return t`it is there only in setup ${shown(setup)}; both must be in the same setup, or what is named must stay for the whole concert`;
}

function apartWords(document: Document, target: AnyRecord): string {
  const setup = 'setup' in target ? find(document, target.setup) : undefined;
  const [name, setupName] = [target.name || kindWord(target.kind), setup?.name ?? ''];
  return t`: “${name}” is there only in setup “${setupName}”; both must be in the same setup, or it must stay for the whole concert`;
}

/** A variant is one of a setup of the programme: versions of versions would have no order. */
function variantsBroken({ records }: Document): DocumentComplaint | null {
  for (const record of records.values()) {
    if (record.kind !== 'setup' || record.variantOf === null) continue;
    const original = records.get(record.variantOf);
    if (original?.kind === 'setup' && original.variantOf === null) continue;
    const advice = t`name a setup that is in the programme itself, and not this one`;
    return { record, ...notAllowed('variantOf', record.variantOf, advice) };
  }
  return null;
}

/** Rounding when a plan is drawn in another unit must not push a door off its wall. */
const DOOR_SLACK = 0.5;

function doorsBroken(document: Document): DocumentComplaint | null {
  const records = [...document.records.values()];
  const platform = records.find((record): record is Platform => record.kind === 'platform');
  if (!platform) return null;
  for (const record of records) {
    const complaint = record.kind === 'door' ? doorBroken(platform, record) : null;
    if (complaint) return { record, ...complaint };
  }
  return null;
}

function doorBroken(platform: Platform, door: Door): Complaint | null {
  const edges = platform.outline.length;
  if (door.edge >= edges) {
    const complaint = notAllowed(
      'edge',
      door.edge,
      t`the platform has ${edges} edges, from 0 to ${edges - 1}`,
    );
    return { ...complaint, ...toldAs(() => noSuchEdge(door.edge + 1, edges)) };
  }
  const { a, b } = edgeOf(platform, door.edge);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (door.offset + door.width <= length + DOOR_SLACK) return null;
  const reach = withDigits(door.offset + door.width, 1);
  const edge = withDigits(length, 1);
  return {
    field: 'width',
    text: t`: the door reaches ${reach} mm along edge ${door.edge}, which is ${edge} mm long; make offset and width fit`,
    ...toldAs((units) => beyondEdge(door.edge + 1, formatApart([door.offset + door.width, length], units))),
  };
}

/** People count edges from 1. */
function noSuchEdge(edge: number, edges: number): string {
  return t`: there is no edge ${edge}; the platform has ${edges}`;
}

function beyondEdge(edge: number, [reach, length]: readonly [string, string]): string {
  return t`: the door would reach ${reach} along edge ${edge}, which is ${length} long; make it narrower, or begin it nearer to the first corner`;
}

const ONCE_A_SETUP: readonly Kind[] = ['score', 'pagePlan'];

function onceBroken(document: Document): DocumentComplaint | null {
  const known = new Set<string>();
  for (const record of document.records.values()) {
    if (!ONCE_A_SETUP.includes(record.kind) || !('setup' in record)) continue;
    const key = `${record.kind} ${record.setup}`;
    if (known.has(key)) {
      const advice = t`a setup has one ${kindWord(record.kind)} at most; leave one out`;
      return { record, ...notAllowed('setup', record.setup, advice) };
    }
    known.add(key);
  }
  return null;
}

function groupsBroken({ records }: Document): DocumentComplaint | null {
  const grouped = new Set<string>();
  for (const record of records.values()) {
    if (record.kind !== 'group') continue;
    for (const [index, id] of record.members.entries()) {
      const complaint = memberBroken(record, records.get(id), grouped.has(id));
      if (complaint) return { record, ...notAllowed(`members[${index}]`, id, complaint) };
      grouped.add(id);
    }
  }
  return null;
}

function memberBroken(group: Group, member: AnyRecord | undefined, isTaken: boolean): string | null {
  if (isTaken) return t`a thing is in one group at most, and once; leave it out here`;
  const isWithIt = member && 'setup' in member && member.setup === group.setup;
  return isWithIt
    ? null
    : t`a group and all that is in it are there in the same setup, or all for the whole concert`;
}
