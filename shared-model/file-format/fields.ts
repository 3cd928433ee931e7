/**
 * The kinds of fields a record is built of. Each carries, besides its rule, the words for a person who gave
 * something else ("give a length from 100 to 2500 mm") and the title and description of the published JSON Schema.
 */

import * as v from 'valibot';
import { ID_PATTERN, type Id } from '../document/ids.ts';
import type { Kind } from '../document/records.ts';
import { t } from '../words/say.ts';

/** What to do instead; asked for when somebody has to read it, for schemas are made before the language is known. */
export type Advice = () => string;

/** Gives a field its title and description in the JSON Schema. Says the unit. */
export function field<S extends v.GenericSchema>(title: string, description: string, schema: S): S {
  // The pipe adds metadata only: what goes in and what comes out stay those of the schema.
  return v.pipe(schema, v.title(title), v.description(description)) as unknown as S;
}

/** What a field measures; by this a refusal can speak in the units that people work in. */
export interface Measure {
  readonly of: 'length' | 'share' | 'seconds';
  readonly least: number;
  readonly most: number;
}

/** Told in millimetres or in feet and inches, as the concert's units are. */
export function lengthBetween(least: number, most: number) {
  const measure: Measure = { of: 'length', least, most };
  return v.pipe(millimetresBetween(least, most), v.metadata({ measure }));
}

/** For what is told in millimetres everywhere: the staves of a part. */
export function millimetresBetween(least: number, most: number) {
  return numberBetween(least, most, () => t`give a length from ${least} to ${most} mm`);
}

export function degreesBetween(least: number, most: number) {
  return numberBetween(least, most, () => t`give an angle from ${least} to ${most} degrees`);
}

/** A share from 0 to 1. */
export function share() {
  const measure: Measure = { of: 'share', least: 0, most: 1 };
  const advice = () => t`give a share from 0 to 1, for instance 0.9 for 90 %`;
  return v.pipe(numberBetween(0, 1, advice), v.metadata({ measure }));
}

export function secondsUpTo(most: number) {
  const measure: Measure = { of: 'seconds', least: 0, most };
  const advice = () => t`give a time from 0 to ${most} seconds, or null when it is not known`;
  return v.pipe(numberBetween(0, most, advice), v.metadata({ measure }));
}

// The bounds also keep infinity out, which JSON can spell ("1e999").
export function numberBetween(least: number, most: number, advice: Advice) {
  return v.pipe(v.number(advice), v.minValue(least, advice), v.maxValue(most, advice));
}

export function wholeBetween(least: number, most: number) {
  const advice = () => t`give a whole number from ${least} to ${most}`;
  return v.pipe(v.number(advice), v.integer(advice), v.minValue(least, advice), v.maxValue(most, advice));
}

export function yesOrNo() {
  return v.boolean(() => t`give true or false`);
}

export function oneOf<const Options extends readonly [string, ...string[]]>(options: Options) {
  const quoted = options.map((option) => `"${option}"`).join(', ');
  return v.picklist(options, () => t`give one of ${quoted}`);
}

/** One line of well-formed Unicode without control characters, counted in code points. */
export function line(longest: number) {
  const pattern = new RegExp(
    `^[^\\u0000-\\u001f\\u007f-\\u009f\\u2028\\u2029\\ud800-\\udfff]{0,${longest}}$`,
    'u',
  );
  return textLike(pattern, () => t`give one line of text of at most ${longest} characters`);
}

/** Like `line`, and may hold line breaks and tabs. */
export function lines(longest: number) {
  const pattern = new RegExp(
    `^[^\\u0000-\\u0008\\u000b-\\u001f\\u007f-\\u009f\\ud800-\\udfff]{0,${longest}}$`,
    'u',
  );
  return textLike(pattern, () => t`give text of at most ${longest} characters without control characters`);
}

export function textLike(pattern: RegExp, advice: Advice) {
  return v.pipe(v.string(advice), v.regex(pattern, advice));
}

/** An id of a record of kind `K`; whether there is one is checked when all records are read. */
export function idOf<K extends Kind>(): v.GenericSchema<string, Id<K>> {
  const advice = () => t`give an id of 1 to 64 letters, digits, "-" or "_", starting with a letter`;
  return textLike(ID_PATTERN, advice) as unknown as v.GenericSchema<string, Id<K>>;
}

/** An id of a model in the catalogue. */
export function modelId() {
  return textLike(
    /^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/,
    () => t`give the id of a catalogue model: 1 to 64 letters, digits, ".", "-" or "_"`,
  );
}

export function listOf<S extends v.GenericSchema>(item: S, least: number, most: number) {
  const advice = () => t`give a list with ${least} to ${most} entries`;
  return v.pipe(v.array(item, advice), v.minLength(least, advice), v.maxLength(most, advice));
}

/** An object with exactly these fields, those with a default excepted. */
export function fields<const E extends v.ObjectEntries>(entries: E) {
  const schema = v.strictObject(entries, (issue) => advise(entries, issue));
  const run = schema['~run'];
  return {
    ...schema,
    // The library takes a list for an object; the file format does not.
    '~run': (dataset: Parameters<typeof run>[0], config: Parameters<typeof run>[1]) =>
      run.call(schema, Array.isArray(dataset.value) ? { value: undefined } : dataset, config),
  } as typeof schema;
}

function advise(entries: v.ObjectEntries, issue: v.StrictObjectIssue): string {
  const known = Object.keys(entries);
  if (issue.expected === 'never') return fieldsHere(known);
  const key = issue.path?.at(-1)?.key;
  const entry = typeof key === 'string' ? entries[key] : undefined;
  if (!entry) return t`give an object with the fields ${known.join(', ')}`;
  return adviceOf(entry) + unknownFieldNearby(known, issue.input === undefined ? issue : undefined);
}

/** The advice to who named a field that is not there. */
export function fieldsHere(known: readonly string[]): string {
  return t`the fields here are ${known.join(', ')}`;
}

/** What a schema answers to nothing at all is its advice. */
function adviceOf(schema: v.ObjectEntries[string]): string {
  const result = v.safeParse(schema as v.GenericSchema, undefined);
  return result.issues?.[0].message ?? t`give a value`;
}

/** A missing field is often one that was misspelt: names the first field that nobody knows. */
function unknownFieldNearby(known: readonly string[], issue: v.StrictObjectIssue | undefined): string {
  const given = issue?.path?.at(-1)?.input;
  if (typeof given !== 'object' || given === null) return '';
  const stranger = Object.keys(given).find((key) => !known.includes(key));
  return stranger === undefined ? '' : t` (there is ${JSON.stringify(stranger)}, which is not a known field)`;
}
