/** The first of many names; nobody reads a thousand: "S1, S2 and 40 more". */

import { t } from '../../words/say.ts';

const MOST_NAMED = 6;

export function firstNames(names: readonly string[]): string {
  const more = names.length - MOST_NAMED;
  return more > 0 ? t`${names.slice(0, MOST_NAMED).join(', ')} and ${more} more` : names.join(', ');
}
