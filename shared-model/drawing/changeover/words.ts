/** What a changeover's sheets are called. */

import { find } from '../../document/document.ts';
import { labelOf } from '../../document/labels.ts';
import { t } from '../../words/say.ts';
import { oneLine } from '../text.ts';
import type { ChangeoverSheetRequest } from './request.ts';

/** "Changeover from Lock Gates to Hedgerow Dances", "First set-up: Lock Gates", "Last strike: Low Water". */
export function changeoverTitle({
  document,
  from,
  to,
}: Pick<ChangeoverSheetRequest, 'document' | 'from' | 'to'>): string {
  const name = (id: typeof from): string =>
    id === null ? '' : find(document, id)?.name || labelOf(document, id, id);
  if (from === null) return oneLine(t`First set-up: ${name(to)}`);
  if (to === null) return oneLine(t`Last strike: ${name(from)}`);
  return oneLine(t`Changeover from ${name(from)} to ${name(to)}`);
}
