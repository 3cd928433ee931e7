/** A booklet described in a small JSON file, for those who have no concert of it. DEVELOPERS.md describes its fields. */

import * as v from 'valibot';
import { PAPER_MODELS } from '#model/catalogue/paper.ts';
import { notAllowed, type Complaint } from '#model/file-format/complaint.ts';
import { field, fields, line, listOf, oneOf, textLike, wholeBetween } from '#model/file-format/fields.ts';
import { findTextFault, lineAndColumn } from '#model/file-format/json-text.ts';
import { complaintOf } from '#model/file-format/record.ts';
import { MOST_LEAVES, MOST_PAGES_ACROSS } from '#model/pages/bindings/fault.ts';
import { msgid, ngettext, t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';

/** Of a part that is read from stands. */
const MOST_PAGES = 500;
const LONGEST = 200;

const PAPER_IDS = PAPER_MODELS.map(({ id }) => id) as [string, ...string[]];

const pageOrNull = v.nullable(wholeBetween(1, MOST_PAGES), null);

const side = fields({
  player: field('Player', 'Who reads on this side; empty: nobody.', line(LONGEST)),
  pages: v.optional(v.nullable(wholeBetween(1, MOST_PAGES)), null),
  pdf: v.optional(
    v.nullable(textLike(/^[^\u0000]{1,1000}$/u, () => t`give the path of a PDF, or null`)),
    null,
  ),
  pdfPages: v.optional(
    v.nullable(textLike(/^.{1,2000}$/u, () => t`give pages such as "2-9, 11", or null`)),
    null,
  ),
  views: v.optional(v.nullable(listOf(listOf(pageOrNull, 1, MOST_PAGES_ACROSS), 1, MOST_LEAVES + 1)), null),
});

const schema = fields({
  format: v.literal('standlines-booklet', () => t`give "standlines-booklet"`),
  version: v.literal(1, () => t`give 1`),
  title: line(LONGEST),
  binding: oneOf(['ridge', 'book', 'concertina', 'loose']),
  leaves: v.optional(v.nullable(wholeBetween(0, MOST_LEAVES)), null),
  pagesPerPanel: v.optional(wholeBetween(1, MOST_PAGES_ACROSS), 2),
  stackSide: v.optional(oneOf(['first', 'second']), 'first'),
  paper: oneOf(PAPER_IDS),
  pageSize: v.optional(v.nullable(oneOf(PAPER_IDS)), null),
  sides: listOf(side, 1, 2),
  cues: v.optional(listOf(line(LONGEST), 0, MOST_LEAVES), []),
});

export type BookletDescription = v.InferOutput<typeof schema>;
export type DescribedSide = BookletDescription['sides'][number];

/** Throws `FaultError` with the place and what would be right. */
export function readBookletDescription(text: string): BookletDescription {
  const raw = parsed(text);
  const result = v.safeParse(schema, raw, { abortEarly: true });
  if (!result.success) throw fault(complaintOf(result.issues[0], raw));
  const broken = ruleBroken(result.output);
  if (broken) throw fault(broken);
  return result.output;
}

/** "2-9, 11" as numbers; a sentence's advice when it is no such list. */
export function pageList(text: string, most: number): readonly number[] | string {
  const pages: number[] = [];
  for (const entry of text.split(',')) {
    const [, from, to] = /^\s*(\d{1,4})\s*(?:-\s*(\d{1,4})\s*)?$/.exec(entry) ?? [];
    if (from === undefined) return t`give page numbers and ranges such as "2-9, 11"`;
    const [first, last] = [Number(from), Number(to ?? from)];
    if (first < 1 || last > most || first > last) return t`the PDF has pages 1 to ${most}`;
    for (let page = first; page <= last; page++) pages.push(page);
    if (pages.length > MOST_PAGES) return t`give at most ${MOST_PAGES} pages`;
  }
  return pages;
}

function fault({ field: path, text }: Complaint): FaultError {
  return new FaultError('booklet.badDescription', `${path}${text}.`);
}

/** About one field of a description that was read; the caller knows what is wrong with it. */
export function descriptionFault(path: string, value: unknown, advice: string): FaultError {
  return fault(notAllowed(path, value, advice));
}

function parsed(text: string): unknown {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (!/^\s*\{/.test(body))
    throw new FaultError(
      'booklet.badDescription',
      t`This is not a booklet description: it does not start with "{".`,
    );
  const found = findTextFault(body);
  if (!found) return JSON.parse(body);
  const { line: row, column } = lineAndColumn(body, found.at);
  throw new FaultError('booklet.badDescription', t`Line ${row}, column ${column}: ${found.message}.`);
}

function ruleBroken({ binding, sides, cues, leaves }: BookletDescription): Complaint | null {
  const wanted = binding === 'ridge' ? 2 : 1;
  if (sides.length !== wanted) return notAllowed('sides', sides, sidesAdvice(binding, wanted));
  if (binding === 'loose' && leaves) return notAllowed('leaves', leaves, t`loose pages have none: give 0`);
  if (cues.length > 0 && leaves !== null && cues.length > leaves)
    return notAllowed('cues', cues, t`there are ${leaves} turns`);
  for (const [index, { pdf, pages, pdfPages, player }] of sides.entries()) {
    const at = `sides[${index}]`;
    if (pdfPages !== null && pdf === null)
      return notAllowed(`${at}.pdfPages`, pdfPages, t`name the pdf, too`);
    if (player !== '' && pdf === null && pages === null)
      return notAllowed(`${at}.pages`, pages, t`give the number of pages, or a pdf`);
  }
  return null;
}

function sidesAdvice(binding: string, count: number): string {
  return ngettext(msgid`a ${binding} binding has one side`, `a ${binding} binding has two sides`, count);
}
