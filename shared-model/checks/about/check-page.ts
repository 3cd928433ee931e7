/**
 * What a page about a check tells: what is computed, when it speaks up, from which figures and sources, what of the concert
 * it depends on, and what it does not know. In the language that is spoken and the units asked for; every figure comes
 * from the constant that the check itself uses.
 */

import { formatLength, type Units } from '../../document/measures.ts';
import type { Concert, Limits } from '../../document/records.ts';
import type { FindingCode, Severity } from '../finding.ts';
import type { Source } from './cited.ts';

/** When a finding of this code comes, and how grave it is. */
export interface Verdict {
  readonly code: FindingCode;
  readonly severity: Severity;
  readonly when: string;
}

/** A figure that the check computes with, and who says so. */
export interface AboutFigure {
  readonly what: string;
  readonly value: string;
  readonly source: Source;
}

/** Something that the director can set, which the check goes by. */
export type Setting =
  | { readonly kind: 'limit'; readonly limit: keyof Limits; readonly what: string }
  | { readonly kind: 'switch'; readonly field: keyof Concert & 'headsInFront'; readonly what: string }
  | { readonly kind: 'form'; readonly form: SettingForm; readonly what: string };

/** The form of properties, or the dialog, in which it is set. */
export type SettingForm =
  | 'player'
  | 'instrument'
  | 'stand'
  | 'piano'
  | 'lamp'
  | 'platform'
  | 'door'
  | 'seats'
  | 'music'
  | 'turns'
  | 'stock';

export interface AboutPage<Id extends string = string> {
  readonly id: Id;
  readonly title: string;
  /** The question that it answers, in one sentence. */
  readonly asks: string;
  readonly computes: readonly string[];
  readonly verdicts: readonly Verdict[];
  readonly figures: readonly AboutFigure[];
  readonly settings: readonly Setting[];
  readonly unknown: readonly string[];
  /** Where people can be hurt; else null. */
  readonly caution: string | null;
  /** Ids of pages that belong with it. */
  readonly related: readonly string[];
}

/** Lengths in words, as the page's reader measures. */
export interface Teller {
  readonly length: (length: number) => string;
  readonly units: Units;
}

export function tellerIn(units: Units): Teller {
  return { length: (length) => formatLength(length, units), units };
}

/** 0.9 is "90 %". */
export function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
