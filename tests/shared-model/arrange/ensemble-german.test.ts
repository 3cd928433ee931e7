/** Ensembles as they are written down in German. What the abbreviations mean: common practice, no source. */

import { afterEach, beforeEach, describe, expect, it, test } from 'vitest';
import { readEnsemble } from '#model/arrange/ensemble-text.ts';
import { memberOf, wordsKnown, type Member } from '#model/arrange/instrument-words.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';

const names = (text: string): string[] => readEnsemble(text).members.map(({ name }) => name);
const problems = (text: string): (string | null)[] =>
  readEnsemble(text).entries.map(({ problem }) => problem);

/** Which thing of the catalogue somebody plays, whatever it is called. */
function modelOf(member: Member | null): string | undefined {
  if (member === null || member.kind === 'percussion') return member?.kind;
  return member.kind === 'carried' ? member.model.id : member.model;
}

beforeEach(() => speakFrom('de', german));
afterEach(speakEnglish);

describe('a German ensemble as text', () => {
  it.each([
    ['2 Vl, Va, Vc', ['Violine 1', 'Violine 2', 'Viola', 'Violoncello']],
    ['Kl, Va, Schlg', ['Klarinette', 'Viola', 'Schlagzeug']],
    [
      'Fl, Ob, Klar, Fg, Hr, Trp, Pos, Tb, Pk',
      ['Flöte', 'Oboe', 'Klarinette', 'Fagott', 'Horn', 'Trompete', 'Posaune', 'Tuba', 'Pauken, vier'],
    ],
    ['Bkl., Kfg. und Klav.', ['Bassklarinette', 'Kontrafagott', 'Klavier']],
    ['Br, Kb, Hfe, Akk, Git', ['Viola', 'Kontrabass', 'Konzertharfe', 'Akkordeon', 'Gitarre']],
    [
      'zwei Violinen, eine Bratsche, drei Oboen',
      ['Violine 1', 'Violine 2', 'Viola', 'Oboe 1', 'Oboe 2', 'Oboe 3'],
    ],
    ['1. Violine, 2. Violine, Viola', ['Violine 1', 'Violine 2', 'Viola']],
    ['2 Englischhörner, Kontrabässe', ['Englischhorn 1', 'Englischhorn 2', 'Kontrabass']],
    ['Altsaxofon, Floete, Flügelhorn', ['Altsaxophon', 'Flöte', 'Flügelhorn']],
    [
      'Sopran, Mezzosopran, Alt, Tenor, Bariton, Bassstimme, Sprecherin',
      ['Sopran', 'Mezzosopran', 'Alt', 'Tenor', 'Bariton', 'Bassstimme', 'Sprecher'],
    ],
    ['Große Trommel, Röhrenglocken', ['Große Trommel mit Ständer', 'Röhrenglocken']],
    ['Klarinette in B, Klarinette in Es', ['Klarinette in B', 'Klarinette in Es']],
    ['Streichquartett und Klarinette', ['Violine 1', 'Violine 2', 'Viola', 'Violoncello', 'Klarinette']],
    ['Klaviertrio mit Sopran', ['Violine', 'Violoncello', 'Klavier', 'Sopran']],
    ['Saxofonquartett', ['Sopransaxophon', 'Altsaxophon', 'Tenorsaxophon', 'Baritonsaxophon']],
    ['2 Vl Va Vc Kb', ['Violine 1', 'Violine 2', 'Viola', 'Violoncello', 'Kontrabass']],
    ['zweite Geige, Hörner, Kontrafagotte', ['Violine', 'Horn', 'Kontrafagott']],
    ['string quartet', ['Violine 1', 'Violine 2', 'Viola', 'Violoncello']],
    ['two violins, cello and 2 horns', ['Violine 1', 'Violine 2', 'Violoncello', 'Horn 1', 'Horn 2']],
  ])('%j', (text, expected) => {
    expect(problems(text).filter(Boolean)).toEqual([]);
    expect(names(text)).toEqual(expected);
  });

  it('says in German what it does not understand, and names the nearest as German writes it', () => {
    expect(problems('Flotte, 0 Va, qxz, 41 Vl, Blaeserquintet, Streichquintett, clarinett')).toEqual([
      '„Flotte“ ist kein Instrument des Katalogs: ist „Flöte“ gemeint?',
      '„0 Va“: mindestens 1 angeben.',
      '„qxz“ ist kein Instrument des Katalogs: seinen Namen schreiben oder eine Abkürzung wie Vl, Va, Vc, Kl, Klav.',
      '„41 Vl“ ergibt mehr als 40 Spieler; größere Gruppen einzeln aufstellen.',
      '„Blaeserquintet“ ist kein Instrument des Katalogs: ist „Bläserquintett“ gemeint?',
      '„Streichquintett“ gibt es in mehreren Besetzungen: aufschreiben, wer spielt.',
      '„clarinett“ ist kein Instrument des Katalogs: ist „Klarinette“ gemeint?',
    ]);
  });

  it('understands every name that it gives', () => {
    const words = wordsKnown();
    expect(words.length).toBeGreaterThan(200);
    for (const word of words) {
      const member = memberOf(word);
      const name = member?.name.replace(/,.*/, '') ?? '';
      const { entries } = readEnsemble(name);
      expect([word, name, modelOf(entries[0]?.members[0] ?? null)]).toEqual([word, name, modelOf(member)]);
    }
  });
});

test('what means something else in English still does there', () => {
  expect(names('Kl, 2. Violine')).toEqual(['Klarinette', 'Violine']);
  speakEnglish();
  expect(names('Kl, 2. Violine')).toEqual(['Piano', 'Violin 1', 'Violin 2']);
});
