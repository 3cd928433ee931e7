/** An ensemble as people write it down: "2 vl, va, vc", "cl va perc", "string quartet + cl" or "Kl, Va, Schlg". */

import { language } from '../words/catalogue.ts';
import { t } from '../words/say.ts';
import { memberOf, wordsKnown, type Member } from './instrument-words.ts';
import { ensembleAsWritten, ensembleNames, playersOfEnsemble } from './named-ensembles.ts';
import { begunAlike, mistyped } from './nearest-word.ts';
import { plainWords } from './plain-words.ts';
import { spacedPieces } from './spaced-words.ts';

/** What stands between two commas. */
export interface Entry {
  /** Without the blanks around it. */
  readonly text: string;
  /** Where it begins in the whole text. */
  readonly at: number;
  /** Whom it stands for; none where it is not understood. */
  readonly members: readonly Member[];
  /** Why it is not understood, and what would be: one sentence. Null: it is. */
  readonly problem: string | null;
}

export interface Ensemble {
  readonly entries: readonly Entry[];
  /** In the order in which they were written; of several alike each with his number: "Violin 1". */
  readonly members: readonly Member[];
}

/** As many as anybody sets up from a line of text; larger groups have seating plans. */
export const MOST_MEMBERS = 40;

/** Never fails: entries that are not understood say why. Empty entries are passed over. */
export function readEnsemble(text: string): Ensemble {
  const entries: Entry[] = [];
  let room = MOST_MEMBERS;
  for (const { words, at } of pieces(text)) {
    const entry = entryOf(words, at, room);
    room -= entry.members.length;
    entries.push(entry);
  }
  return { entries, members: numbered(entries.flatMap(({ members }) => members)) };
}

interface Piece {
  readonly words: string;
  readonly at: number;
}

const BETWEEN = /[,;+&/\n]|\s(?:and|with|und|mit|et|e)\s/giu;

function pieces(text: string): Piece[] {
  const found: Piece[] = [];
  let from = 0;
  const take = (to: number): void => {
    const piece = text.slice(from, to);
    const words = piece.trim();
    if (words !== '') found.push({ words, at: from + piece.length - piece.trimStart().length });
  };
  for (const match of text.matchAll(BETWEEN)) {
    take(match.index);
    from = match.index + match[0].length;
  }
  take(text.length);
  return found;
}

const COUNTED = /^(?<count>\d{1,3})\s*[x×]?\s*(?<name>\D.*)$/iu;
const COUNT_WORDS = [
  ['one', 'ein', 'eine'],
  ['two', 'zwei'],
  ['three', 'drei'],
  ['four', 'vier'],
  ['five', 'fünf'],
  ['six', 'sechs'],
  ['seven', 'sieben'],
  ['eight', 'acht'],
];
/** "Violin 2", "vl2", "vl. II": he is one, whichever. */
const WHICH = /(?:[\s.]*\d{1,2}|[\s.]+(?:i{1,3}|iv|v|vi{0,3}))\.?$/iu;
/** "1st violin", "zweite Geige". */
const WHICH_BEFORE =
  /^(?:1st|2nd|3rd|4th|first|second|third|fourth|(?:erste|zweite|dritte|vierte)[rs]?)\s+(?=\p{L})/iu;

type Read = { readonly members: readonly Member[] } | { readonly problem: string };

function entryOf(words: string, at: number, room: number): Entry {
  const read = playersIn(words);
  if ('problem' in read) return { text: words, at, members: [], problem: read.problem };
  const { members } = read;
  if (members.length <= room) return { text: words, at, members, problem: null };
  return { text: words, at, members: [], problem: tooMany(words) };
}

function tooMany(words: string): string {
  return t`“${words}” makes more than ${MOST_MEMBERS} players; set up larger groups one by one.`;
}

/** One kind of player, a named ensemble, or several with blanks between. */
function playersIn(words: string): Read {
  const { count, name } = counted(words);
  const players = playersCalled(name);
  if (players?.length === 0) return { problem: t`“${words}” is made up in several ways: write who plays.` };
  if (players && count < 1) return { problem: t`“${words}”: give at least one.` };
  if (players) return { members: times(count, players) };
  const pieces = spacedPieces(words);
  return pieces ? together(pieces) : { problem: notUnderstood(words, name) };
}

/** Those of a larger number are no member of anything. */
function times(count: number, players: readonly Member[]): Member[] {
  return Array.from({ length: Math.min(count, MOST_MEMBERS + 1) }, () => players).flat();
}

function together(pieces: readonly string[]): Read {
  const members: Member[] = [];
  for (const piece of pieces) {
    const read = playersIn(piece);
    if ('problem' in read) return read;
    members.push(...read.members);
  }
  return { members };
}

/** As it is written, or else the first that another way to write it leads to; empty: an ensemble of several make-ups. */
function playersCalled(name: string): readonly Member[] | null {
  for (const way of waysToWrite(name)) {
    const member = memberOf(way);
    if (member) return [member];
    const players = playersOfEnsemble(way);
    if (players) return players.map(memberOf).filter((each) => each !== null);
  }
  return null;
}

function waysToWrite(name: string): string[] {
  const said = plainWords(name);
  return [
    said,
    said.replaceAll(' ', ''),
    said.replaceAll('-', ''),
    plainWords(name.replace(WHICH, '')),
    plainWords(name.replace(WHICH_BEFORE, '')),
    ...singulars(said),
    respelt(said),
  ];
}

/** "2. Violine": German counts so which of them he is, and not how many. */
const ORDINAL = /^\d{1,2}\.\s*(?=\p{L})/u;

function counted(words: string): { readonly count: number; readonly name: string } {
  if (WHICH_BEFORE.test(words)) return { count: 1, name: words };
  if (language() === 'de' && ORDINAL.test(words)) return { count: 1, name: words.replace(ORDINAL, '') };
  const { count, name } = COUNTED.exec(words)?.groups ?? {};
  if (count !== undefined && name !== undefined) return { count: Number(count), name };
  const [first = '', ...rest] = words.split(/\s+/u);
  const number = COUNT_WORDS.findIndex((each) => each.includes(first.toLowerCase())) + 1;
  return number > 0 && rest.length > 0 ? { count: number, name: rest.join(' ') } : { count: 1, name: words };
}

/** Without the endings of plurals, English and German; a stem of few letters is an abbreviation of something else. */
function singulars(name: string): string[] {
  const german = ['n', 'e', 'en', 'er'].filter((end) => name.endsWith(end) && name.length - end.length > 3);
  return [name.replace(/s$/u, ''), ...german.map((end) => name.slice(0, -end.length))];
}

/** As German also writes it: "Saxofon", and "Floete" where no umlaut can be typed. */
function respelt(name: string): string {
  return name.replaceAll('fon', 'phon').replace(/([aou])e/gu, '$1');
}

function notUnderstood(words: string, name: string): string {
  const said = plainWords(name);
  const known = [...wordsKnown(), ...ensembleNames()];
  const near = mistyped(said, known);
  if (near !== null) return maybe(words, near);
  const tokens = name.split(/\s+/u);
  const strange = tokens.find((token) => !/^\d+$/u.test(token) && playersCalled(token) === null);
  if (tokens.length > 1 && strange === undefined)
    return t`“${words}” is not understood: put a comma after each who plays.`;
  if (tokens.length > 1 && strange !== undefined) return notUnderstood(strange, strange);
  const like = begunAlike(said, known);
  if (like !== null) return maybe(words, like);
  return t`“${words}” is no instrument of the catalogue: write its name, or an abbreviation such as vl, va, vc, cl, pf.`;
}

/** The name in the language that is spoken, whatever language the word is of. */
function maybe(words: string, near: string): string {
  const name =
    memberOf(near)
      ?.name.replace(/[,(].*/u, '')
      .trim() ?? ensembleAsWritten(near);
  const meant = language() === 'en' ? name.toLowerCase() : name;
  return t`“${words}” is no instrument of the catalogue: do you mean “${meant}”?`;
}

function numbered(members: readonly Member[]): Member[] {
  const of = new Map<string, number>();
  for (const { name } of members) of.set(name, (of.get(name) ?? 0) + 1);
  const so = new Map<string, number>();
  return members.map((member) => {
    const { name } = member;
    if ((of.get(name) ?? 0) < 2) return member;
    const number = (so.get(name) ?? 0) + 1;
    so.set(name, number);
    return { ...member, name: `${name} ${number}` };
  });
}
