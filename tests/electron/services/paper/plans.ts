/** Plans to print: of the demo's duo, which shares a booklet over the ridge, and of a long part that is a book. */

import { readFileSync } from 'node:fs';
import { keepPlan } from '#model/commands/page-plan.ts';
import { applyDiff } from '#model/document/diff.ts';
import { setupsOf, type Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Music } from '#model/document/music.ts';
import { scoreOf } from '#model/document/parts.ts';
import type { PlannedPaper } from '#model/drawing/cards/order.ts';
import { readDocument } from '#model/file-format/read.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { keptOf } from '#model/pages/kept/plan-of.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { performanceOf } from '#model/score/music/performance.ts';
import { aDocument, aPlayer, aScore, aStand, MUSIC, SETUP, SIDE } from '../../../helpers/build.ts';

export function planned(document: Document, setup: Id<'setup'>): PlannedPaper {
  const asked = instanceOf(document, setup);
  if (!asked.ok) throw new Error(asked.missing.join(' '));
  const result = planNow(asked.instance);
  if (result.status !== 'planned') throw new Error('there is no plan');
  return { document, setup, instance: asked.instance, plan: result.plan };
}

export function demoDuo(): PlannedPaper {
  const read = readDocument(
    readFileSync(new URL('../../../../assets/demo-concert.standlines', import.meta.url), 'utf8'),
  );
  if (!read.ok) throw new Error(read.problem.message);
  const [setup] = setupsOf(read.document);
  if (!setup) throw new Error('the demo has setups');
  return planned(read.document, setup.id);
}

/** Forty pages of four bars of 4 s, of which the last two are silent. */
export function longBook(): PlannedPaper {
  const pages = 40;
  const music: Music = {
    ...MUSIC,
    bars: Array.from({ length: 4 * pages }, (_, index) => ({ number: String(index + 1), ticks: 8 })),
    order: [[0, 4 * pages - 1]],
    parts: [
      {
        ...MUSIC.parts[0]!,
        silences: Array.from({ length: pages }, (_, page) =>
          [2, 3].map((bar) => [4 * page + bar, 0, 8] as const),
        ).flat(),
        pages: Array.from({ length: pages }, (_, page) => ({ page: page + 1, bar: 4 * page })),
      },
    ],
  };
  const player = aPlayer({ name: 'Contrabass clarinet of the second desk' });
  const stand = aStand({ y: 1500, sides: [{ ...SIDE, reader: player.id, pagesAcross: 2 }] });
  return planned(aDocument(player, stand, aScore({ players: [player.id], music })), SETUP);
}

/** Eight pages of four bars of 4 s, of which four lie open; only the ends of pages 4 and 6 are silent. */
export function wideConcertina(): PlannedPaper {
  const pages = 8;
  const music: Music = {
    ...MUSIC,
    bars: Array.from({ length: 4 * pages }, (_, index) => ({ number: String(index + 1), ticks: 8 })),
    order: [[0, 4 * pages - 1]],
    parts: [
      {
        ...MUSIC.parts[0]!,
        silences: [14, 15, 22, 23].map((bar) => [bar, 0, 8] as const),
        pages: Array.from({ length: pages }, (_, page) => ({ page: page + 1, bar: 4 * page })),
      },
    ],
  };
  const player = aPlayer({ name: 'Vibraphone' });
  const side = { ...SIDE, reader: player.id, pagesAcross: 4 };
  const stand = aStand({ y: 1500, deskWidth: 900, sides: [side] });
  return planned(aDocument(player, stand, aScore({ players: [player.id], music })), SETUP);
}

/** The demo's duo with the pages after its last turn never in view. */
export function withoutLastTurn(): PlannedPaper {
  const duo = demoDuo();
  return { ...duo, plan: { ...duo.plan, turns: duo.plan.turns.slice(0, -1) } };
}

/** The document with the plan as the one that its setup keeps. */
export function keeping({ document, setup, plan }: PlannedPaper): Document {
  const score = scoreOf(document, setup);
  if (!score) throw new Error('a planned setup has music');
  const outcome = keepPlan(document, { setup, ...keptOf(plan, performanceOf(score.music)) });
  if (!outcome.ok) throw new Error(outcome.reason);
  return applyDiff(document, outcome.diff);
}

/** Bars of 4 s; 3 to 6 are played twice, 4 to 6 are silent; pages begin with bars 1, 3, 7 and 9. */
export const repeatedBars: Music = {
  ...MUSIC,
  bars: Array.from({ length: 10 }, (_, index) => ({ number: String(index + 1), ticks: 8 })),
  order: [
    [0, 5],
    [2, 9],
  ],
  parts: [
    {
      ...MUSIC.parts[0]!,
      silences: [3, 4, 5].map((bar) => [bar, 0, 8] as const),
      pages: [0, 2, 6, 8].map((bar, index) => ({ page: index + 1, bar })),
    },
  ],
};
