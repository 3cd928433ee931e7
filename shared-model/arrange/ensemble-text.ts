/** An ensemble as people write it down: "2 vl, va, vc", "cl, va, perc" or "Kl, Va, Schlg". */

import { language } from '../words/catalogue.ts';
import { t } from '../words/say.ts';
import { memberOf, wordsKnown, type Member } from './instrument-words.ts';
import { plainWords } from './plain-words.ts';

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

const BETWEEN = /[,;+&/\n]|\s(?:and|und|et|e)\s/giu;

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
/** "Violin 2", "vl. II": he is one, whichever. */
const WHICH = /[\s.]+(?:\d{1,2}|i{1,3}|iv|v|vi{0,3})\.?$/iu;

function entryOf(words: string, at: number, room: number): Entry {
  const { count, name } = counted(words);
  const member = memberCalled(name);
  const answer = (members: readonly Member[], problem: string | null): Entry => ({
    text: words,
    at,
    members,
    problem,
  });
  if (!member) return answer([], notUnderstood(words, plainWords(name)));
  if (count < 1) return answer([], t`“${words}”: give at least one.`);
  if (count > room)
    return answer(
      [],
      t`“${words}” makes more than ${MOST_MEMBERS} players; set up larger groups one by one.`,
    );
  return answer(
    Array.from({ length: count }, () => member),
    null,
  );
}

/** As it is written, or else the first that another way to write it leads to. */
function memberCalled(name: string): Member | null {
  const said = plainWords(name);
  const ways = [
    said,
    said.replaceAll(' ', ''),
    plainWords(name.replace(WHICH, '')),
    ...singulars(said),
    respelt(said),
  ];
  for (const way of ways) {
    const member = memberOf(way);
    if (member) return member;
  }
  return null;
}

/** "2. Violine": German counts so which of them he is, and not how many. */
const ORDINAL = /^\d{1,2}\.\s*(?=\p{L})/u;

function counted(words: string): { readonly count: number; readonly name: string } {
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

function notUnderstood(words: string, said: string): string {
  const near = nearest(said);
  if (near === null)
    return t`“${words}” is no instrument of the catalogue: write its name, or an abbreviation such as vl, va, vc, cl, pf.`;
  return t`“${words}” is no instrument of the catalogue: do you mean “${asWritten(near)}”?`;
}

/** The words known are in small letters without accents, which is not how German writes a name. */
function asWritten(word: string): string {
  if (language() === 'en') return word;
  return memberOf(word)?.name.replace(/,.*/u, '') ?? word;
}

/** The word that begins like it for longest, of those the one as long as it; null: not even two letters. */
function nearest(said: string): string | null {
  let [best, longest]: [string | null, number] = [null, 1];
  const longer = (word: string): number => Math.abs(word.length - said.length);
  for (const word of wordsKnown()) {
    const common = commonStart(word, said);
    if (common > longest || (common === longest && best !== null && longer(word) < longer(best))) {
      [best, longest] = [word, common];
    }
  }
  return best;
}

function commonStart(a: string, b: string): number {
  let length = 0;
  while (length < a.length && a[length] === b[length]) length++;
  return length;
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
