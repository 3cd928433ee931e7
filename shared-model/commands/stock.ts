/** What there is to set up with. */

import { allOf } from '../document/document.ts';
import type { Stock } from '../document/records.ts';
import { kindWord } from '../document/labels.ts';
import { t } from '../words/say.ts';
import type { Command } from './command.ts';
import { freshId } from './fresh-id.ts';
import { editsOf, propose } from './propose.ts';

export type CountStock = Pick<Stock, 'item' | 'model' | 'name'> &
  Partial<Pick<Stock, 'owned' | 'borrowed' | 'storage'>>;

/** Says how many there are of one thing and where they wait; what is left out stays as it was, or is none. */
export const countStock: Command<CountStock> = (document, { item, model, name, ...counts }) => {
  const known = allOf(document, 'stock').find((row) => isOf(row, { item, model, name }));
  const row: Stock = {
    ...(known ?? {
      id: freshId(document, 'stock'),
      kind: 'stock',
      ...{ item, model, name, owned: 0, borrowed: 0, storage: null },
    }),
    ...counts,
  };
  const what = item === 'cable' ? t`cable` : kindWord(item);
  const counted = name || `${what} ${model}`.trimEnd();
  return propose(document, editsOf([row]), { label: t`count ${counted}`.trimEnd() });
};

/** Things without models are told apart by their names, and risers, lamps and cables not at all. */
function isOf(row: Stock, { item, model, name }: Pick<Stock, 'item' | 'model' | 'name'>): boolean {
  if (row.item !== item || row.model !== model) return false;
  return item !== 'shape' || row.name.trim().toLowerCase() === name.trim().toLowerCase();
}
