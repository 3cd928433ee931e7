/** What people write for an instrument when they write down an ensemble: names, and the trade's abbreviations. */

import { instrumentModel, type InstrumentModel } from '../catalogue/instruments.ts';
import { largeInstrumentModel } from '../catalogue/large-instruments.ts';
import { kindNamed, namesOfInstruments } from '../score/parts/names-of-instruments.ts';

/** One who plays, and what on. */
export type Member =
  | { readonly kind: 'carried'; readonly name: string; readonly model: InstrumentModel }
  | { readonly kind: 'piano' | 'largeInstrument'; readonly name: string; readonly model: string }
  /** Stands at a table of small things. */
  | { readonly kind: 'percussion'; readonly name: string };

/** Abbreviations beyond those in which parts are headed. Common practice, no source. */
const SHORT: Readonly<Record<string, string>> = {
  pic: 'piccolo',
  picc: 'piccolo',
  afl: 'flute alto',
  bfl: 'flute bass',
  rec: 'recorder',
  eh: 'cor anglais',
  ca: 'cor anglais',
  bcl: 'clarinet bass',
  bn: 'bassoon',
  fag: 'bassoon',
  cbn: 'contrabassoon',
  cfg: 'contrabassoon',
  ssax: 'saxophone soprano',
  asax: 'saxophone alto',
  tsax: 'saxophone tenor',
  bsax: 'saxophone baritone',
  sax: 'saxophone alto',
  saxophone: 'saxophone alto',
  hrn: 'horn',
  tp: 'trumpet',
  tr: 'trumpet',
  trp: 'trumpet',
  trb: 'trombone',
  tb: 'tuba',
  tba: 'tuba',
  euph: 'euphonium',
  v: 'violin',
  vn: 'violin',
  vni: 'violin',
  va: 'viola',
  br: 'viola',
  vlne: 'double bass',
  kb: 'double bass',
  bass: 'double bass',
  gtr: 'guitar',
  git: 'guitar',
  acc: 'accordion',
  akk: 'accordion',
  hp: 'harp',
  hrp: 'harp',
  pf: 'piano',
  pno: 'piano',
  kl: 'piano',
  mar: 'marimba',
  mba: 'marimba',
  vib: 'vibraphone',
  vibes: 'vibraphone',
  xyl: 'xylophone',
  glsp: 'glockenspiel',
  timp: 'timpani',
  pk: 'timpani',
};

/** Who sings, or works at a table. */
const OTHERS: Readonly<Record<string, Member>> = {
  ...voices(['soprano', 'sopr', 'sop', 's']),
  ...voices(['mezzo-soprano', 'mezzo soprano', 'mezzo', 'mez', 'ms']),
  ...voices(['alto', 'contralto', 'a']),
  ...voices(['countertenor', 'ct']),
  ...voices(['tenor', 'ten', 't']),
  ...voices(['baritone', 'bariton', 'bar']),
  ...voices(['bass voice', 'basso', 'b']),
  ...voices(['voice', 'voices', 'singer', 'singers', 'vocals', 'vox']),
  ...carried('speaker', ['speaker', 'narrator', 'reciter']),
  ...percussion(['percussion', 'perc', 'schlagzeug', 'schlgz', 'percussionist']),
};

/** A grand that goes on most platforms; another is chosen afterwards. */
const PIANO = 'grand-210';

/** Words in small letters without accents and stops. Null: nothing that the catalogue has. */
export function memberOf(words: string): Member | null {
  return OTHERS[words] ?? memberOfKind(SHORT[words] ?? kindNamed(words));
}

const WORDS: readonly string[] = [
  ...Object.keys(SHORT),
  ...Object.keys(OTHERS),
  ...namesOfInstruments(),
].filter((word) => memberOf(word) !== null);

/** All words that are understood, for whoever mistypes one. */
export function wordsKnown(): readonly string[] {
  return WORDS;
}

function memberOfKind(kind: string | undefined): Member | null {
  if (kind === undefined) return null;
  if (kind === 'piano') return { kind: 'piano', name: 'Piano', model: PIANO };
  const id = kind.replaceAll(' ', '-');
  const model = instrumentModel(id);
  if (model) return { kind: 'carried', name: model.name, model };
  const large = largeInstrumentModel(id);
  return large ? { kind: 'largeInstrument', name: large.name, model: large.id } : null;
}

function carried(
  id: string,
  [first = '', ...others]: readonly string[],
  name = first,
): Record<string, Member> {
  const model = instrumentModel(id);
  if (!model) throw new Error(`the catalogue has no ${id}`);
  const member: Member = { kind: 'carried', name: capitalised(name), model };
  return Object.fromEntries([first, ...others].map((word) => [word, member]));
}

function voices(words: readonly string[]): Record<string, Member> {
  return carried('voice', words);
}

function percussion(words: readonly string[]): Record<string, Member> {
  return Object.fromEntries(words.map((word) => [word, { kind: 'percussion', name: 'Percussion' } as const]));
}

function capitalised(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
