/**
 * Routes found with everything shared and nothing looked at twice are those found the plain way: for each player a net
 * of his own, the widest way first, and every distance measured to every edge.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearanceAlong, clearancesOf, keepsClear } from '#model/checks/room/clearance.ts';
import { onFoot } from '#model/checks/room/gait.ts';
import { groundOf } from '#model/checks/room/ground.ts';
import { departures, ownPlace, widestFrom } from '#model/checks/room/own-place.ts';
import { routeResults } from '#model/checks/room/routes.ts';
import { sitesOf } from '#model/checks/room/sites.ts';
import { walkerFrom } from '#model/checks/room/walk.ts';
import { wayGraph } from '#model/checks/room/way-graph.ts';
import { exitFinder, seedsBeyond, widestWays } from '#model/checks/room/ways-out.ts';
import { inSetup, type Document } from '#model/document/document.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { forEachEdge } from '#model/geometry/polygon.ts';
import { gapBetweenSegments } from '#model/geometry/segments.ts';
import { aDocument, aDoor, aPlayer, aStand, aTable, SETUP } from '../../../helpers/build.ts';

const spot = fc.record({ x: fc.integer({ min: -3600, max: 3600 }), y: fc.integer({ min: 500, max: 4500 }) });

/** Players with a stand each, and tables, wherever they come to stand. */
const crowds = fc
  .record({
    players: fc.array(spot, { minLength: 1, maxLength: 7 }),
    tables: fc.array(spot, { maxLength: 6 }),
    door: fc.integer({ min: 0, max: 7000 }),
  })
  .map(({ players, tables, door }): Document => {
    const items: AnyRecord[] = players.flatMap((at, index) => [
      aPlayer({ ...at, id: `player-${index + 1}` }),
      aStand({ ...at, y: at.y - 500, id: `stand-${index + 1}` }),
    ]);
    const others = tables.map((at, index) => aTable({ ...at, id: `table-${index + 1}` }));
    return aDocument(aDoor({ offset: door }), ...items, ...others);
  });

/** How wide the widest way of each player is by his own search alone; less than 200 is no way. */
function slowWidths(document: Document): number[] {
  return inSetup(document, SETUP, 'player').map((player) => {
    const gait = onFoot(document);
    const ground = groundOf(document, SETUP, gait);
    const graph = wayGraph(sitesOf(ground));
    const exitBeyond = exitFinder(ground.exits);
    const walker = walkerFrom(player, player.id, { clearances: clearancesOf(ground), gait });
    const place = ownPlace(graph, { ...walker, squeeze: gait.squeeze });
    if (!place) return 0;
    const widest = widestWays({ graph, widths: graph.widths }, seedsBeyond(graph, exitBeyond, 'width'), 0);
    const ways = widestFrom(place, widest, { exitBeyond, least: 0 });
    return departures(place).reduce(
      (best, { node, width }) => Math.max(best, Math.min(width, ways.measure[node] ?? 0)),
      0,
    );
  });
}

describe('the quick search', () => {
  it('finds a way as wide as the widest one is, or as asked, and none where there is none', () => {
    let [wide, narrow] = [0, 0];
    fc.assert(
      fc.property(crowds, (document) => {
        const { asked } = onFoot(document);
        const slow = slowWidths(document);
        routeResults(document, SETUP).forEach(({ exit, width }, index) => {
          const possible = slow[index] ?? 0;
          if (possible < 200) return expect(exit).toBeNull();
          if (possible >= asked) wide++;
          else narrow++;
          // The widths of the nets are up to 6 mm too great at 300 mm; 0: the squeeze within the first step failed.
          if (width > 0) expect(width).toBeGreaterThan(Math.min(possible, asked) - 8);
        });
      }),
      { numRuns: 60 },
    );
    // Otherwise one of the two was not tested.
    expect(Math.min(wide, narrow)).toBeGreaterThan(5);
  });

  it('of one player is the same whoever else is searched for', () => {
    fc.assert(
      fc.property(crowds, (document) => {
        const all = routeResults(document, SETUP);
        const reversed = { records: new Map([...document.records].reverse()) };
        expect(routeResults(reversed, SETUP)).toEqual(all);
        expect(routeResults(document, SETUP)).toEqual(all);
      }),
      { numRuns: 30 },
    );
  });

  it('measures distances as if every edge were looked at', () => {
    fc.assert(
      fc.property(crowds, spot, spot, fc.integer({ min: 50, max: 1500 }), (document, a, b, most) => {
        const ground = groundOf(document, SETUP, onFoot(document));
        const free = new Set(['player-1']);
        let least = most;
        for (const { a: p, b: q } of ground.walls)
          least = Math.min(least, gapBetweenSegments(a, b, p, q).distance);
        for (const { owner, outline } of ground.obstacles) {
          if (free.has(owner)) continue;
          forEachEdge(outline, (p, q) => (least = Math.min(least, gapBetweenSegments(a, b, p, q).distance)));
        }
        const clearances = clearancesOf(ground);
        expect(clearanceAlong(clearances, { a, b }, free, most)).toBeCloseTo(least, 6);
        expect(keepsClear(clearances, { a, b }, free, least - 0.01)).toBe(true);
        if (least < most) expect(keepsClear(clearances, { a, b }, free, least + 0.01)).toBe(false);
      }),
      { numRuns: 200 },
    );
  });
});
