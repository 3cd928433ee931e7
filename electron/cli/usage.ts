/** What the command line understands. */

import { parseArgs, type ParseArgsConfig } from 'node:util';
import type { PlotOptions } from '#contract/contract.ts';
import { PAPER_MODELS } from '#model/catalogue/paper.ts';
import { PLOT_PARTS } from '#model/drawing/sheet/request.ts';
import { LANGUAGES, type Language } from '#model/words/languages.ts';
import { PACK_FORMATS, type PackFormat } from '../services/pack-formats.ts';

/** Bad usage or bad input: one line on stderr and exit code 2. */
export class UsageError extends Error {}

export const HELP = `Standlines without a window.

  standlines check FILE [--setup SETUP] [--json] [--geometry] [--what-if] [--strict] [--language en|de]
      Says who sees and reaches what in a setup, and what is in the way.
      --setup     its name, id or place in the programme; the first one if left out
      --json      the same as data
      --geometry  implies --json, and adds the scene in plain numbers
      --what-if   implies --json, and adds what the house would see without each thing, with it
                  lower, or turned; and against every finding changes are tried, however long it takes
      --strict    exit code 1 when a finding fails a limit
  standlines plot FILE --out FILE.pdf [--setup SETUP] [--paper A4|A3|Letter|Tabloid]
                  [--scale 1:50] [--orientation portrait|landscape] [--sheets plot,marks] [--language en|de]
      Prints the plot of a setup. If none is given: the paper used last in the window, otherwise A4 for
      metric concerts and Letter for imperial ones; the largest standard scale that fits.
      --sheets  which of plot (the plan), seats (seat map), section, marks (table of marks), inventory, figures,
                findings and cautions are printed; all of them if left out. They keep this order, and from
                marks on they share sheets
  standlines pack FILE --out-dir DIR [--sheets cover,plot,marks-2] [--paper A4|A3|Letter|Tabloid]
                  [--scale 1:50] [--format pdf,svg,png,dxf,csv] [--dpi 150] [--replace] [--language en|de]
      Prints the pack of a concert as DIR/pack.pdf: one PDF with bookmarks and numbered sheets.
      --sheets  which sheets, in this order; all of them if left out. A kind stands for all sheets of it, a
                kind with the number of a piece in the programme for that piece's (marks-2; a second
                version of it is 2b). The kinds are
                  cover       programme, contacts, what is on which sheet
                  plot        stage plot to scale
                  marks       table of marks: from centre line and edge, and by two tapes
                  floor       the same marks for taping a rehearsal room
                  section     section through the house with sightlines
                  seats       seat map: of whoever is seen worst (seats-1), of player 3 (seats-1-p3)
                  view        views from the chosen places of the house (view-1-2: the second of them)
                  turns       page plan and every turn
                  cards       cue cards
                  booklet     how booklets are put together (booklet-1-1)
                  figures     figures and findings
                  changeover  what is done before a piece (changeover-2), and after the last (changeover-end)
                  inventory   things, lamps, cables and sockets of the whole concert
                  cautions    what to read before setting
      --paper    as for plot; every drawing has the largest standard scale that fits it
      --scale    of the stage plots alone, all of them; refused with what would do where one does not fit
      --format   what is written, pdf alone if left out:
                   pdf  all sheets in DIR/pack.pdf, in place of one that is there
                   svg  each sheet as a drawing (03-plot-1.svg)
                   png  each sheet as a picture of dots (03-plot-1.png)
                   dxf  the plan of every chosen setup in millimetres (plan-1.dxf)
                   csv  the marks of every chosen setup (marks-1.csv), and inventory.csv
      --dpi      dots per inch of the pictures, 36 to 600; 150 if left out
      --replace  replaces files that are there; without it only pack.pdf is replaced
  standlines changeover FILE [--json] [--language en|de]
      Says what a crew of two carries before, between and after the pieces, in which order and how long it
      takes, and what the stock lacks.
      --json  the same as data
  standlines score FILE [--json] [--root NAME] [--tempo 96[@BAR]] [--order 1-12,5-20] [--repeats]
      Says what a MusicXML score (.musicxml, .xml, .mxl) holds: order of the performance, times, and each
      player's rests and pages.
      --json     the same as data
      --root     which score of a compressed file; the first one if left out
      --tempo    quarters a minute for the whole piece, or from a bar on
      --order    bars in the order in which they are played, by printed numbers; #14 is the 14th of the file
      --repeats  makes repeats again after D.C. and D.S.
  standlines turns FILE [--setup SETUP] [--json] [--score SCORE] [--plays PART=PLAYER] [--pages PART=1,38,77]
                   [--cards FILE.pdf] [--paper A4|A3|Letter|Tabloid] [--language en|de]
      Plans the page turns of a setup: which paper on which stand, which turn when and by whom, with a
      proof that it cannot be done with less, and the other plans worth a look; each with what the house
      sees then. Where FILE keeps a plan, that one is told first, with the rules that it breaks; the plan
      searched anew keeps its pins.
      --json   the same as data, with the instance that was planned
      --score  a MusicXML score to use instead of the music in FILE
      --plays  who plays a part, by the player's name or id; may be given for each part
      --pages  the bar that each page of a part begins with; may be given for each part
      --cards  prints a cue card for each player, too: what to set where, which page is where, every turn;
               by the plan that FILE keeps, else by the one that was found
      --paper  what the cards are printed on, two on A4 or Letter, four on A3 or Tabloid
  standlines booklet FILE --out FILE.pdf [--setup SETUP] [--stand STAND] [--paper PAPER]
                     [--score SCORE] [--plays PART=PLAYER] [--pages PART=1,38,77] [--pdf PART=FILE.pdf]
                     [--language en|de]
      Prints a booklet: panels in strip order at true size, with what is taped to what and when to turn, and
      how to put it together. FILE is a concert: the booklet is of the plan that it keeps, else of the one that
      turns finds. Or FILE is a small JSON file that describes a booklet (DEVELOPERS.md says how); a description
      takes none of the options in brackets but the last.
      --stand  whose paper, by name, id or number; needed when the plan uses several
      --paper  what is printed on: a4, a3, a5, b4, b4-jis, letter, tabloid, legal, nine-by-twelve, ten-by-thirteen
               or orchestra-part; A4 or Letter if left out
      --pdf    a part's own pages; parts without have numbered blanks; may be given for each part
  standlines schema
      The JSON Schema of the file format.
  standlines help
      This text.

FILE of check, plot, pack, changeover and turns is a .standlines file; the word demo stands for the demo concert.
--language: what findings, plans and prints are written in, English (en) if left out; this program itself says
everything else in English.
Exit codes: 0 done, 1 failing findings under --strict or no plan of the turns, 2 bad usage or bad input.
`;

/** Of an order whose outcome people read. */
interface Told {
  readonly language: Language;
}

export interface CheckOrder extends Told {
  readonly verb: 'check';
  readonly file: string;
  readonly setup: string | null;
  readonly json: boolean;
  readonly geometry: boolean;
  readonly whatIf: boolean;
  readonly strict: boolean;
}

export interface PlotOrder extends Told {
  readonly verb: 'plot';
  readonly file: string;
  readonly setup: string | null;
  readonly out: string;
  /** No paper: the one used last, otherwise the one that goes with the concert's units. */
  readonly options: Omit<PlotOptions, 'paper'> & { readonly paper: PlotOptions['paper'] | null };
}

export interface PackOrder extends Told {
  readonly verb: 'pack';
  readonly file: string;
  readonly outDir: string;
  /** Names of entries or of kinds, in order; null: the usual ones. */
  readonly sheets: readonly string[] | null;
  /** Null: the one used last, otherwise the one that goes with the concert's units. */
  readonly paper: PlotOptions['paper'] | null;
  /** Of the stage plots; null: the largest that fits each. */
  readonly scale: number | null;
  /** Each once, in the order in which they are told of. */
  readonly formats: readonly PackFormat[];
  /** Of pictures. */
  readonly dpi: number;
  /** Files that are there may be replaced. */
  readonly replace: boolean;
}

export interface ChangeoverOrder extends Told {
  readonly verb: 'changeover';
  readonly file: string;
  readonly json: boolean;
}

export interface ScoreOrder {
  readonly verb: 'score';
  readonly file: string;
  readonly json: boolean;
  readonly root: string | null;
  readonly repeatsAfterJump: boolean;
  /** `from`: the bar as typed; null: the whole piece. */
  readonly tempo: { readonly quartersPerMinute: number; readonly from: string | null } | null;
  readonly order: string | null;
}

export interface BookletOrder extends GivenMusic, Told {
  readonly verb: 'booklet';
  readonly file: string;
  readonly out: string;
  readonly setup: string | null;
  readonly stand: string | null;
  /** An id of the catalogue; null: the usual one for the concert's units. */
  readonly paper: string | null;
  readonly pdfs: readonly Said[];
}

/** Music said on the command line. */
export interface GivenMusic {
  readonly score: string | null;
  readonly plays: readonly Said[];
  readonly pages: readonly Said[];
}

export interface TurnsOrder extends GivenMusic, Told {
  readonly verb: 'turns';
  readonly file: string;
  readonly setup: string | null;
  readonly json: boolean;
  /** Where the cue cards go; null: none are wanted. */
  readonly cards: string | null;
  /** Of the cards; null: the usual one for the concert's units. */
  readonly paper: PlotOptions['paper'] | null;
}

/** What was said of a part. */
export interface Said {
  readonly part: string;
  readonly value: string;
}

export type Order =
  | TurnsOrder
  | ChangeoverOrder
  | CheckOrder
  | PlotOrder
  | PackOrder
  | BookletOrder
  | ScoreOrder
  | { readonly verb: 'schema' | 'help' };

/** Throws `UsageError`. */
export function readOrder(words: readonly string[]): Order {
  const [verb, ...rest] = words;
  if (verb === undefined) throw new UsageError(`say what to do: ${VERBS}`);
  if (verb === 'check') return checkOrder(rest);
  if (verb === 'plot') return plotOrder(rest);
  if (verb === 'pack') return packOrder(rest);
  if (verb === 'changeover') return changeoverOrder(rest);
  if (verb === 'score') return scoreOrder(rest);
  if (verb === 'turns') return turnsOrder(rest);
  if (verb === 'booklet') return bookletOrder(rest);
  if (verb === 'schema') return nothingMore('schema', rest);
  if (['help', '--help', '-h'].includes(verb)) return nothingMore('help', []);
  throw new UsageError(`there is no "${shorten(verb)}": say ${VERBS}`);
}

const VERBS = 'check, plot, pack, changeover, score, turns, booklet, schema or help';

function checkOrder(words: readonly string[]): Order {
  const flag = { type: 'boolean' } as const;
  const { values, positionals } = parsed(words, {
    setup: { type: 'string' },
    json: flag,
    geometry: flag,
    'what-if': flag,
    strict: flag,
    language: { type: 'string' },
    help: flag,
  });
  if (values['help']) return { verb: 'help' };
  return {
    verb: 'check',
    file: oneFile('check', positionals),
    setup: textOf(values['setup']),
    json: ['json', 'geometry', 'what-if'].some((name) => values[name] === true),
    geometry: values['geometry'] === true,
    whatIf: values['what-if'] === true,
    strict: values['strict'] === true,
    language: languageOf(values['language']),
  };
}

function plotOrder(words: readonly string[]): Order {
  const text = { type: 'string' } as const;
  const { values, positionals } = parsed(words, {
    setup: text,
    out: text,
    paper: text,
    scale: text,
    orientation: text,
    sheets: text,
    language: text,
    help: { type: 'boolean' },
  });
  if (values['help']) return { verb: 'help' };
  const out = pdfOut('plot', textOf(values['out']));
  const parts = sheetsOf(textOf(values['sheets']))?.map((name) => oneOf('--sheets', name, PLOT_PARTS));
  return {
    verb: 'plot',
    file: oneFile('plot', positionals),
    setup: textOf(values['setup']),
    out,
    language: languageOf(values['language']),
    options: {
      paper: paperOf(textOf(values['paper'])),
      orientation: oneOf('--orientation', textOf(values['orientation']) ?? 'auto', [
        'auto',
        'portrait',
        'landscape',
      ]),
      scale: scaleOf(textOf(values['scale'])),
      ...(parts ? { parts } : {}),
    },
  };
}

function packOrder(words: readonly string[]): Order {
  const text = { type: 'string' } as const;
  const { values, positionals } = parsed(words, {
    'out-dir': text,
    sheets: text,
    paper: text,
    scale: text,
    format: text,
    dpi: text,
    language: text,
    replace: { type: 'boolean' },
    help: { type: 'boolean' },
  });
  if (values['help']) return { verb: 'help' };
  const outDir = textOf(values['out-dir']);
  if (!outDir) throw new UsageError('pack needs --out-dir DIR');
  return {
    verb: 'pack',
    file: oneFile('pack', positionals),
    outDir,
    sheets: sheetsOf(textOf(values['sheets'])),
    paper: paperOf(textOf(values['paper'])),
    scale: scaleOf(textOf(values['scale'])),
    replace: values['replace'] === true,
    language: languageOf(values['language']),
    ...formsOf(textOf(values['format']), textOf(values['dpi'])),
  };
}

/** Which files a pack is written as. The bounds of the resolution are the painter's. */
function formsOf(format: string | null, dpi: string | null): Pick<PackOrder, 'formats' | 'dpi'> {
  const words = (format ?? 'pdf')
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
  if (words.length === 0) throw new UsageError('--format names no format; give some, such as pdf,svg');
  const formats = new Set(words.map((word) => oneOf('--format', word, PACK_FORMATS)));
  if (dpi !== null && !formats.has('png')) throw new UsageError('--dpi goes with --format png');
  if (dpi !== null && !/^\d{1,5}$/.test(dpi))
    throw new UsageError(`--dpi "${shorten(dpi)}" is not a number of dots per inch such as 150`);
  return { formats: [...formats], dpi: dpi === null ? USUAL_DPI : Number(dpi) };
}

const USUAL_DPI = 150;

/** "cover,plot-1, marks". */
function sheetsOf(given: string | null): string[] | null {
  if (given === null) return null;
  const names = given
    .split(',')
    .map((name) => name.trim().toLowerCase())
    .filter((name) => name !== '');
  if (names.length === 0) throw new UsageError('--sheets names no sheet; give some, such as cover,plot');
  return names;
}

function changeoverOrder(words: readonly string[]): Order {
  const flag = { type: 'boolean' } as const;
  const { values, positionals } = parsed(words, { json: flag, language: { type: 'string' }, help: flag });
  if (values['help']) return { verb: 'help' };
  return {
    verb: 'changeover',
    file: oneFile('changeover', positionals),
    json: values['json'] === true,
    language: languageOf(values['language']),
  };
}

function scoreOrder(words: readonly string[]): Order {
  const text = { type: 'string' } as const;
  const flag = { type: 'boolean' } as const;
  const { values, positionals } = parsed(words, {
    json: flag,
    root: text,
    tempo: text,
    order: text,
    repeats: flag,
    help: flag,
  });
  if (values['help']) return { verb: 'help' };
  return {
    verb: 'score',
    file: oneFile('score', positionals, 'a FILE'),
    json: values['json'] === true,
    root: textOf(values['root']),
    repeatsAfterJump: values['repeats'] === true,
    tempo: tempoOf(textOf(values['tempo'])),
    order: textOf(values['order']),
  };
}

function turnsOrder(words: readonly string[]): Order {
  const text = { type: 'string' } as const;
  const flag = { type: 'boolean' } as const;
  const several = { type: 'string', multiple: true } as const;
  const { values, positionals } = parsed(words, {
    setup: text,
    json: flag,
    cards: text,
    paper: text,
    score: text,
    plays: several,
    pages: several,
    language: text,
    help: flag,
  });
  if (values['help']) return { verb: 'help' };
  const cards = textOf(values['cards']);
  const paper = paperOf(textOf(values['paper']));
  if (paper !== null && cards === null) throw new UsageError('--paper goes with --cards');
  return {
    verb: 'turns',
    file: oneFile('turns', positionals),
    setup: textOf(values['setup']),
    json: values['json'] === true,
    cards: cards === null ? null : pdfAt('--cards', cards),
    paper,
    language: languageOf(values['language']),
    ...givenMusic(values),
  };
}

function givenMusic(values: Readonly<Record<string, unknown>>): GivenMusic {
  return {
    score: textOf(values['score']),
    plays: saidOf('--plays', values['plays']),
    pages: saidOf('--pages', values['pages']),
  };
}

/** "PART=VALUE", each part once. */
function saidOf(option: string, given: unknown): Said[] {
  const said = (Array.isArray(given) ? given : []).map((text: string): Said => {
    const at = text.indexOf('=');
    if (at < 1 || at === text.length - 1)
      throw new UsageError(`${option} "${shorten(text)}" is not of the form PART=...`);
    return { part: text.slice(0, at).trim(), value: text.slice(at + 1).trim() };
  });
  const twice = said.find(({ part }, index) => said.findIndex((other) => other.part === part) < index);
  if (twice) throw new UsageError(`${option} names part "${shorten(twice.part)}" twice; give it once`);
  return said;
}

function bookletOrder(words: readonly string[]): Order {
  const text = { type: 'string' } as const;
  const several = { type: 'string', multiple: true } as const;
  const { values, positionals } = parsed(words, {
    out: text,
    setup: text,
    stand: text,
    paper: text,
    score: text,
    plays: several,
    pages: several,
    pdf: several,
    language: text,
    help: { type: 'boolean' },
  });
  if (values['help']) return { verb: 'help' };
  const out = pdfOut('booklet', textOf(values['out']));
  return {
    verb: 'booklet',
    file: oneFile('booklet', positionals),
    out,
    setup: textOf(values['setup']),
    stand: textOf(values['stand']),
    paper: musicPaperOf(textOf(values['paper'])),
    pdfs: saidOf('--pdf', values['pdf']),
    language: languageOf(values['language']),
    ...givenMusic(values),
  };
}

function pdfOut(verb: string, out: string | null): string {
  if (!out) throw new UsageError(`${verb} needs --out FILE.pdf`);
  return pdfAt('--out', out);
}

function pdfAt(option: string, path: string): string {
  if (!path.toLowerCase().endsWith('.pdf'))
    throw new UsageError(`${option} "${shorten(path)}" does not end in .pdf`);
  return path;
}

function nothingMore(verb: 'schema' | 'help', words: readonly string[]): Order {
  if (words.length > 0)
    throw new UsageError(`${verb} takes nothing more, but got "${shorten(words[0] ?? '')}"`);
  return { verb };
}

type Options = NonNullable<ParseArgsConfig['options']>;

/** Every option at most once, every positional kept. */
function parsed(words: readonly string[], options: Options) {
  try {
    const order = parseArgs({
      args: withNegatives(words, options),
      options,
      allowPositionals: true,
      strict: true,
      tokens: true,
    });
    const isSingle = (name: string) => options[name]?.multiple !== true;
    const named = order.tokens.flatMap((token) => (token.kind === 'option' ? [token.name] : []));
    refuseRepeated(named.filter(isSingle));
    return order;
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(`${wrongOption(error, words)} (see: standlines help)`);
  }
}

/** A negative number behind an option is its value, so that the option itself says what is wrong with it. */
function withNegatives(words: readonly string[], options: Options): string[] {
  const end = words.indexOf('--');
  return words.flatMap((word, index) => {
    const before = words[index - 1] ?? '';
    const isPast = end >= 0 && index >= end;
    const joins = (option: string, value: string): boolean =>
      !isPast && /^-\d/.test(value) && option.startsWith('--') && options[option.slice(2)]?.type === 'string';
    if (joins(before, word)) return [];
    const next = words[index + 1] ?? '';
    return joins(word, next) ? [`${word}=${next}`] : [word];
  });
}

/** In words of this program, not of its parser. */
function wrongOption(error: unknown, words: readonly string[]): string {
  const message = error instanceof Error ? error.message : '';
  const option = /--[\w-]+/.exec(message)?.[0] ?? '';
  if (message.includes('ambiguous')) {
    const value = words[words.indexOf(option) + 1] ?? '';
    return `${option} needs a value; one that begins with a dash is written ${option}="${shorten(value)}"`;
  }
  if (message.includes('argument missing')) return `${option} needs a value`;
  if (message.includes('does not take an argument')) return `${option} takes no value`;
  const [unknown = ''] = /'[^']*'/.exec(message) ?? [];
  return `there is no option ${unknown === '' ? option : shorten(unknown.slice(1, -1))}`;
}

/** Of two values one would be dropped in silence. */
function refuseRepeated(names: readonly string[]): void {
  const repeated = names.find((name, index) => names.indexOf(name) < index);
  if (repeated !== undefined) throw new UsageError(`--${repeated} is given twice; give it once`);
}

function oneFile(verb: string, positionals: readonly string[], needed = 'a FILE, or the word demo'): string {
  const [file, more] = positionals;
  if (!file) throw new UsageError(`${verb} needs ${needed}`);
  if (more !== undefined) throw new UsageError(`${verb} takes one FILE, but got "${shorten(more)}" as well`);
  return file;
}

function textOf(value: unknown): string | null {
  return typeof value === 'string' ? value : null;
}

/** In any case of letters. */
function oneOf<const T extends string>(option: string, given: string, allowed: readonly T[]): T {
  const found = allowed.find((word) => word.toLowerCase() === given.toLowerCase());
  if (found === undefined)
    throw new UsageError(`${option} "${shorten(given)}" is not one of ${allowed.join(', ')}`);
  return found;
}

function languageOf(given: unknown): Language {
  return oneOf('--language', textOf(given) ?? 'en', LANGUAGES);
}

function paperOf(given: string | null): PlotOptions['paper'] | null {
  return given === null ? null : oneOf('--paper', given, ['A4', 'A3', 'Letter', 'Tabloid']);
}

/** Music is printed on more kinds of paper than drawings are: by name or id, in any case of letters. */
function musicPaperOf(given: string | null): string | null {
  if (given === null) return null;
  const isMeant = (word: string): boolean => word.toLowerCase() === given.trim().toLowerCase();
  const found = PAPER_MODELS.find(({ id, name }) => isMeant(id) || isMeant(name));
  if (!found)
    throw new UsageError(
      `--paper "${shorten(given)}" is not one of ${PAPER_MODELS.map(({ id }) => id).join(', ')}`,
    );
  return found.id;
}

/** "1:50" or "50". */
function scaleOf(given: string | null): number | null {
  if (given === null) return null;
  const ratio = Number(/^(?:1:)?(\d{1,5})$/.exec(given)?.[1]);
  if (!(ratio >= 1)) throw new UsageError(`--scale "${shorten(given)}" is not a ratio such as 1:50`);
  return ratio;
}

/** "96" or "96@25". */
function tempoOf(given: string | null): ScoreOrder['tempo'] {
  if (given === null) return null;
  const [, figure, from = null] = /^(\d{1,4}(?:\.\d{1,3})?)(?:@(.{1,20}))?$/.exec(given) ?? [];
  if (figure === undefined)
    throw new UsageError(`--tempo "${shorten(given)}" is not a tempo such as 96 or 96@25`);
  return { quartersPerMinute: Number(figure), from };
}

function shorten(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
