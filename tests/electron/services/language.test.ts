import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { language, speakEnglish } from '#model/words/catalogue.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { speak, speakTo, wantedIn } from '../../../electron/services/language.ts';
import { DEFAULT_SETTINGS, writeSettings } from '../../../electron/services/settings.ts';

const stateFolder = () => mkdtempSync(join(tmpdir(), 'standlines-language-'));

afterEach(speakEnglish);

describe('what an Accept-Language header wants', () => {
  it.each([
    // RFC 9110, section 12.5.4: "I prefer Danish, but will accept British English and other types of English".
    ['da, en-gb;q=0.8, en;q=0.7', ['da', 'en-gb', 'en']],
    ['en;q=0.2,de-DE,de;q=0.9', ['de-DE', 'de', 'en']],
    ['de ; q=0.5 , fr', ['fr', 'de']],
    // "A value of 0 means not acceptable" (12.4.2).
    ['de;q=0, en', ['en']],
    ['*', ['*']],
    ['', []],
    [undefined, []],
  ] as const)('%s', (header, wanted) => {
    expect(wantedIn(header)).toEqual(wanted);
  });
});

describe('the language of a page', () => {
  it('is the preferred one as long as nothing was chosen, and the shell speaks it from then on', async () => {
    expect(await speakTo(nodeFs, stateFolder(), ['de-CH', 'en'])).toBe('de');
    expect(language()).toBe('de');
    expect(await speakTo(nodeFs, stateFolder(), ['fr'])).toBe('en');
    expect(language()).toBe('en');
  });

  it('is the chosen one whatever is preferred', async () => {
    const state = stateFolder();
    await writeSettings(nodeFs, state, { ...DEFAULT_SETTINGS, language: 'de' });
    expect(await speakTo(nodeFs, state, ['en-GB'])).toBe('de');
    await writeSettings(nodeFs, state, { ...DEFAULT_SETTINGS, language: 'en' });
    expect(await speakTo(nodeFs, state, ['de'])).toBe('en');
  });

  it('is the preferred one with settings of before there was a choice, which are kept', async () => {
    const state = stateFolder();
    const before = { theme: 'dark', units: 'metric', paper: null, singleKeys: false };
    writeFileSync(join(state, 'settings.json'), JSON.stringify(before));
    expect(await speakTo(nodeFs, state, ['de'])).toBe('de');
  });

  it('can be spoken without a page', async () => {
    await speak('de');
    expect(language()).toBe('de');
    await speak('en');
    expect(language()).toBe('en');
  });
});
