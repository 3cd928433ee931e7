/** What people write for an instrument when they write down an ensemble: names, and the trade's abbreviations. */

import { INSTRUMENT_MODELS, instrumentModel, type InstrumentModel } from '../catalogue/instruments.ts';
import { LARGE_INSTRUMENT_MODELS, largeInstrumentModel } from '../catalogue/large-instruments.ts';
import { kindNamed, namesOfInstruments } from '../score/parts/names-of-instruments.ts';
import { t } from '../words/say.ts';
import { abbreviations, kindShort } from './abbreviations.ts';
import { plainWords } from './plain-words.ts';

/** One who plays, and what on. */
export type Member =
  | { readonly kind: 'carried'; readonly name: string; readonly model: InstrumentModel }
  | { readonly kind: 'piano' | 'largeInstrument'; readonly name: string; readonly model: string }
  /** Stands at a table of small things. */
  | { readonly kind: 'percussion'; readonly name: string };

/** Who sings, or works at a table. */
const OTHERS: Readonly<Record<string, () => Member>> = {
  ...wordsFor(
    voice(() => t`Soprano`),
    'soprano, sopr, sop, s, sopran',
  ),
  ...wordsFor(
    voice(() => t`Mezzo-soprano`),
    'mezzo-soprano, mezzo soprano, mezzo, mez, ms, mezzosopran, mezzo-sopran',
  ),
  ...wordsFor(
    voice(() => t`Alto`),
    'alto, contralto, a, alt',
  ),
  ...wordsFor(
    voice(() => t`Countertenor`),
    'countertenor, ct, altus',
  ),
  ...wordsFor(
    voice(() => t`Tenor`),
    'tenor, ten, t',
  ),
  ...wordsFor(
    voice(() => t`Baritone`),
    'baritone, bariton, bar',
  ),
  ...wordsFor(
    voice(() => t`Bass voice`),
    'bass voice, basso, b, bassstimme, bass-stimme',
  ),
  ...wordsFor(
    voice(() => t`Voice`),
    'voice, voices, singer, singers, vocals, vox, stimme, gesang, ges, singstimme, sanger, sangerin',
  ),
  ...wordsFor(
    carried('speaker', () => t`Speaker`),
    'speaker, narrator, reciter, sprecher, sprecherin, spr',
  ),
  ...wordsFor(
    percussion,
    'percussion, perc, schlagzeug, schlgz, percussionist, schlagwerk, schlg, schlz, schlw, schl',
  ),
};

/** A grand that goes on most platforms; another is chosen afterwards. */
const PIANO = 'grand-210';

/** Words in small letters without accents and stops. Null: nothing that the catalogue has. */
export function memberOf(words: string): Member | null {
  return OTHERS[words]?.() ?? memberOfKind(kindShort(words) ?? kindNamed(words)) ?? memberNamed(words);
}

/** All words that are understood, for whoever mistypes one. */
export function wordsKnown(): readonly string[] {
  const words = [...abbreviations(), ...Object.keys(OTHERS), ...namesOfInstruments()];
  return words.filter((word) => memberOf(word) !== null);
}

function memberOfKind(kind: string | undefined): Member | null {
  if (kind === undefined) return null;
  if (kind === 'piano') return { kind: 'piano', name: t`Piano`, model: PIANO };
  const id = kind.replaceAll(' ', '-');
  const model = instrumentModel(id);
  if (model) return { kind: 'carried', name: model.name, model };
  const large = largeInstrumentModel(id);
  return large ? { kind: 'largeInstrument', name: large.name, model: large.id } : null;
}

/** As the catalogue itself calls it, in the language that is spoken: "Klarinette in B". */
function memberNamed(words: string): Member | null {
  const isMeant = ({ name }: { readonly name: string }): boolean => plainWords(name) === words;
  const model = INSTRUMENT_MODELS.find(isMeant);
  if (model) return { kind: 'carried', name: model.name, model };
  const large = LARGE_INSTRUMENT_MODELS.find(isMeant);
  return large ? { kind: 'largeInstrument', name: large.name, model: large.id } : null;
}

function carried(id: string, name: () => string): () => Member {
  const model = instrumentModel(id);
  if (!model) throw new Error(`the catalogue has no ${id}`);
  return () => ({ kind: 'carried', name: name(), model });
}

function voice(name: () => string): () => Member {
  return carried('voice', name);
}

function percussion(): Member {
  return { kind: 'percussion', name: t`Percussion` };
}

function wordsFor(member: () => Member, words: string): Record<string, () => Member> {
  return Object.fromEntries(words.split(', ').map((word) => [word, member]));
}
