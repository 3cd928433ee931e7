/** What a sentence about a finding is made of, and the words and figures that the sentences of all checks share. */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { labelOf } from '../document/labels.ts';
import { formatLength, type Units } from '../document/measures.ts';
import type { Degrees, Limits, Millimetres } from '../document/records.ts';
import { language } from '../words/catalogue.ts';
import { atMost, fixed } from '../words/numbers.ts';
import { t } from '../words/say.ts';
import type { Finding } from './finding.ts';

export interface Told {
  readonly headline: string;
  readonly text: string;
  /** What may be done, an order that nobody has tried: it is told as "Try: ...". Empty: there is nothing to be done. */
  readonly advice: string;
  /** What is no order: "It fits the rest." */
  readonly remark?: string;
}

/** As it is told outside: the advice with its mark and all remarks; and the remarks alone, for beside a change that was tried. */
export type Explained = Required<Told>;

export type Sentence = (finding: Finding, document: Document, setup: Id<'setup'>, units: Units) => Told;

/** The label of the finding's subject at a place in its list. */
export function subject(
  { subjects }: Finding,
  place: number,
  document: Document,
  setup: Id<'setup'>,
): string {
  return labelOf(document, setup, subjects[place] ?? '');
}

/** A figure of the finding's detail; NaN when the finding has none of that name. */
export function figure({ detail }: Finding, name: string): number {
  const value = detail[name];
  return typeof value === 'number' ? value : NaN;
}

/** "52°". */
export function angle(value: Degrees): string {
  return `${Math.round(value)}°`;
}

/** An angle that is over a limit is not rounded down to it: "45.4°" and not "45° against 45°". */
export function angleOver(value: Degrees, limit: Degrees): string {
  return Math.round(value) > limit ? angle(value) : `${fixed(Math.ceil(value * 10 - 1e-6) / 10, 1)}°`;
}

/** At least this angle, in whole degrees: turning by so much clears. */
export function atLeastAngle(value: Degrees): string {
  return `${Math.ceil(value - 1e-6)}°`;
}

/** At least this length in the words of the trade: what is to be lowered by so much clears. */
export function atLeast(length: Millimetres, units: Units): string {
  const step = units === 'metric' ? 1 : 25.4 / 4;
  return formatLength(Math.ceil(length / step - 1e-9) * step, units);
}

/** What a concert has whose director set no limits. */
export const USUAL_LIMITS: Limits = { seesWell: 0.9, houseShare: 0.75, edgeDistance: 600, routeWidth: 915 };

/** Nobody asked for a limit that was never touched: it is the tool's, and told as such. */
export function wished(limit: string, isUsual: boolean, how: 'kept' | 'wanted' = 'kept'): string {
  if (!isUsual) return t`you asked for ${limit}`;
  return how === 'kept' ? t`${limit} is kept here` : t`${limit} is wanted here`;
}

/** Staves are measured in millimetres everywhere. */
export function staff(size: Millimetres): string {
  return `${atMost(size, 2)} mm`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** An order as it goes on behind other words: "Lower the desk." as "lower the desk."; German nouns keep their capital. */
export function goingOn(order: string): string {
  return language() === 'en' ? order.charAt(0).toLowerCase() + order.slice(1) : order;
}
