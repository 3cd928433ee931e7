/** A concert begun in one language and opened in a window of the other. */

import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { readEnsemble } from '#model/arrange/ensemble-text.ts';
import { VENUE_MODELS } from '#model/catalogue/venues.ts';
import { move } from '#model/commands/move.ts';
import { setFields } from '#model/commands/set-fields.ts';
import { applyDiff } from '#model/document/diff.ts';
import { allOf, concertOf, setupsOf, type Document } from '#model/document/document.ts';
import type { Outcome } from '#model/commands/command.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { german } from '#model/words/german/index.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { readDemo } from '#model/file-format/demo.ts';
import { inOwnWords, SET_DOWN } from '#model/file-format/given-names.ts';
import { thingsWords as germanThings } from '../../../renderer/app/words/german/things.ts';
import { thingsWords } from '../../../renderer/app/words/things.ts';
import { addEnsemble } from '../../../renderer/store/ensemble.ts';
import { newConcert } from '../../../renderer/store/new-concert.ts';
import { aDocument, aPlayer, aSeatBlock, SETUP } from '../../helpers/build.ts';

type Spoken = 'en' | 'de';

const speak = (spoken: Spoken): void => (spoken === 'de' ? speakFrom('de', german) : speakEnglish());

afterEach(speakEnglish);

function done(document: Document, outcome: Outcome): Document {
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(document, outcome.diff);
}

function begun(spoken: Spoken, venue: (typeof VENUE_MODELS)[number]): Document {
  speak(spoken);
  const empty = newConcert(venue, 'metric');
  const { members } = readEnsemble('2 vl, vc, bass clarinet, soprano, speaker, perc, pf');
  const order = { units: 'metric', shape: 'arc', withStands: true, shared: false } as const;
  const outcome = addEnsemble(empty, members, { setup: setupsOf(empty)[0]?.id ?? SETUP, ...order });
  return outcome.ok ? done(empty, outcome) : empty;
}

const namesOf = (document: Document): string[] => [
  concertOf(document).venue,
  ...[...document.records.values()].map(({ id, name }) => `${id} ${name}`).sort(),
];

describe.each([
  ['en', 'de'],
  ['de', 'en'],
] as const)('begun in %s and opened in %s', (from, into) => {
  it.each(VENUE_MODELS.map((venue) => [venue.id, venue] as const))(
    '%s is called as if it were begun there',
    (_, venue) => {
      const written = writeDocument(begun(from, venue));
      const asBegunThere = namesOf(begun(into, venue));
      const read = readDocument(written);
      if (!read.ok) throw new Error(read.problem.message);
      const { document, inFile } = inOwnWords(read.document);
      expect(namesOf(document)).toEqual(asBegunThere);
      // Bit for bit what it was, however long it lay open.
      expect(writeDocument(inFile(document))).toBe(written);
    },
  );

  it('the demo is shown in the window’s words, and a copy of it keeps its own', () => {
    const text = readFileSync(new URL('../../../assets/demo-concert.standlines', import.meta.url), 'utf8');
    const demo = (spoken: Spoken): Document => {
      speak(spoken);
      const read = readDemo(text, 'en-GB');
      if (!read.ok) throw new Error(read.problem.message);
      return read.document;
    };
    const copy = demo(from);
    const there = demo(into);
    const { document, inFile } = inOwnWords(copy);
    const different = namesOf(document).filter((name, index) => name !== namesOf(there)[index]);
    // Two English ways to name a place share one German word.
    expect(different.filter((name) => !/wheelchair|steps/i.test(name))).toEqual([]);
    expect(writeDocument(inFile(document))).toBe(writeDocument(copy));
  });
});

describe('a name that somebody gave', () => {
  it('stays, and is written as it is', () => {
    speak('de');
    const own = aDocument(aPlayer({ name: 'Klara' }), aSeatBlock({ name: 'Stalls, left of the pillar' }));
    const { document, inFile } = inOwnWords(own);
    expect(document).toBe(own);
    expect(inFile(document)).toBe(own);
  });

  it('replaces the one that was given, while the others are written as they were read', () => {
    const file = aDocument(aPlayer({ name: 'Cello' }), aSeatBlock({ id: 'stalls', name: 'Stalls' }));
    speak('de');
    const { document, inFile } = inOwnWords(file);
    expect(document.records.get('stalls')?.name).toBe('Parkett');
    const player = allOf(document, 'player')[0];
    if (!player) throw new Error('no player');
    const renamed = done(document, setFields(document, { ids: [player.id], fields: { name: 'Clara' } }));
    const moved = done(renamed, move(renamed, { ids: ['stalls'], dx: 10, dy: 0 }));
    const later = inFile(moved);
    expect(later.records.get(player.id)?.name).toBe('Clara');
    expect(later.records.get('stalls')).toMatchObject({ name: 'Stalls', x: 10 + (aSeatBlock().x ?? 0) });
    expect(moved.records.get('stalls')?.name).toBe('Parkett');
  });

  it('of one kind is not taken for that of another', () => {
    speak('de');
    const { document } = inOwnWords(aDocument(aSeatBlock({ name: 'Viola' }), aPlayer({ name: 'Front' })));
    expect([...document.records.values()].map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Viola', 'Front']),
    );
  });
});

it('knows what the store calls the things that it sets down', () => {
  const kinds = Object.keys(SET_DOWN) as (keyof typeof SET_DOWN)[];
  const told = kinds.map((kind) => [thingsWords.toPlace.named[kind], germanThings.toPlace.named[kind]]);
  expect(told).toEqual(Object.values(SET_DOWN));
});
