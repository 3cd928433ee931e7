/** A suggested change in words: "Move stand 3 120 mm towards stage left". */

import type { Remedy } from '#model/checks/finding.ts';
import { formatLength, type Units } from '#model/document/measures.ts';
import { text } from './text.ts';

export function remedyWords(remedy: Remedy, item: string, units: Units): string {
  const words = text.findings.remedy;
  switch (remedy.kind) {
    case 'lower': {
      const by = formatLength(Math.abs(remedy.by), units);
      return remedy.by >= 0 ? words.lower(item, by) : words.raise(item, by);
    }
    case 'move':
      return words.move(item, wayWords(remedy, units));
    case 'turn':
      return words.turn(item, Math.abs(Math.round(remedy.by)), remedy.by > 0 ? 'SL' : 'SR');
  }
}

function wayWords({ dx, dy }: { readonly dx: number; readonly dy: number }, units: Units): string {
  const parts: string[] = [];
  if (Math.abs(dx) >= 0.5) parts.push(`${formatLength(Math.abs(dx), units)} ${dx > 0 ? 'SL' : 'SR'}`);
  if (Math.abs(dy) >= 0.5) parts.push(`${formatLength(Math.abs(dy), units)} ${dy > 0 ? 'US' : 'DS'}`);
  return text.list(parts);
}
