/** A suggested change in words: "Move stand 3 120 mm towards stage left". */

import type { ItemChange, RemedyChange } from '#model/checks/finding.ts';
import { formatLength, type Units } from '#model/document/measures.ts';
import { text } from './text.ts';

/** `label` names an item by its id. */
export function remedyWords(remedy: RemedyChange, label: (id: string) => string, units: Units): string {
  const words = text.findings.remedy;
  switch (remedy.kind) {
    case 'lower':
      return loweringWords(remedy, label, units);
    case 'lowerAll':
      return text.list(remedy.items.map((change) => loweringWords(change, label, units)));
    case 'move':
      return words.move(label(remedy.item), wayWords(remedy, units));
    case 'turn':
      return words.turn(label(remedy.item), Math.abs(Math.round(remedy.by)), remedy.by > 0 ? 'SL' : 'SR');
  }
}

function loweringWords({ item, by }: ItemChange, label: (id: string) => string, units: Units): string {
  return text.findings.remedy.lower(label(item), formatLength(by, units));
}

function wayWords({ dx, dy }: { readonly dx: number; readonly dy: number }, units: Units): string {
  const parts: string[] = [];
  if (Math.abs(dx) >= 0.5) parts.push(`${formatLength(Math.abs(dx), units)} ${dx > 0 ? 'SL' : 'SR'}`);
  if (Math.abs(dy) >= 0.5) parts.push(`${formatLength(Math.abs(dy), units)} ${dy > 0 ? 'US' : 'DS'}`);
  return text.list(parts);
}
