/** The plan that a window is shown before it is there: of which concert, in which look, and when there is none. */

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import type { FirstPicture, PictureAsked } from '#contract/contract.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { Primitive } from '#model/drawing/primitives.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speak } from '../../../electron/services/language.ts';
import { rememberRecent } from '../../../electron/services/recent-files.ts';
import { DEFAULT_SETTINGS, writeSettings } from '../../../electron/services/settings.ts';
import { aConcert, aDocument, aPlayer, aStand } from '../../helpers/build.ts';
import { testShell, type TestShell } from '../../helpers/services.ts';

const ASKED: PictureAsked = {
  view: { width: 850, height: 700 },
  taken: { steps: 44, line: 37 },
  dark: false,
  locale: 'en-GB',
};

const DUO = writeDocument(aDocument(aConcert({ name: 'Duo' }), aPlayer({ name: 'Ottavino' })));
const SOLO = writeDocument(aDocument(aConcert({ name: 'Solo' }), aPlayer({ name: 'Serpent' })));

afterEach(speakEnglish);

async function pictureFrom({ handlers }: TestShell, change: Partial<PictureAsked> = {}) {
  const answer = await handlers['plan.first']({ ...ASKED, ...change });
  if (!answer.ok) throw new Error(answer.error.message);
  return answer.value;
}

async function shownBy(shell: TestShell, change: Partial<PictureAsked> = {}): Promise<FirstPicture> {
  const picture = await pictureFrom(shell, change);
  if (!picture) throw new Error('there is no picture');
  return picture;
}

function saved({ folder }: TestShell, name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

async function openedLast({ services }: TestShell, ...paths: string[]): Promise<void> {
  mkdirSync(services.state, { recursive: true });
  for (const path of paths) await rememberRecent(services.fs, services.state, path);
}

function wordsIn(primitives: readonly Primitive[]): string[] {
  return primitives.flatMap((each) =>
    each.kind === 'text' ? [each.text] : each.kind === 'group' ? wordsIn(each.children) : [],
  );
}

const coloursIn = (primitives: readonly Primitive[]): (string | undefined)[] =>
  primitives.flatMap((each) => (each.kind === 'path' ? [each.fill, each.stroke?.colour] : []));

describe('which concert it is of', () => {
  it('is the demo where nothing was ever opened, with the first steps over it', async () => {
    const picture = await shownBy(testShell());
    expect(wordsIn(picture.primitives)).toEqual(expect.arrayContaining(['Clarinet', 'Viola']));
    expect(picture).toMatchObject({ first: true, lines: [] });
  });

  it('is the last file, or the one that the window was opened for', async () => {
    const shell = testShell();
    const [duo, solo] = [saved(shell, 'duo.standlines', DUO), saved(shell, 'solo.standlines', SOLO)];
    await openedLast(shell, solo, duo);
    const last = await shownBy(shell);
    expect(last.first).toBe(false);
    expect(wordsIn(last.primitives)).toContain('Ottavino');
    const named = testShell({}, { open: solo });
    const picture = await shownBy(named);
    expect(picture.first).toBe(false);
    expect(wordsIn(picture.primitives)).toContain('Serpent');
  });

  it('is after a reload the file that the window worked on, or the demo if that was none', async () => {
    const shell = testShell();
    const [duo, solo] = [saved(shell, 'duo.standlines', DUO), saved(shell, 'solo.standlines', SOLO)];
    await openedLast(shell, solo, duo);
    const before = shell.services.handles.handleOf(solo);
    expect(wordsIn((await shownBy(shell, { before })).primitives)).toContain('Serpent');
    expect(wordsIn((await shownBy(shell, { before: null })).primitives)).toContain('Viola');
    const ofAnotherProgram = await shownBy(shell, { before: 'f'.repeat(32) });
    expect(wordsIn(ofAnotherProgram.primitives)).toContain('Ottavino');
  });

  it('is none when that cannot be opened; the demo would be another one', async () => {
    const shell = testShell();
    const broken = saved(shell, 'broken.standlines', DUO.slice(0, -20));
    await openedLast(shell, broken);
    expect(await pictureFrom(shell)).toBeNull();
    const gone = testShell({}, { open: join(shell.folder, 'gone.standlines') });
    expect(await pictureFrom(gone)).toBeNull();
  });

  it('is the next one when the first cannot be opened, as in the window', async () => {
    const shell = testShell();
    const broken = saved(shell, 'broken.standlines', '{}');
    await openedLast(shell, saved(shell, 'duo.standlines', DUO));
    const before = shell.services.handles.handleOf(broken);
    expect(wordsIn((await shownBy(shell, { before })).primitives)).toContain('Ottavino');
  });

  it('is what the file holds now', async () => {
    const shell = testShell();
    const path = saved(shell, 'duo.standlines', DUO);
    await openedLast(shell, path);
    const before = await shownBy(shell);
    expect((await shownBy(shell)).primitives, 'drawn once').toBe(before.primitives);
    writeFileSync(path, SOLO);
    expect(wordsIn((await shownBy(shell)).primitives)).toContain('Serpent');
  });

  it('leaves no trace: nothing counts as opened', async () => {
    const shell = testShell();
    await openedLast(shell, saved(shell, 'duo.standlines', DUO));
    const recent = join(shell.services.state, 'recent.json');
    const before = readFileSync(recent, 'utf8');
    await shownBy(
      testShell({ state: shell.services.state }, { open: saved(shell, 'solo.standlines', SOLO) }),
    );
    await shownBy(shell);
    expect(readFileSync(recent, 'utf8')).toBe(before);
  });
});

describe('how it looks', () => {
  it("is the user's choice of colours, or the system's", async () => {
    const shell = testShell();
    const lightOnes = coloursIn((await shownBy(shell)).primitives);
    expect(lightOnes).toContain(PALETTES.light.platform);
    const dark = await shownBy(shell, { dark: true });
    expect(dark.theme).toBe('dark');
    expect(coloursIn(dark.primitives)).toContain(PALETTES.dark.platform);
    await writeSettings(shell.services.fs, shell.services.state, { ...DEFAULT_SETTINGS, theme: 'light' });
    expect(coloursIn((await shownBy(shell, { dark: true })).primitives)).toEqual(lightOnes);
  });

  it('is in the units of the region, of the file, or of the settings', async () => {
    const shell = testShell();
    const metric = wordsIn((await shownBy(shell)).primitives);
    expect(metric).toContain('2 m');
    expect(wordsIn((await shownBy(shell, { locale: 'en-US' })).primitives)).not.toContain('2 m');
    await writeSettings(shell.services.fs, shell.services.state, { ...DEFAULT_SETTINGS, units: 'metric' });
    expect(wordsIn((await shownBy(shell, { locale: 'en-US' })).primitives)).toContain('2 m');
  });

  it('is in the language of the page, the legend too', async () => {
    const shell = testShell();
    expect((await shownBy(shell)).legend[0]).toBe('over 90 % seen');
    await speak('de');
    const german = await shownBy(shell);
    expect(wordsIn(german.primitives)).toEqual(expect.arrayContaining(['Klarinette', 'SAAL']));
    expect(german.legend[0]).toBe('über 90 % sichtbar');
  });

  it('has names that the program once gave in the language of the page', async () => {
    const shell = testShell();
    const german = writeDocument(aDocument(aPlayer({ name: 'Klarinette' })));
    await openedLast(shell, saved(shell, 'quartett.standlines', german));
    expect(wordsIn((await shownBy(shell)).primitives)).toContain('Clarinet');
  });

  it('is written as large as in the window that it is for', async () => {
    const shell = testShell();
    const [large, small] = [
      await shownBy(shell),
      await shownBy(shell, { view: { width: 400, height: 300 } }),
    ];
    expect(small.paperScale).toBeGreaterThan(large.paperScale);
  });

  it('comes with what there is to read over it', async () => {
    const shell = testShell({}, { notice: 'Shown by a browser' });
    expect((await shownBy(shell)).lines).toEqual(['Shown by a browser']);
    const strange = writeDocument(aDocument(aStand({ model: 'not-in-this-catalogue' })));
    await openedLast(shell, saved(shell, 'strange.standlines', strange));
    expect((await shownBy(shell)).lines).toEqual([
      'Shown by a browser',
      expect.stringMatching(/^strange\.standlines: .*not-in-this-catalogue/),
    ]);
  });
});

it('what is drawn ahead is there for the window that asks', async () => {
  const shell = testShell();
  const { firstPictures } = shell.services;
  await firstPictures.ahead({ open: null, notice: null, locale: 'en-GB' });
  await firstPictures.ahead({ open: join(shell.folder, 'gone.standlines'), notice: null, locale: 'en-GB' });
  expect(wordsIn((await shownBy(shell)).primitives)).toContain('Viola');
});
