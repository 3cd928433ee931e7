/** What goes along with somebody who is moved or turned. */

import { inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Stand } from '../../document/records.ts';
import type { Together } from './ways.ts';

/** The stands that a player reads from. */
export function standsReadBy(document: Document, setup: Id<'setup'>, player: string): Stand[] {
  return inSetup(document, setup, 'stand').filter(({ sides }) =>
    sides.some(({ reader, pagesAcross }) => reader === player && pagesAcross > 0),
  );
}

/** He and the stands he reads from; null when somebody else reads from one of them and would lose it. */
export function withOwnStands(document: Document, setup: Id<'setup'>, player: string): Together | null {
  const stands = standsReadBy(document, setup, player);
  const isShared = stands.some(({ sides }) =>
    sides.some(({ reader }) => reader !== null && reader !== player),
  );
  return isShared ? null : [player, ...stands.map(({ id }) => id)];
}
