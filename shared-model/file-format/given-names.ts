/**
 * Names that the program gave and nobody changed, in the language of the window, whichever language they were given in.
 * The file keeps its own: what was only shown otherwise is written as it was read.
 */

import type { Document } from '../document/document.ts';
import type { AnyRecord, Kind } from '../document/records.ts';
import { language } from '../words/catalogue.ts';
import { houses } from '../words/german/catalogue/houses.ts';
import { instruments } from '../words/german/catalogue/instruments.ts';
import { members } from '../words/german/members.ts';
import { DEMO_IN_GERMAN } from './demo-in-german.ts';

export interface OwnWords {
  readonly document: Document;
  /** A later state of the document with the names that its file has for those that nobody changed. */
  inFile(later: Document): Document;
}

export function inOwnWords(document: Document): OwnWords {
  const originals = new Map<AnyRecord, AnyRecord>();
  const records = new Map(document.records);
  for (const [id, record] of document.records) {
    const shown = reworded(record, (text) => inWindow(record.kind, text));
    if (shown === record) continue;
    records.set(id, shown);
    originals.set(shown, record);
  }
  return originals.size === 0
    ? AS_THEY_ARE(document)
    : { document: { records }, inFile: restoring(originals) };
}

/** Of a document all of whose names are its own. */
export const AS_THEY_ARE = (document: Document): OwnWords => ({ document, inFile: (later) => later });

function restoring(originals: ReadonlyMap<AnyRecord, AnyRecord>): OwnWords['inFile'] {
  const byId = new Map([...originals].map(([shown, original]) => [shown.id as string, { shown, original }]));
  return (later) => {
    const records = new Map(later.records);
    for (const [id, { shown, original }] of byId) {
      const now = records.get(id);
      if (now) records.set(id, now === shown ? original : withOldWords(now, shown, original));
    }
    return { records };
  };
}

/** Of a record that was changed since: each of its texts that is still as it was shown. */
function withOldWords(now: AnyRecord, shown: AnyRecord, original: AnyRecord): AnyRecord {
  const written = textsOf(original);
  const old = new Map(textsOf(shown).map((text, index) => [text, written[index] ?? text]));
  return reworded(now, (text) => old.get(text) ?? text);
}

function textsOf(record: AnyRecord): string[] {
  const texts: string[] = [];
  reworded(record, (text) => {
    texts.push(text);
    return text;
  });
  return texts;
}

/** The record itself where no text changes. */
function reworded(record: AnyRecord, say: (text: string) => string): AnyRecord {
  let isOther = false;
  const said = (text: string): string => {
    const other = say(text);
    isOther ||= other !== text;
    return other;
  };
  const other = withTexts({ ...record, name: said(record.name) }, said);
  return isOther ? other : record;
}

/** The texts besides the name that the program may have given. */
function withTexts(record: AnyRecord, said: (text: string) => string): AnyRecord {
  switch (record.kind) {
    case 'concert': {
      const contacts = record.contacts.map((one) => ({ ...one, role: said(one.role) }));
      return { ...record, venue: said(record.venue), contacts };
    }
    case 'setup':
      return { ...record, notes: said(record.notes) };
    case 'score': {
      const parts = record.music.parts.map((part) => ({
        ...part,
        name: said(part.name),
        instruments: part.instruments.map((each) => ({ ...each, name: said(each.name) })),
      }));
      return { ...record, music: { ...record.music, parts } };
    }
    default:
      return record;
  }
}

/** Names by the kind of what has them, English and German; where two share a German word, the first one counts. */
type Pairs = readonly (readonly [english: string, german: string])[];

const pairsOf = (words: Readonly<Record<string, string | readonly string[]>>): Pairs =>
  Object.entries(words).flatMap(([english, german]): Pairs =>
    typeof german === 'string' ? [[english, german]] : [],
  );

const HOUSE = pairsOf(houses);
/** As the window's store names what it sets down (`renderer/app/words/things.ts`; a test holds them equal). */
export const SET_DOWN = {
  box: ['Case', 'Kiste'],
  screen: ['Screen', 'Stellwand'],
  column: ['Column', 'Säule'],
  storage: ['Storage', 'Lager'],
} as const;

const THINGS: Pairs = Object.values(SET_DOWN);
const PLAYERS: Pairs = [...pairsOf(members), ...pairsOf(instruments)];
const DEMO = pairsOf(DEMO_IN_GERMAN);

const PAIRS: Partial<Record<Kind, Pairs>> = {
  concert: [...HOUSE, ...DEMO],
  platform: HOUSE,
  door: [...HOUSE, ...DEMO],
  seatBlock: [...HOUSE, ...DEMO],
  place: [...HOUSE, ...DEMO],
  shape: [...THINGS, ...HOUSE, ...DEMO],
  storage: [...THINGS, ...DEMO],
  player: [...PLAYERS, ...DEMO],
};

/** Violins are told apart by a number behind. */
const NUMBERED = /^(?<name>.*?)(?<number> \d{1,2})?$/su;

function inWindow(kind: Kind, text: string): string {
  const words = wordsFor(kind);
  const { name = text, number = '' } = kind === 'player' ? (NUMBERED.exec(text)?.groups ?? {}) : {};
  return words.get(text) ?? `${words.get(name) ?? name}${number}`;
}

const known = new Map<string, ReadonlyMap<string, string>>();

function wordsFor(kind: Kind): ReadonlyMap<string, string> {
  const key = `${language()} ${kind}`;
  const words = known.get(key) ?? new Map(wordsOf(PAIRS[kind] ?? DEMO));
  known.set(key, words);
  return words;
}

function wordsOf(pairs: Pairs): [from: string, to: string][] {
  const own = new Set(pairs.map(([english, german]) => (language() === 'de' ? german : english)));
  return (
    pairs
      .map(([english, german]): [string, string] =>
        language() === 'de' ? [english, german] : [german, english],
      )
      // What is a word of the window's own language stays: "Horn".
      .filter(([from]) => !own.has(from))
      .toReversed()
  );
}
