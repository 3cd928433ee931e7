/** Which players must see each other: all pairs of the setup but those that it excepts. */

import { find, inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Player } from '../../document/records.ts';

export type Pair = readonly [Player, Player];

/** In the order of the players' ids; the first of a pair comes first there too. */
export function pairsToSee(document: Document, setup: Id<'setup'>): Pair[] {
  const excepted = new Set<string>();
  for (const [a, b] of find(document, setup)?.needNotSee ?? []) excepted.add(`${a} ${b}`).add(`${b} ${a}`);
  const players = inSetup(document, setup, 'player');
  return players.flatMap((first, index) =>
    players
      .slice(index + 1)
      .filter((second) => !excepted.has(`${first.id} ${second.id}`))
      .map((second): Pair => [first, second]),
  );
}
