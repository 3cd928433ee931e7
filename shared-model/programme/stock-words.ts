/** What is missing, in words. */

import { t } from '../words/say.ts';
import { thingName } from './thing.ts';
import { shortages, type Shortage, type StockCheck } from './stock-check.ts';

/** One sentence a shortage; of what nobody counted, and that nothing is missing, one for all. */
export function shortageWords(check: StockCheck): string[] {
  const missing = shortages(check).map(shortageSentence);
  const uncounted = check.lines.filter(({ owned, most }) => owned === null && most > 0);
  const names = uncounted.map(({ thing }) => thingName(thing)).join(', ');
  return [
    ...missing,
    ...(missing.length === 0 && uncounted.length < check.lines.length
      ? [t`Of everything that was counted there is enough for every setup.`]
      : []),
    ...(uncounted.length > 0 ? [t`Not counted in the stock: ${names}.`] : []),
  ];
}

/** "Orchestral stand: 2 too few for Low Water, which needs 8." */
export function shortageSentence({ thing, setup, needed, short }: Shortage): string {
  const name = thingName(thing);
  const what = name.charAt(0).toUpperCase() + name.slice(1);
  const where = setup.name || t`setup ${setup.order}`;
  return setup.variantOf === null
    ? t`${what}: ${short} too few for ${where}, which needs ${needed}.`
    : t`${what}: ${short} too few for ${where} (a variant), which needs ${needed}.`;
}
