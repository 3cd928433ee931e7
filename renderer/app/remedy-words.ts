/** A suggested change in words: "Move stand 3 by 120 mm towards stage left". */

import type { Explained } from '#model/checks/sentence-parts.ts';
import type { Finding, ItemChange, Remedy, RemedyChange } from '#model/checks/finding.ts';
import { isTried } from '#model/checks/remedy.ts';
import { formatLength, type Units } from '#model/document/measures.ts';
import { text } from './text.ts';

/** `nameOf` names an item by its id. */
export function remedyWords(remedy: RemedyChange, nameOf: (id: string) => string, units: Units): string {
  const words = text.findings.remedy;
  switch (remedy.kind) {
    case 'lower':
      return lowerWords(remedy, nameOf, units);
    case 'lowerAll':
      return text.list(remedy.items.map((item) => lowerWords(item, nameOf, units)));
    case 'move':
      return words.move(nameOf(remedy.item), wayWords(remedy, units));
    case 'moveTogether':
      return words.move(text.list(remedy.items.map(nameOf)), wayWords(remedy, units));
    case 'turn':
      return words.turn(nameOf(remedy.item), Math.abs(Math.round(remedy.by)), sideWords(remedy.by));
    case 'turnTogether':
      return turnTogetherWords(remedy.items.map(nameOf), remedy.by);
    case 'cover':
      return words.cover(nameOf(remedy.item));
  }
}

function turnTogetherWords([first = '', ...others]: readonly string[], by: number): string {
  const { turnTogether } = text.findings.remedy;
  return turnTogether(first, text.list(others), { by: Math.abs(Math.round(by)), side: sideWords(by) });
}

/** What nobody has tried is said only where nothing that was tried helps, or nothing is tried. */
export function adviceWords(
  { advice, remark }: Explained,
  { code }: Finding,
  remedies: readonly Remedy[] | undefined,
): string {
  const isUntriedAll = !isTried(code) || remedies?.length === 0;
  return isUntriedAll ? advice : remark;
}

/** Said of a finding with no remedy beside it; null: nothing, because nothing is tried, or something was found. */
export function noRemedyWords({ code }: Finding, remedies: readonly Remedy[] | undefined): string | null {
  if (!isTried(code)) return null;
  if (!remedies) return text.findings.looking;
  return remedies.length === 0 ? text.findings.noRemedy : null;
}

function lowerWords({ item, by }: ItemChange, nameOf: (id: string) => string, units: Units): string {
  const { lower, raise } = text.findings.remedy;
  return (by >= 0 ? lower : raise)(nameOf(item), formatLength(Math.abs(by), units));
}

function wayWords({ dx, dy }: { readonly dx: number; readonly dy: number }, units: Units): string {
  const { across, upstage, downstage } = text.findings.remedy;
  const parts: string[] = [];
  if (Math.abs(dx) >= 0.5) parts.push(across(formatLength(Math.abs(dx), units), sideWords(dx)));
  if (Math.abs(dy) >= 0.5) parts.push((dy > 0 ? upstage : downstage)(formatLength(Math.abs(dy), units)));
  return text.list(parts);
}

export function sideWords(way: number): string {
  const { left, right } = text.findings.remedy.sides;
  return way > 0 ? left : right;
}
