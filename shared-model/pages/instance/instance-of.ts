/** What there is to plan in a setup: its players' parts on the clock, and its stands as stations. */

import { inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { labelOf } from '../../document/labels.ts';
import type { Music, Part } from '../../document/music.ts';
import { keptPlanOf, scoreOf } from '../../document/parts.ts';
import type { Player } from '../../document/records.ts';
import { freeHands } from '../../checks/reach/hands.ts';
import { performanceOf, type Performance } from '../../score/music/performance.ts';
import { timeLineOf } from '../../score/music/readings.ts';
import { barLabels } from '../../score/words/bar-labels.ts';
import { passesOf } from '../../score/words/bar-words.ts';
import { t } from '../../words/say.ts';
import { pinsOf } from '../kept/plan-of.ts';
import { playerOf, type PlanInstance, type PlanPlayer } from '../planner/instance.ts';
import { stationsOf } from './stations-of.ts';

export type Asked =
  | { readonly ok: true; readonly instance: PlanInstance; readonly notes: readonly string[] }
  /** Sentences: what is missing and where to give it. */
  | { readonly ok: false; readonly missing: readonly string[] };

/**
 * Players without a part are left out, and so are stands that nobody reads from who has one. The pins are those of the kept
 * plan, in their order.
 */
export function instanceOf(document: Document, setup: Id<'setup'>): Asked {
  const score = scoreOf(document, setup);
  if (!score) return { ok: false, missing: [t`This setup has no music yet; give it a score.`] };
  const playing = score.music.parts.flatMap((part, index) => {
    const player = inSetup(document, setup, 'player').find(({ id }) => id === score.players[index]);
    return player ? [{ player, part }] : [];
  });
  const missing = missingIn(document, setup, playing);
  if (missing.length > 0) return { ok: false, missing };
  const performance = performanceOf(score.music);
  const players = playing.map(({ player, part }) =>
    planPlayer({ document, setup, player, part, music: score.music, performance }),
  );
  const stations = stationsOf(document, setup, new Set(players.map(({ id }) => id)));
  if (stations.length === 0) {
    return { ok: false, missing: [t`No stand of this setup has a reader with a part; say who reads where.`] };
  }
  const pins = pinsOf(keptPlanOf(document, setup)?.pins ?? [], performance);
  const instance = { players, stations, ...(pins.length > 0 ? { pins } : {}) };
  return { ok: true, instance, notes: [...leftOut(document, setup, playing), ...roomier(document, setup)] };
}

interface Playing {
  readonly player: Player;
  readonly part: Part;
}

function missingIn(document: Document, setup: Id<'setup'>, playing: readonly Playing[]): string[] {
  if (playing.length === 0) return [t`Nobody plays a part of the score yet; say who plays which.`];
  return playing
    .filter(({ part }) => !part.ownPages)
    .map(
      ({ player, part }) =>
        t`The pages of "${part.name}" (${labelOf(document, setup, player.id)}) are not known: the score tells only its own; give the bar that each page begins with.`,
    );
}

function leftOut(document: Document, setup: Id<'setup'>, playing: readonly Playing[]): string[] {
  const planned = new Set<string>(playing.map(({ player }) => player.id));
  return inSetup(document, setup, 'player')
    .filter(({ id }) => !planned.has(id))
    .map(({ id }) => t`${labelOf(document, setup, id)} has no part in the score and is left out.`);
}

/** A wider desk alone changes no plan; the user who has set one should know what else to say. */
function roomier(document: Document, setup: Id<'setup'>): string[] {
  return inSetup(document, setup, 'stand').flatMap((stand) => {
    const read = stand.sides.filter(({ reader, pageWidth }) => reader !== null && pageWidth > 0);
    const more = read.find(
      ({ pageWidth, pagesAcross }) => Math.floor(stand.deskWidth / pageWidth) > pagesAcross,
    );
    if (!more) return [];
    const room = Math.floor(stand.deskWidth / more.pageWidth);
    return [
      t`The desk of ${labelOf(document, setup, stand.id)} has room for ${room} pages side by side; it is planned with the ${Math.max(1, more.pagesAcross)} that its properties say.`,
    ];
  });
}

interface Planned extends Playing {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly music: Music;
  readonly performance: Performance;
}

function planPlayer({ document, setup, player, part, music, performance }: Planned): PlanPlayer {
  const { played, begins } = performance;
  const labelAt = barLabels(music);
  const bars = passesOf(played).map((pass, index) => ({
    label: labelAt(played[index] ?? 0),
    from: begins[index] ?? 0,
    ...(pass.of > 1 ? { pass } : {}),
  }));
  const planned = playerOf(player.id, timeLineOf(music, part, performance), bars);
  const hands = freeHands(document, setup, player.id);
  return { ...planned, free: planned.free.map((window) => ({ ...window, hands })) };
}
