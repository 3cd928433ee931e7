import { afterEach, describe, expect, test } from 'vitest';
import { language, speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { languageFor } from '#model/words/languages.ts';
import { atMost, fixed } from '#model/words/numbers.ts';
import { msgid, ngettext, t } from '#model/words/say.ts';
import { sentencesIn, sourceFiles } from '../../helpers/sentences.ts';

const said = ['shared-model', 'electron'].flatMap(sourceFiles).flatMap(sentencesIn);

afterEach(speakEnglish);

describe('the German catalogue', () => {
  test('has every sentence that is said', () => {
    const missing = said.filter(({ english }) => german[english] === undefined);
    expect(missing.map(({ file, line, english }) => `${file}:${line} ${english}`)).toEqual([]);
  });

  test('has forms for one and many where a number decides, and only there', () => {
    const wrong = said.filter(({ english, many }) => {
      const entry = german[english];
      return entry !== undefined && Array.isArray(entry) !== (many !== null);
    });
    expect(wrong.map(({ file, line, english }) => `${file}:${line} ${english}`)).toEqual([]);
  });

  test('gives back the very values of each sentence', () => {
    const wrong = said.filter(({ english, many }) => {
      const values = valuesOf(many ?? english);
      return [german[english] ?? english].flat().some((other) => {
        const kept = valuesOf(other);
        return many === null ? String(kept) !== String(values) : kept.some((each) => !values.includes(each));
      });
    });
    expect(wrong.map(({ file, line, english }) => `${file}:${line} ${english}`)).toEqual([]);
  });

  test('knows all values of what is said for many, which it gets from what is said for one', () => {
    const wrong = said.filter(({ sharesValues }) => !sharesValues);
    expect(wrong.map(({ file, line, english }) => `${file}:${line} ${english}`)).toEqual([]);
  });

  test('has nothing that nobody says', () => {
    const keys = new Set(said.map(({ english }) => english));
    expect(Object.keys(german).filter((english) => !keys.has(english))).toEqual([]);
  });

  test('says one thing for a sentence that is said in two rooms', async () => {
    const files = sourceFiles('shared-model/words/german').filter((file) =>
      /german.(?!index)[\w-]+\.ts$/.test(file),
    );
    const rooms = await Promise.all(files.map(entriesOf));
    const entries = rooms.flat();
    const first = new Map(entries.toReversed());
    const others = entries.filter(([english, other]) => String(first.get(english)) !== String(other));
    expect([files.length > 10, others.map(([english]) => english)]).toEqual([true, []]);
  });

  test('is not asked before the language is known', () => {
    const early = said.filter(({ isInFunction }) => !isInFunction);
    expect(early.map(({ file, line }) => `${file}:${line}`)).toEqual([]);
  });
});

async function entriesOf(file: string): Promise<[string, unknown][]> {
  const room = (await import(/* @vite-ignore */ new URL(`../../../${file}`, import.meta.url).href)) as object;
  return Object.values(room).flatMap((entries: object) => Object.entries(entries));
}

/** Each value that stands in it, in order of number. */
function valuesOf(sentence: string): string[] {
  return [...new Set(sentence.match(/\{\d+\}/g))].sort();
}

describe('the language', () => {
  test.each([
    ['de', ['en-GB'], 'de'],
    ['en', ['de-DE'], 'en'],
    ['system', ['de-AT', 'en'], 'de'],
    ['system', ['fr-FR', 'DE', 'en'], 'de'],
    ['system', ['en-GB', 'de'], 'en'],
    ['system', ['fr', 'it'], 'en'],
    ['system', [], 'en'],
    // Lower Sorbian and Danish are not German, though they begin alike.
    ['system', ['dsb', 'da'], 'en'],
  ] as const)('chosen %s with %j preferred is %s', (choice, preferred, spoken) => {
    expect(languageFor(choice, preferred)).toBe(spoken);
  });

  test('a sentence is said with its values in their places, whatever their order', () => {
    const [cello, stand] = ['Cello ${ 1 }', 'stand 3'];
    speakFrom('de', {
      '{0} reads from {1}': 'Von {1} liest {0}',
      '{0} page of {1}': ['{0} Seite {1}', '{0} Seiten {1}'],
    });
    expect(language()).toBe('de');
    expect(t`${cello} reads from ${stand}`).toBe('Von stand 3 liest Cello ${ 1 }');
    const pages = (count: number) =>
      ngettext(msgid`${count} page of ${stand}`, `${count} pages of ${stand}`, count);
    expect([0, 1, 2].map(pages)).toEqual(['0 Seiten stand 3', '1 Seite stand 3', '2 Seiten stand 3']);
    speakEnglish();
    expect([0, 1, 2].map(pages)).toEqual(['0 pages of stand 3', '1 page of stand 3', '2 pages of stand 3']);
  });

  test('a value is said as it is, whatever it looks like', () => {
    speakFrom('de', { 'all of {0} and {1}': 'alles von {1} und {0}' });
    for (const name of ['{1}', '{{0}}', '$t(all)', '${ 0 }', '<b>&amp;', 'a_b.c:d', '']) {
      const other = 'Oboe';
      expect(t`all of ${name} and ${other}`).toBe(`alles von Oboe und ${name}`);
    }
  });

  test('braces that hold no value stay as they are', () => {
    speakFrom('de', { 'write {"by": "anyone"} and {0}': '{0} und {"by": "anyone"} schreiben' });
    const other = 'Oboe';
    expect(t`write {"by": "anyone"} and ${other}`).toBe('Oboe und {"by": "anyone"} schreiben');
  });

  test('numbers have its decimal sign', () => {
    expect([fixed(1.5, 2), atMost(1.5, 2), atMost(2, 2)]).toEqual(['1.50', '1.5', '2']);
    speakFrom('de', {});
    expect([fixed(1.5, 2), atMost(1.5, 2), atMost(-0.25, 2)]).toEqual(['1,50', '1,5', '-0,25']);
  });
});
