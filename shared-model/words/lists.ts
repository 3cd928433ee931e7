/** Names that follow each other, as the language that is spoken joins them. */

import { t } from './say.ts';

/** "stand 1", "stand 1 and stand 2", "stand 1, stand 2 and stand 3". */
export function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  if (names.length < 2) return last;
  const before = names.slice(0, -1).join(', ');
  return t`${before} and ${last}`;
}

/** The first ones of a long list: "stand 1, stand 2 and 3 more". */
export function andMore(names: readonly string[], shown: number): string {
  const [first, more] = [names.slice(0, shown).join(', '), names.length - shown];
  return t`${first} and ${more} more`;
}
