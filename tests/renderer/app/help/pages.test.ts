/** Looking for words in the pages of the help, in either language. */

import { afterEach, describe, expect, test } from 'vitest';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { HELP_PAGE_ACTIONS } from '../../../../renderer/app/help/help-actions.ts';
import { helpPages, pagesWith } from '../../../../renderer/app/help/pages.ts';

const found = (search: string): string[] => pagesWith(helpPages('metric'), search).map(({ id }) => id);

afterEach(speakEnglish);

describe('the help', () => {
  test('finds the pages that have every word, in whatever letters, those with them in the title first', () => {
    expect(found('WHEELCHAIR turn')[0]).toBe('wheelchair');
    expect(found('ramp')).toContain('wheelchair');
    expect(found('wheelchair zither')).toEqual([]);
    expect(found(' ')).toHaveLength(helpPages('metric').length);
  });

  test('and by German words in German', () => {
    expect(found('rollstühle')).toEqual([]);
    speakFrom('de', german);
    expect(found('rollstühle')[0]).toBe('wheelchair');
    expect(found('Stufenlos Kreis')).toContain('wheelchair');
    expect(found('höhe Notenzeilen')[0]).toBe('reading');
    expect(found('wheelchair')).toEqual([]);
  });

  test('is among the commands by the titles of the language that is spoken then', () => {
    const words = (): string[] => HELP_PAGE_ACTIONS.map((action) => action.words());
    expect(words()).toContain('Help: Open edges');
    speakFrom('de', german);
    expect(words().join('\n')).toContain('Offene Kanten');
  });
});
