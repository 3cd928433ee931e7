import { afterEach, describe, expect, it } from 'vitest';
import { fieldTree } from '#model/file-format/field-tree.ts';
import { fieldWords, wordsOf } from '#model/file-format/field-words.ts';
import { FIELD_WORDS } from '#model/file-format/field-words/table.ts';
import { KINDS } from '#model/file-format/schema.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { german } from '#model/words/german/index.ts';
import { speakFrom } from '#model/words/speak-from.ts';

afterEach(speakEnglish);

/** A second entry of every list: "sides[].reader" as "sides[1].reader". */
const anEntryOf = (pattern: string): string => pattern.replaceAll('[]', '[1]');

/** What only the file calls so: a path, an index, words run together. */
const PATH = /[a-z][A-Z]|\[|\]|\w\.\w|undefined/;

describe.each(['English', 'German'])('in %s', (spoken) => {
  it.each(KINDS)('every field of a %s has a word, however deep it is', (kind) => {
    if (spoken === 'German') speakFrom('de', german);
    const patterns = [...fieldTree(kind).keys()];
    expect(patterns.length).toBeGreaterThan(3);
    for (const pattern of patterns) {
      expect(wordsOf(kind, anEntryOf(pattern)), `${kind}.${pattern}`).toMatch(/\S/);
      expect(fieldWords(kind, anEntryOf(pattern)).replace(/PDFs? /g, ''), `${kind}.${pattern}`).not.toMatch(
        PATH,
      );
    }
  });
});

describe('the words of fields', () => {
  it.each(KINDS)('of a %s name no field that it does not have', (kind) => {
    const strangers = Object.keys(FIELD_WORDS[kind]).filter((pattern) => !fieldTree(kind).has(pattern));
    expect(strangers).toEqual([]);
  });

  it('tell each entry of a list on the way, and not the things that only hold others', () => {
    expect(fieldWords('concert', 'contacts[2].reachedAt')).toBe('contact 3, reached at');
    expect(fieldWords('player', 'person.size.stature')).toBe('stature');
    expect(fieldWords('seatBlock', 'aisles[0].afterSeat')).toBe('aisle 1, after seat');
    expect(fieldWords('pagePlan', 'stations[0].views[1][2]')).toBe(
      'paper on stand 1 of the plan, side 2, state 3 of the leaves',
    );
    expect(fieldWords('stand', 'sides[0].pagesAcross')).toBe('pages side by side');
    expect(fieldWords('stand', 'sides[1].pagesAcross')).toBe('other side, pages side by side');
    expect(fieldWords('stand', '')).toBe('');
  });

  it('of a field that nobody knows are what was given', () => {
    expect(fieldWords('stand', 'colour')).toBe('“colour”');
    expect(fieldWords('stand', 'toString')).toBe('“toString”');
  });
});
