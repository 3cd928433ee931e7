/** Ensembles that have a name, and who plays in them. What each is made up of: common practice, no source. */

import { language } from '../words/catalogue.ts';

/**
 * Words as `plainWords` makes them, to who plays, in the order of a score. A name that stands for more than one make-up
 * (a flute quartet: four flutes, or a flute and three strings) has none.
 */
const MADE_UP: Readonly<Record<string, string>> = {
  'string trio, streichtrio': 'vl, va, vc',
  'string quartet, streichquartett': 'vl, vl, va, vc',
  'string sextet, streichsextett': 'vl, vl, va, va, vc, vc',
  'string octet, streichoktett': 'vl, vl, vl, vl, va, va, vc, vc',
  'piano trio, klaviertrio': 'vl, vc, pf',
  'piano quartet, klavierquartett': 'vl, va, vc, pf',
  'piano quintet, klavierquintett': 'vl, vl, va, vc, pf',
  'wind quintet, woodwind quintet, blaserquintett, holzblaserquintett': 'fl, ob, cl, hn, bsn',
  'wind quartet, woodwind quartet, holzblaserquartett': 'fl, ob, cl, bsn',
  'wind octet, blaseroktett': 'ob, ob, cl, cl, hn, hn, bsn, bsn',
  'reed trio, rohrblatttrio': 'ob, cl, bsn',
  'brass trio, blechblasertrio': 'tpt, hn, trb',
  'brass quintet, blechblaserquintett, blechquintett': 'tpt, tpt, hn, trb, tba',
  'saxophone quartet, sax quartet, saxophonquartett': 'ssax, asax, tsax, bsax',
  'clarinet quintet, klarinettenquintett': 'cl, vl, vl, va, vc',
  'oboe quartet, oboenquartett': 'ob, vl, va, vc',
  'horn quartet, hornquartett': 'hn, hn, hn, hn',
  'trombone quartet, posaunenquartett': 'trb, trb, trb, trb',
  'cello quartet, celloquartett': 'vc, vc, vc, vc',
  'guitar duo, gitarrenduo': 'gtr, gtr',
  'guitar quartet, gitarrenquartett': 'gtr, gtr, gtr, gtr',
  'string quintet, streichquintett': '',
  'flute quartet, flotenquartett': '',
  'flute trio, flotentrio': '',
  'clarinet trio, klarinettentrio': '',
  'clarinet quartet, klarinettenquartett': '',
  'horn trio, horntrio': '',
  'wind trio, blasertrio': '',
  'wind sextet, blasersextett': '',
  'blaserquartett, brass quartet, blechblaserquartett': '',
  'piano duo, klavierduo': '',
  'piano sextet, klaviersextett': '',
};

const BY_NAME: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(MADE_UP).flatMap(([names, members]) =>
    names.split(', ').map((name) => [name, members === '' ? [] : members.split(', ')] as const),
  ),
);

/** Abbreviations of those who play; empty: a name of more than one make-up. Null: no name of an ensemble. */
export function playersOfEnsemble(words: string): readonly string[] | null {
  return BY_NAME.get(words) ?? null;
}

/** Those of the language that is spoken. English writes them in two words, German in one. */
export function ensembleNames(): readonly string[] {
  return [...BY_NAME.keys()].filter((name) => name.includes(' ') === (language() === 'en'));
}

/** With the capital and the umlauts that German has. */
export function ensembleAsWritten(name: string): string {
  if (name.includes(' ')) return name;
  const accented = name.replace('blaser', 'bläser').replace('floten', 'flöten');
  return `${accented.slice(0, 1).toUpperCase()}${accented.slice(1)}`;
}
