import { afterEach, describe, expect, it } from 'vitest';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { figureValue } from '../../../../renderer/app/programme/figure-words.ts';

describe('figures of a comparison', () => {
  afterEach(speakEnglish);

  it('have the decimal sign of the language', () => {
    const shown = (): string[] => [
      figureValue(-8.13, 's', 'metric'),
      figureValue(71_300, 'mm', 'metric'),
      figureValue(-321, 'mm', 'metric'),
    ];
    expect(shown()).toEqual(['-8.1 s', '71.3 m', '-321 mm']);
    speakFrom('de', {});
    expect(shown()).toEqual(['-8,1 s', '71,3 m', '-321 mm']);
  });
});
