/** The stands of a setup as stations for paper: what they hold, from left to right before each reader, and who reaches the leaves. */

import { desksOf, type Desk } from '../../document/desks.ts';
import { inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightAt } from '../../document/levels.ts';
import type { Player, Stand } from '../../document/records.ts';
import { facingVector } from '../../geometry/frame.ts';
import type { BindingKind } from '../bindings/binding.ts';
import type { PlanSide, PlanStation } from '../planner/instance.ts';
import { leafReach } from './leaf-reach.ts';

/** Only stands that one of `readers` reads from; and only they turn: of others nobody knows when they are free. */
export function stationsOf(
  document: Document,
  setup: Id<'setup'>,
  readers: ReadonlySet<string>,
): PlanStation[] {
  const players = inSetup(document, setup, 'player').filter(({ id }) => readers.has(id));
  return inSetup(document, setup, 'stand')
    .filter(({ sides }) => sides.some(({ reader }) => reader !== null && readers.has(reader)))
    .map((stand, index): PlanStation => {
      const desks = desksOf(stand, floorHeightAt(document, setup, stand));
      const [first, second] = desks.map((desk) => sideOf(desk, players));
      if (!first) throw new Error(`stand ${stand.id} has no side`);
      return {
        id: stand.id,
        order: index,
        sides: second ? [first, second] : [first],
        bindings: bindingsFor(stand),
        reach: desks.flatMap((desk) => leafReach({ document, setup, stand, desk, players })),
      };
    });
}

/** Over a ridge only a booklet hangs; one desk takes all the others. */
function bindingsFor({ form }: Stand): BindingKind[] {
  return form === 'backToBack' ? ['ridge'] : ['loose', 'book', 'concertina'];
}

function sideOf(desk: Desk, players: readonly Player[]): PlanSide {
  const { reader, pagesAcross } = desk.side;
  const player = players.find(({ id }) => id === reader);
  return {
    reader: player?.id ?? null,
    width: Math.max(1, pagesAcross),
    position: player ? Math.round(toHisRight(player, desk)) : 0,
  };
}

/** Millimetres from the player's own middle line to the middle of the desk, positive to his right. */
function toHisRight(player: Player, { board }: Desk): number {
  const [a, , c] = board;
  const ahead = facingVector(player.facing);
  return ((a.x + c.x) / 2 - player.x) * ahead.y - ((a.y + c.y) / 2 - player.y) * ahead.x;
}
