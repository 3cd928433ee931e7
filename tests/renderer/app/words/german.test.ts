import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german as sentences } from '#model/words/german/index.ts';
import { text as english } from '../../../../renderer/app/text.ts';
import { german } from '../../../../renderer/app/words/german/index.ts';

type Said = string | ((...values: never[]) => unknown);

/** Every sentence of a catalogue by its path, lists item by item. */
function sentencesOf(catalogue: object, path = ''): [path: string, said: Said][] {
  return Object.entries(catalogue).flatMap(([key, said]: [string, Said | object]) =>
    typeof said === 'object'
      ? sentencesOf(said, `${path}${key}.`)
      : [[`${path}${key}`, said] as [string, Said]],
  );
}

/** Values of every kind that sentences take; each sentence understands some of them. */
const VALUES = [
  [3, 4, 5],
  [1, 1, 1],
  [-0.5, 0.25, 7],
  ['Oboe', 'Horn', 'Harfe'],
  [['Oboe'], 'Horn', 'Harfe'],
  [['Oboe', 'Horn'], 'Harfe', 'Tuba'],
  [['Oboe', 'Horn', 'Harfe', 'Tuba', 'Fagott'], 'Flöte', 'Viola'],
  [null, null, null],
];

/** What is said with those of the values that are understood. */
function saidWith(said: Said): string[] {
  if (typeof said === 'string') return [said];
  return VALUES.flatMap((values) => {
    try {
      return [said(...(values.slice(0, said.length) as never[]))].flat() as string[];
    } catch {
      return [];
    }
  });
}

const SAME_WORD = 'the German word is the same';
const FIGURES = 'figures and signs alone';
const SILENCE = 'nothing is said';
const NAMES = 'only puts together what is named or worded elsewhere';

/** What reads alike in both languages, and why it may. */
const ALIKE: Readonly<Record<string, string>> = {
  product: 'the name of the program',
  'bar.languages.de': 'each language is called as it calls itself',
  'bar.languages.en': 'each language is called as it calls itself',
  'kinds.instrument': SAME_WORD,
  'music.tempo': SAME_WORD,
  'pack.contactName': SAME_WORD,
  'player.person': SAME_WORD,
  'properties.name': SAME_WORD,
  'stand.form': SAME_WORD,
  'turns.turnFields.hand': SAME_WORD,
  'pdf.look': SAME_WORD,
  percent: FIGURES,
  'dialogs.print.parts.plot': SAME_WORD,
  'dialogs.print.ratio': FIGURES,
  'house.change': FIGURES,
  'house.figure': FIGURES,
  'music.pagesExample': FIGURES,
  'pdf.millimetres': FIGURES,
  'plan.ratio': FIGURES,
  'player.seconds': FIGURES,
  'programme.clock': FIGURES,
  'programme.minutes': FIGURES,
  'programme.unknown': FIGURES,
  'ruler.zoom': FIGURES,
  'stand.millimetres': FIGURES,
  'stand.otherPaper': FIGURES,
  'strip.speeds': FIGURES,
  'underlay.degrees': FIGURES,
  'underlay.percent': FIGURES,
  'ensemble.many': NAMES,
  'hands.inGroup': NAMES,
  'paper.found': NAMES,
  'plan.pointer': NAMES,
  'seat.short': NAMES,
  'strip.at': NAMES,
  'tables.wrong': NAMES,
  'turns.at': NAMES,
  'turns.sentence': NAMES,
  'turns.without': NAMES,
  'help.standings.own': SILENCE,
  'help.standings.practice': SILENCE,
  'programme.verdicts.unknown': SILENCE,
  'underlay.caught.free': SILENCE,
};

const inGerman = new Map(sentencesOf(german));

beforeEach(() => speakFrom('de', sentences));
afterEach(speakEnglish);

describe('the window in German', () => {
  it('has every sentence of the English one, with as many values', () => {
    const shapeOf = ([path, said]: [string, Said]): string =>
      `${path}${typeof said === 'function' ? `(${said.length})` : ''}`;
    expect([...inGerman].map(shapeOf).sort()).toEqual(sentencesOf(english).map(shapeOf).sort());
  });

  it('says nothing in English but what is the same in both', () => {
    const same = sentencesOf(english).filter(([path, said]) => {
      const known = saidWith(said);
      expect(known.length, `values for ${path}`).toBeGreaterThan(0);
      return String(known) === String(saidWith(inGerman.get(path) ?? ''));
    });
    expect(same.map(([path]) => path).sort()).toEqual(Object.keys(ALIKE).sort());
  });

  it('is silent nowhere but where English is', () => {
    const silent = (catalogue: object): string[] =>
      sentencesOf(catalogue)
        .filter(([, said]) => saidWith(said).every((words) => words === ''))
        .map(([path]) => path);
    expect(silent(german)).toEqual(silent(english));
  });

  it('quotes as German does', () => {
    const said = [...inGerman].flatMap(([path, words]) => saidWith(words).map((each) => `${path}: ${each}`));
    expect(said.filter((words) => /[“”‚‘]/.test(words.replaceAll(/„[^“]*“/g, '')))).toEqual([]);
  });
});

describe('its grammar', () => {
  it('counts one and many', () => {
    const { outline, hands, turns, pdf, underlay, plan } = german;
    expect([1, 2].map((count) => outline.findings(count, 'Verfehlt'))).toEqual([
      '1 Befund, Verfehlt',
      '2 Befunde, der schwerste: Verfehlt',
    ]);
    expect([1, 2].map(turns.planned)).toEqual(['Geplant: 1 Wendestelle.', 'Geplant: 2 Wendestellen.']);
    expect([1, 3].map(hands.hiddenCount)).toEqual([
      '1 Element ist ausgeblendet; Prüfungen zählen es mit',
      '3 Elemente sind ausgeblendet; Prüfungen zählen sie mit',
    ]);
    expect([1, 2].map(turns.broken)).toEqual(['1 Regel ist verletzt', '2 Regeln sind verletzt']);
    expect(plan.summary('Trio', 1, 120)).toBe('Trio: 1 Element auf dem Podium, 120 Plätze im Saal.');
    expect(plan.summary('', 0, 0)).toBe('Nichts auf dem Podium, keine Plätze im Saal.');
    expect(pdf.tooMany(3, 5, pdf.leftOut([4, 5], '4-5'))).toBe(
      'Aus dem PDF kommen 5 Seiten, die Stimme hat 3: PDF-Seiten 4 und 5 bleiben übrig.',
    );
    expect(underlay.traced('', 1)).toBe(
      'Das Podium ist nachgezeichnet. Offene Kanten: keine. 1 Tür kam in die nächste Kante. Unter „Podium und Saal“ nachprüfen.',
    );
  });

  it('writes numbers with a comma and thousands with a point', () => {
    const { turns, figures, music, ruler, stand } = german;
    expect(turns.spare(1.25)).toBe('1,3\u00a0s übrig');
    expect(turns.spare(-0.01)).toBe('0,1\u00a0s zu wenig Zeit');
    expect(turns.progress(turns.stages.turns, 1234567)).toBe(
      'Gesucht: die wenigsten Wendestellen. 1.234.567 Zustände durchgesehen',
    );
    expect(figures.rest(2.5, 'part')).toBe('Pause 2,5\u00a0s, aus der Stimme');
    expect(music.tempoAt('12', 92.5, music.tempos.typed)).toBe('12: 92,5 (eingegeben)');
    expect(ruler.at(12.34, 5)).toBe('12,3 mm von links, 5,0 mm von oben');
    expect(stand.staffSizeHint(7, 7.5, 8.5)).toContain('Mindestens 7, am besten 7,5 bis 8,5');
  });

  it('lists with „und“ and names sides as the house sees them', () => {
    expect(german.list(['Pult 1', 'Pult 2', 'Tisch 1'])).toBe('Pult 1, Pult 2 und Tisch 1');
    expect([german.list([]), german.list(['Pult 1'])]).toEqual(['', 'Pult 1']);
    expect(german.properties.wrongSide('SL', 'SR')).toBe('Hier gilt nur re oder li.');
    expect(german.properties.wrongSide('US', 'DS')).toBe('Hier gilt nur hi oder vo.');
  });

  it('says whole sentences', () => {
    expect(german.removedAlong('Klarinette (Spieler 1)', 'Pult 2')).toBe(
      'Gelöscht: Klarinette (Spieler 1); mit gelöscht: Pult 2.',
    );
    expect(german.whatIf.by('120 mm', '20° nach rechts')).toBe(
      'Tiefer: um 120 mm, so weit es geht. Gedreht: um 20° nach rechts, wo am meisten zu sehen ist.',
    );
    expect(german.turns.remedy.rest(2.5, 'Oboe', 3, '1:05,0 (Takt 48)')).toBe(
      'eine Pause von 2,5\u00a0s für Oboe nach Seite 3, bei 1:05,0 (Takt 48)',
    );
  });
});
