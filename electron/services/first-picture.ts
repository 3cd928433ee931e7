/**
 * The plan of the concert that a window is going to open, drawn while its scripts are still on their way. It is drawn
 * once, and again only when the file is another, or the window, its language or its settings are.
 */

import { basename } from 'node:path';
import type { FirstPicture, Handle, PictureAsked, Settings } from '#contract/contract.ts';
import { concertOf, type Document } from '#model/document/document.ts';
import { BANDS } from '#model/drawing/sight-bands.ts';
import { firstDrawing, type FirstDrawing, type FirstRequest } from '#model/drawing/screen/first-picture.ts';
import type { ViewSize } from '#model/drawing/screen/framing.ts';
import { readDemo } from '#model/file-format/demo.ts';
import { inOwnWords } from '#model/file-format/given-names.ts';
import { readDocument, type ReadResult } from '#model/file-format/read.ts';
import { language } from '#model/words/catalogue.ts';
import { createMeasure } from './fonts.ts';
import type { Fs } from './fs.ts';
import type { Handles } from './handles.ts';
import { openFile } from './open-file.ts';
import { recentFiles } from './recent-files.ts';
import { readSettings } from './settings.ts';

export interface FirstPictures {
  /** Null: what the window would open cannot be opened, so that it will show something else, and say why. */
  of(asked: PictureAsked, window: AskingWindow): Promise<FirstPicture | null>;
  /** Draws what a usual window would ask for, so that it is there when it does. Never rejects. */
  ahead(window: AskingWindow & { readonly locale: string }): Promise<void>;
}

export interface AskingWindow {
  /** Path of the file it was opened for. */
  readonly open: string | null;
  /** Something the user should know first. */
  readonly notice: string | null;
}

interface Surroundings {
  readonly fs: Fs;
  readonly state: string;
  readonly handles: Handles;
  readonly demo: string;
}

interface FirstConcert {
  readonly document: Document;
  readonly lines: readonly string[];
}

/** A window of the size that the shells open, without its bar, columns and strips. */
const USUAL: Omit<PictureAsked, 'locale'> = {
  view: { width: 850, height: 720 },
  taken: { steps: 41, line: 37 },
  dark: false,
};

export function createFirstPictures(surroundings: Surroundings): FirstPictures {
  const { fs, state } = surroundings;
  const read = rememberingReader();
  const draw = rememberingDrawer();

  const of: FirstPictures['of'] = async (asked, window) => {
    const [settings, recent] = await Promise.all([readSettings(fs, state), recentFiles(fs, state)]);
    const paths = pathsToOpen(surroundings, asked.before, window.open ?? recent[0] ?? null);
    const concert = await firstConcert(surroundings, paths, { read, locale: asked.locale });
    if (!concert) return null;
    const first = recent.length === 0 && window.open === null;
    const lines = window.notice === null ? concert.lines : [window.notice, ...concert.lines];
    const theme = themeOf(settings, asked);
    const drawing = draw({
      document: concert.document,
      view: leftOf(asked, { first, lines: lines.length }),
      theme,
      units: settings.units === 'document' ? concertOf(concert.document).units : settings.units,
    });
    return { ...drawing, theme, first, lines, legend: BANDS.map(({ words }) => words).toReversed() };
  };
  return {
    of,
    ahead: ({ locale, ...window }) =>
      of({ ...USUAL, locale }, window).then(
        () => undefined,
        () => undefined,
      ),
  };
}

/** As the window will try them; what it never had is no file. */
function pathsToOpen(
  { handles }: Surroundings,
  before: Handle | null | undefined,
  usual: string | null,
): string[] {
  if (before === null) return [];
  const known = before === undefined ? null : pathOf(handles, before);
  return [known, usual].filter((path) => path !== null);
}

/** A handle of a program that runs no more leads nowhere. */
function pathOf(handles: Handles, handle: Handle): string | null {
  try {
    return handles.pathOf(handle);
  } catch {
    return null;
  }
}

interface Reading {
  readonly read: Reader;
  readonly locale: string;
}

/** The first that can be opened, else the demo if there is nothing to open. */
async function firstConcert(
  { fs, demo }: Surroundings,
  paths: readonly string[],
  { read, locale }: Reading,
): Promise<FirstConcert | null> {
  if (paths.length === 0) return concertIn(read((await openFile(fs, demo)).text, locale), basename(demo));
  for (const path of paths) {
    const file = await openFile(fs, path).catch(() => null);
    const concert = file && concertIn(read(file.text, null), basename(path));
    if (concert) return concert;
  }
  return null;
}

function concertIn(reading: ReadResult, name: string): FirstConcert | null {
  if (!reading.ok) return null;
  const { document, notes, quiet } = reading;
  const loud = notes.filter((note) => !quiet.includes(note));
  // Of those about the version the last one stands.
  return { document, lines: [...loud, ...quiet.slice(-1)].map((note) => `${name}: ${note}`) };
}

/** `locale` is null for what is no demo. */
type Reader = (text: string, locale: string | null) => ReadResult;

function rememberingReader(): Reader {
  let last: { readonly key: readonly unknown[]; readonly reading: ReadResult } | null = null;
  return (text, locale) => {
    const key = [text, locale, language()];
    if (!last?.key.every((part, index) => part === key[index])) {
      last = { key, reading: locale === null ? inWindowWords(readDocument(text)) : readDemo(text, locale) };
    }
    return last.reading;
  };
}

/** With the names that the window will show. */
function inWindowWords(reading: ReadResult): ReadResult {
  return reading.ok ? { ...reading, document: inOwnWords(reading.document).document } : reading;
}

/** For windows of other sizes, in other colours. */
const MOST_KEPT = 4;

type Drawer = (request: Omit<FirstRequest, 'measure'>) => FirstDrawing;

/** The document is the same one as long as its text is. */
function rememberingDrawer(): Drawer {
  const kept: { readonly key: readonly unknown[]; readonly drawing: FirstDrawing }[] = [];
  return (request) => {
    const { document, view, theme, units } = request;
    const key = [document, view.width, view.height, theme, units, language()];
    const known = kept.findIndex((one) => one.key.every((part, index) => part === key[index]));
    const drawn = kept[known]?.drawing ?? firstDrawing({ ...request, measure: createMeasure() });
    if (known >= 0) kept.splice(known, 1);
    kept.unshift({ key, drawing: drawn });
    kept.length = Math.min(kept.length, MOST_KEPT);
    return drawn;
  };
}

function themeOf({ theme }: Settings, { dark }: PictureAsked): 'light' | 'dark' {
  if (theme !== 'system') return theme;
  return dark ? 'dark' : 'light';
}

/** What is left of the plan's room. */
function leftOf(
  { view, taken }: PictureAsked,
  over: { readonly first: boolean; readonly lines: number },
): ViewSize {
  const height = view.height - (over.first ? taken.steps : 0) - over.lines * taken.line;
  return { width: view.width, height: Math.max(1, height) };
}
