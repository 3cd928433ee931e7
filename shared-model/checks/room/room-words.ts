/** What sentences about ways out share. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import { formatApart, formatLength, type Units } from '../../document/measures.ts';
import { t } from '../../words/say.ts';
import type { Finding } from '../finding.ts';
import { atLeast } from '../sentence-parts.ts';
import { CLEAR_WIDTH, PINCH_LENGTH, PINCH_WIDTH } from './pinch-points.ts';

/** Whose word counts. Ends all advice about something on which people can be hurt. */
export function whoDecides(): string {
  return t`Local codes, the venue and licensed practice decide.`;
}

/** How narrow a way is, how wide it was to be, and the clear width that `pinchWords` name: no two read alike. */
export function narrowFigures(
  { measured, required }: Finding,
  units: Units,
): readonly [string, string, string] {
  return formatApart([measured, required, CLEAR_WIDTH], units);
}

/** Things can be set wider apart, doors cannot. */
export function widenWords(finding: Finding, document: Document, units: Units): string {
  if (isAtDoor(finding, document)) return t`Open another way out, or agree on this door with the venue.`;
  return t`Widen it by ${atLeast(finding.required - finding.measured, units)} there.`;
}

function isAtDoor({ subjects }: Finding, document: Document): boolean {
  return document.records.get(subjects[1] ?? '')?.kind === 'door';
}

/** What a way is narrow between: ", between piano 1 and the wall", ", at door 1"; nothing when it is not known. */
export function besideWords(finding: Finding, document: Document, setup: Id<'setup'>): string {
  const [, first, second] = finding.subjects;
  if (first === undefined) return '';
  if (isAtDoor(finding, document)) return t`, at ${labelOf(document, setup, first)}`;
  const words = (id: string): string => nearWords(document, setup, id);
  return second === undefined
    ? t`, beside ${words(first)}`
    : t`, between ${words(first)} and ${words(second)}`;
}

function nearWords(document: Document, setup: Id<'setup'>, id: string): string {
  const isWall = document.records.get(id)?.kind === 'platform';
  return isWall ? t`the edge of the platform` : labelOf(document, setup, id);
}

/** The sentences that there are, one after the other. */
export function together(...sentences: readonly string[]): string {
  return sentences.filter(Boolean).join(' ');
}

/** What the standard says of short narrow places, where the way has no others. */
export function pinchWords(finding: Finding, units: Units): string {
  if (finding.detail['pinch'] !== 'pinch') return '';
  const [, , clear] = narrowFigures(finding, units);
  const [pinch, length] = [formatLength(PINCH_WIDTH, units), formatLength(PINCH_LENGTH, units)];
  return t`ADA/ABA 403.5.1 speaks of ${clear}, and of ${pinch} over at most ${length}.`;
}
