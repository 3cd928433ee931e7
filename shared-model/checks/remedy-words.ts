/** A suggested change in words: "Move stand 3 by 120 mm towards stage left"; and what a list says of what was tried. */

import { formatLength, type Units } from '../document/measures.ts';
import { listed } from '../words/lists.ts';
import { t } from '../words/say.ts';
import type { Finding, ItemChange, Remedy, RemedyChange } from './finding.ts';
import { isTried } from './remedy.ts';
import type { Explained } from './sentence-parts.ts';

export function noneHelps(): string {
  return t`None of the changes tried clears this without making something else worse.`;
}

export function notTriedHere(): string {
  return t`Against this nothing was tried here; the window tries changes, one finding at a time.`;
}

/** An item by its id. */
export type NameOf = (id: string) => string;

/** Without a full stop. */
export function remedyWords(remedy: RemedyChange, nameOf: NameOf, units: Units): string {
  switch (remedy.kind) {
    case 'lower':
      return lowerWords(remedy, nameOf, units);
    case 'flatten':
      return t`Lay ${nameOf(remedy.item)} ${Math.round(remedy.by)}° flatter`;
    case 'both': {
      const [first, second] = [
        remedyWords(remedy.first, nameOf, units),
        remedyWords(remedy.second, nameOf, units),
      ];
      return t`${first}, and: ${second}`;
    }
    case 'lowerAll':
      return listed(remedy.items.map((item) => lowerWords(item, nameOf, units)));
    case 'move':
      return t`Move ${nameOf(remedy.item)} by ${wayWords(remedy, units)}`;
    case 'moveTogether':
      return t`Move ${listed(remedy.items.map(nameOf))} by ${wayWords(remedy, units)}`;
    case 'turn':
      return t`Turn ${nameOf(remedy.item)} by ${turnWords(remedy.by)}`;
    case 'turnTogether':
      return turnTogetherWords(remedy.items.map(nameOf), remedy.by);
    case 'cover':
      return t`Cover the cable of ${nameOf(remedy.item)} with a ramp or mat`;
  }
}

/** Positive: anticlockwise from above, or along x. */
export function sideWords(way: number): string {
  return way > 0 ? t`stage left` : t`stage right`;
}

/** What was tried against a finding, for one who names items and measures in these units. */
export interface Trial {
  /** Best first; null: nothing was tried. */
  readonly remedies: readonly Remedy[] | null;
  readonly nameOf: NameOf;
  readonly units: Units;
}

/**
 * The advice of a list that is printed: the change that was tried in place of the untried one. An amount that nobody
 * has tried is told only against what nothing can be tried against; followed blindly it can do harm elsewhere.
 */
export function triedAdvice(
  { advice, remark }: Explained,
  { code }: Finding,
  { remedies, nameOf, units }: Trial,
): string {
  if (!isTried(code)) return advice;
  const [remedy] = remedies ?? [];
  const tried = remedy
    ? t`${remedyWords(remedy, nameOf, units)} (tried).`
    : remedies
      ? noneHelps()
      : notTriedHere();
  return [tried, remark].filter(Boolean).join(' ');
}

function turnTogetherWords([first = '', ...others]: readonly string[], by: number): string {
  return t`Turn ${first} by ${turnWords(by)}, and swing ${listed(others)} round to match`;
}

function turnWords(by: number): string {
  return t`${Math.abs(Math.round(by))}° towards ${sideWords(by)}`;
}

function lowerWords({ item, by }: ItemChange, nameOf: NameOf, units: Units): string {
  const [name, length] = [nameOf(item), formatLength(Math.abs(by), units)];
  return by >= 0 ? t`Lower ${name} by ${length}` : t`Raise ${name} by ${length}`;
}

function wayWords({ dx, dy }: { readonly dx: number; readonly dy: number }, units: Units): string {
  const [across, along] = [formatLength(Math.abs(dx), units), formatLength(Math.abs(dy), units)];
  const parts: string[] = [];
  if (Math.abs(dx) >= 0.5) parts.push(t`${across} towards ${sideWords(dx)}`);
  if (Math.abs(dy) >= 0.5) parts.push(dy > 0 ? t`${along} upstage` : t`${along} downstage`);
  return listed(parts);
}
