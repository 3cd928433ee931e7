/** Lines of sight between players, while it matters to whoever arranges them. */

import type { FacingResults } from '#model/checks/facing/facing.ts';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Vec2 } from '#model/geometry/frame.ts';

/** `seen`: 1 when the two see each other's eyes, 0 when something stands between. */
export interface Glance {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly seen: number;
}

/** More lines than this tell nobody anything. */
const MOST = 60;

/**
 * A fan from the chosen player to all whom he must see. While something is moved that may come between others, as a
 * stand does, the lines of all pairs.
 */
export function glancesOf(
  document: Document,
  { pairs }: FacingResults,
  { selection, drafting }: { readonly selection: readonly string[]; readonly drafting: boolean },
): Glance[] {
  const chosen = selection.filter((id) => document.records.get(id)?.kind === 'player');
  const isMoved = drafting && chosen.length < selection.length;
  const place = (id: Id<'player'>): Vec2 | null => {
    const player = document.records.get(id);
    return player?.kind === 'player' ? player : null;
  };
  return pairs
    .filter(({ players }) => isMoved || (selection.length === 1 && players.some((id) => chosen.includes(id))))
    .slice(0, MOST)
    .flatMap(({ players, blockers }) => {
      const [from, to] = [place(players[0]), place(players[1])];
      return from && to ? [{ from, to, seen: blockers.length === 0 ? 1 : 0 }] : [];
    });
}
