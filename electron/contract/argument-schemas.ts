/**
 * What a window may send, checked at run time before any handler sees it. The table must have exactly the channels
 * of the contract, and each schema must yield that channel's arguments: the compiler holds both.
 */

import * as v from 'valibot';
import { PLOT_PARTS } from '#model/drawing/sheet/request.ts';
import { LANGUAGES } from '#model/words/languages.ts';
import type { Arguments, Channel } from './contract.ts';

/** Texts of documents: the same limit as for files, counted in UTF-16 units. */
export const LONGEST_TEXT = 64 * 1024 * 1024;

const handle = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,64}$/));
const key = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,128}$/));
const recordId = v.pipe(v.string(), v.regex(/^[A-Za-z][A-Za-z0-9_-]{0,63}$/));
const fileName = v.pipe(v.string(), v.minLength(1), v.maxLength(1024));
const text = v.pipe(v.string(), v.maxLength(LONGEST_TEXT));
const hash = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/));
const savedType = v.picklist(['standlines', 'pdf', 'dxf', 'csv', 'zip']);
const fileType = v.picklist(['standlines', 'pdf', 'score', 'table', 'underlay', 'dxf', 'csv', 'zip']);

const saveRequest = v.strictObject({
  handle,
  text,
  expectedHash: v.nullable(hash),
  replace: v.boolean(),
});

const workToKeep = v.strictObject({
  name: fileName,
  handle: v.nullable(handle),
  hash: v.nullable(hash),
  text,
  recoveredFrom: v.nullable(key),
});

const settings = v.strictObject({
  language: v.picklist(['system', ...LANGUAGES]),
  theme: v.picklist(['system', 'light', 'dark']),
  units: v.picklist(['document', 'metric', 'imperial']),
  paper: v.nullable(v.pipe(v.string(), v.maxLength(32))),
  singleKeys: v.boolean(),
});

const pixels = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(20_000));

const pictureAsked = v.strictObject({
  view: v.strictObject({ width: pixels, height: pixels }),
  taken: v.strictObject({ steps: pixels, line: pixels }),
  dark: v.boolean(),
  locale: v.pipe(v.string(), v.maxLength(64)),
  before: v.optional(v.nullable(handle)),
});

const paperName = v.picklist(['A4', 'A3', 'Letter', 'Tabloid']);

const scale = v.nullable(v.pipe(v.number(), v.finite(), v.minValue(1), v.maxValue(10_000)));

const plotRequest = v.strictObject({
  text,
  setup: recordId,
  options: v.strictObject({
    paper: paperName,
    orientation: v.picklist(['portrait', 'landscape', 'auto']),
    scale,
    parts: v.exactOptional(
      v.pipe(v.array(v.picklist(PLOT_PARTS)), v.minLength(1), v.maxLength(PLOT_PARTS.length)),
    ),
  }),
});

/** More entries than any pack can have. */
const MOST_SHEETS = 20_000;

const packOrder = v.strictObject({
  text,
  paper: paperName,
  sheets: v.nullable(
    v.pipe(v.array(v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,64}$/))), v.maxLength(MOST_SHEETS)),
  ),
  scale,
  formats: v.pipe(
    v.array(v.picklist(['pdf', 'svg', 'png', 'dxf', 'csv'])),
    v.minLength(1),
    v.maxLength(5),
    v.checkItems((format, index, formats) => formats.indexOf(format) === index),
  ),
  dpi: v.pipe(v.number(), v.finite()),
});

const step = v.pipe(v.number(), v.integer(), v.minValue(-1));

const catalogueId = v.pipe(v.string(), v.regex(/^[a-z0-9-]{1,32}$/));
/** Of stands in a plan, and of players: more than any platform holds. */
const MOST_OF_EACH = 500;

const paperRequest = v.strictObject({
  text,
  setup: recordId,
  booklets: v.pipe(
    v.array(v.strictObject({ station: recordId, paper: catalogueId })),
    v.maxLength(MOST_OF_EACH),
  ),
  cards: v.nullable(catalogueId),
  pdfs: v.pipe(v.array(v.strictObject({ player: recordId, handle })), v.maxLength(MOST_OF_EACH)),
});

const exportRequest = v.strictObject({
  text,
  setup: recordId,
  what: v.picklist(['dxf', 'marks', 'inventory']),
});

export const SETTINGS_SCHEMA = settings;

export const ARGUMENT_SCHEMAS = {
  'app.hello': v.strictTuple([]),
  'files.askOpen': v.strictTuple([fileType]),
  'files.askSave': v.strictTuple([fileName, savedType]),
  'files.list': v.strictTuple([v.nullable(handle)]),
  'files.inFolder': v.strictTuple([handle, fileName]),
  'files.beside': v.strictTuple([handle, fileName]),
  'files.read': v.strictTuple([handle]),
  'files.save': v.strictTuple([saveRequest]),
  'table.read': v.strictTuple([handle]),
  'part.read': v.strictTuple([handle]),
  'part.bytes': v.strictTuple([handle]),
  'part.beside': v.strictTuple([handle, fileName]),
  'part.hash': v.strictTuple([handle]),
  'underlay.read': v.strictTuple([handle]),
  'score.read': v.strictTuple([handle, v.nullable(fileName)]),
  'files.demo': v.strictTuple([]),
  'recent.list': v.strictTuple([]),
  'recent.clear': v.strictTuple([]),
  'recovery.keep': v.strictTuple([key, workToKeep]),
  'recovery.drop': v.strictTuple([key]),
  'recovery.list': v.strictTuple([]),
  'recovery.read': v.strictTuple([key]),
  'recovery.discard': v.strictTuple([key]),
  'settings.read': v.strictTuple([]),
  'settings.write': v.strictTuple([settings]),
  'plan.first': v.strictTuple([pictureAsked]),
  'plot.render': v.strictTuple([plotRequest]),
  'plot.save': v.strictTuple([plotRequest, handle, v.boolean()]),
  'pack.begin': v.strictTuple([packOrder]),
  'pack.watch': v.strictTuple([key, step]),
  'pack.stop': v.strictTuple([key]),
  'pack.bytes': v.strictTuple([key]),
  'pack.save': v.strictTuple([key, handle, v.boolean()]),
  'paper.save': v.strictTuple([paperRequest, handle, v.boolean()]),
  'export.save': v.strictTuple([exportRequest, handle, v.boolean()]),
} satisfies { readonly [C in Channel]: v.GenericSchema<unknown, Arguments<C>> };

export const CHANNELS: readonly Channel[] = Object.keys(ARGUMENT_SCHEMAS) as Channel[];

export function isChannel(name: string): name is Channel {
  return Object.hasOwn(ARGUMENT_SCHEMAS, name);
}
