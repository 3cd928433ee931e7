import { beforeAll, afterAll, describe, expect, it, vi } from 'vitest';

/** The window's modules as the German page reads them: the language is chosen first. */
async function germanWindow() {
  vi.resetModules();
  const { speakFrom } = await import('#model/words/speak-from.ts');
  const { german: sentences } = await import('#model/words/german/index.ts');
  const { choose } = await import('../../../renderer/app/words/chosen.ts');
  const { german } = await import('../../../renderer/app/words/german/index.ts');
  speakFrom('de', sentences);
  choose(german);
  const { placingActions } = await import('../../../renderer/app/placing-actions.ts');
  const { keyWords } = await import('../../../renderer/app/key-words.ts');
  const { found } = await import('../../../renderer/store/things.ts');
  const { text } = await import('../../../renderer/app/text.ts');
  return { placingActions, keyWords, found, text };
}

describe('the German window', () => {
  let open: Awaited<ReturnType<typeof germanWindow>>;
  beforeAll(async () => {
    open = await germanWindow();
  });
  afterAll(() => vi.resetModules());

  it('finds what can be set down by German words', () => {
    const ids = (...wanted: string[]): string[] => open.placingActions(wanted).map(({ id }) => id);
    expect(ids('hinstellen', 'dirigent')).toContain('place.riser-small');
    expect(ids('notenständer')).toContain('place.conductor');
    expect(ids('music', 'stand')).toEqual([]);
    expect(open.found('Blechbläser').map(({ id }) => id)).toContain('player-horn');
    expect(open.found('Rücken an Rücken').every(({ id }) => id.endsWith('-pair'))).toBe(true);
  });

  it('prints keys as they stand on a German keyboard', () => {
    expect(['Mod+Shift+S', 'Delete', 'Mod+PageDown', 'Shift+ArrowLeft', 'F1'].map(open.keyWords)).toEqual([
      'Strg+Umschalt+S',
      'Entf',
      'Strg+Bild ab',
      'Umschalt+←',
      'F1',
    ]);
  });

  it('says sides as the house sees them', () => {
    // Stage left is the right-hand side of whoever faces the stage (common stage usage in both languages).
    expect(open.text.commands.moveStageLeft).toContain('nach rechts');
    expect(open.text.commands.turnRight).toContain('nach links');
    expect(open.text.commands.moveUpstage).toContain('nach hinten');
  });
});
