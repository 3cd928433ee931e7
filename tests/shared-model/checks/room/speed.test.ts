/** Bounds on processor time that only a mistake breaks: many times what it takes. */

import { describe, expect, test } from 'vitest';
import { roomFindings } from '#model/checks/room/room-findings.ts';
import { routeResults } from '#model/checks/room/routes.ts';
import type { Document } from '#model/document/document.ts';
import type { AnyRecord } from '#model/document/records.ts';
import {
  aDocument,
  aDoor,
  aPlatform,
  aPlayer,
  aStand,
  aTable,
  PERSON,
  SETUP,
} from '../../../helpers/build.ts';

/** Rows of players with a stand each, and a table to every fourth: `count` items. */
function rows(count: number, apart: number): Document {
  const players = Math.ceil((count * 4) / 9);
  const columns = Math.ceil(Math.sqrt(players));
  const items: AnyRecord[] = [];
  for (let n = 0; n < players; n++) {
    const at = { x: ((n % columns) - columns / 2) * apart, y: 1500 + Math.floor(n / columns) * apart };
    items.push(aPlayer({ ...at, id: `player-${n + 1}`, person: { ...PERSON, size: { by: 'anyone' } } }));
    items.push(aStand({ ...at, id: `stand-${n + 1}`, y: at.y - apart / 3 }));
    if (n % 4 === 0) items.push(aTable({ x: at.x + apart / 2, y: at.y, id: `table-${n + 1}` }));
  }
  const half = (columns / 2 + 1) * apart;
  const outline = [
    { x: -half, y: 0 },
    { x: half, y: 0 },
    { x: half, y: 2 * half + 2000 },
    { x: -half, y: 2 * half + 2000 },
  ];
  return aDocument(aPlatform({ outline }), aDoor({ width: 2000 }), ...items);
}

/** Milliseconds of this process, so that a busy machine changes little. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function timed(document: Document): { readonly placing: number; readonly routes: number } {
  const start = processorTime();
  roomFindings(document, SETUP, null);
  const middle = processorTime();
  routeResults(document, SETUP);
  return { placing: middle - start, routes: processorTime() - middle };
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

describe('time', () => {
  test('of a setup of 40 items', () => {
    const document = rows(40, 1500);
    for (let warm = 0; warm < 5; warm++) timed(document);
    const runs = Array.from({ length: 9 }, () => timed(document));
    const [placing, routes] = [median(runs.map((run) => run.placing)), median(runs.map((run) => run.routes))];
    console.log(`40 items: placing ${placing.toFixed(1)} ms, routes ${routes.toFixed(1)} ms (medians of 9)`);
    expect(placing).toBeLessThan(60);
    expect(routes).toBeLessThan(300);
  });

  test.each([
    ['well apart', 1500],
    ['all in one another', 40],
  ])(
    'of 2,000 items %s',
    (_, apart) => {
      const { placing, routes } = timed(rows(2000, apart));
      console.log(
        `2,000 items ${apart} mm apart: placing ${placing.toFixed(0)} ms, routes ${routes.toFixed(0)} ms`,
      );
      expect(placing + routes).toBeLessThan(60_000);
    },
    300_000,
  );
});
