/** How long a player has for a turn or for picking something up: from the rests of his part, else as typed. */

import { inSetup, find, type Document } from '../../document/document.ts';
import { asId, type Id } from '../../document/ids.ts';
import type { Music, Part } from '../../document/music.ts';
import { keptPlanOf, partPlayedBy, type PlayedPart } from '../../document/parts.ts';
import type { PagePlanRecord, Seconds } from '../../document/records.ts';
import { momentAt, performanceOf, type Performance } from '../../score/music/performance.ts';
import { timeAt } from '../../score/music/places.ts';
import { timeLineOf } from '../../score/music/readings.ts';
import type { Interval, TimeLine } from '../../score/time-line.ts';
import type { FreeTime, Grip } from '../report.ts';

/** Null when neither a part nor anybody says. */
export function freeTimeFor(document: Document, setup: Id<'setup'>, grip: Grip): FreeTime | null {
  const played = partPlayedBy(document, setup, grip.player);
  const fromPart = played && secondsInPart(document, setup, grip, played);
  if (played && fromPart !== null) {
    const { number: bar = '' } = momentAt(played.music, performanceFor(played.music), fromPart.at) ?? {};
    return { seconds: fromPart.seconds, source: 'part', at: { bar, seconds: fromPart.at } };
  }
  const typed = typedTime(document, grip);
  return typed === null ? null : { seconds: typed, source: 'typed', at: null };
}

/** A rest for something that has to be done at a moment of the performance. */
interface Chance {
  readonly at: Seconds;
  readonly seconds: Seconds;
}

function secondsInPart(
  document: Document,
  setup: Id<'setup'>,
  grip: Grip,
  played: PlayedPart,
): Chance | null {
  const { player, purpose } = grip;
  if (purpose === 'pickUp') return shortestChange(played);
  const plan = keptPlanOf(document, setup);
  if (plan) return shortestPlanned(plan, grip, played);
  return played.part.ownPages ? shortestTurn(played, pagesInView(document, setup, player)) : null;
}

/** The shortest rest in which the player gets from one view of so many pages to the next; null: he never has to. */
function shortestTurn(played: PlayedPart, inView: number): Chance | null {
  const { readings, silences } = timeLineFor(played);
  const viewOf = (page: number) => Math.ceil(page / inView);
  const turns = readings.flatMap(({ page, from }, index) => {
    const before = readings[index - 1];
    return before && viewOf(before.page) !== viewOf(page) ? [restAround(silences, from, from)] : [];
  });
  return shortest(turns);
}

/** The shortest rest in which the page plan lets the player turn at that stand. */
function shortestPlanned(
  { turns }: PagePlanRecord,
  { player, item }: Grip,
  played: PlayedPart,
): Chance | null {
  const { silences } = timeLineFor(played);
  const own = turns.filter((turn) => turn.player === player && turn.station === item);
  return shortest(
    own.map(({ place }) => {
      const time = timeAt(performanceFor(played.music), place);
      return restAround(silences, time, time);
    }),
  );
}

/** The shortest rest at a bar in which the part asks for another instrument; null: it never does. */
function shortestChange(played: PlayedPart): Chance | null {
  const { played: bars, begins } = performanceFor(played.music);
  const { silences } = timeLineFor(played);
  const changes = new Set(played.part.instruments.map(({ bar }) => bar));
  const rests: Chance[] = [];
  bars.forEach((bar, index) => {
    if (changes.has(bar)) rests.push(restAround(silences, begins[index] ?? 0, begins[index + 1] ?? 0));
  });
  return shortest(rests);
}

/** Two moments nearer than this are one: rounding adds up over a long piece. */
const MOMENT = 1e-6;

/** The longest of the rests that touch a stretch of time; 0 when there is none. */
function restAround(silences: readonly Interval[], from: Seconds, to: Seconds): Chance {
  const seconds = silences
    .filter((rest) => rest.from <= to + MOMENT && rest.to >= from - MOMENT)
    .reduce((longest, rest) => Math.max(longest, rest.to - rest.from), 0);
  return { at: from, seconds };
}

function shortest(rests: readonly Chance[]): Chance | null {
  return rests.length === 0
    ? null
    : rests.reduce((least, rest) => (rest.seconds < least.seconds ? rest : least));
}

/** All pages that lie side by side before a player. */
function pagesInView(document: Document, setup: Id<'setup'>, player: string): number {
  const sides = inSetup(document, setup, 'stand').flatMap((stand) => [...stand.sides]);
  return Math.max(
    1,
    sides.reduce((sum, side) => sum + (side.reader === player ? side.pagesAcross : 0), 0),
  );
}

/** Music never changes, and the checks ask for it at every step of a drag. */
const PERFORMANCES = new WeakMap<Music, Performance>();
/** By music too: with another tempo a part stays what it was, but not its times. */
const TIME_LINES = new WeakMap<Music, Map<Part, TimeLine>>();

function performanceFor(music: Music): Performance {
  const known = PERFORMANCES.get(music) ?? performanceOf(music);
  PERFORMANCES.set(music, known);
  return known;
}

function timeLineFor({ music, part }: PlayedPart): TimeLine {
  const lines = TIME_LINES.get(music) ?? new Map<Part, TimeLine>();
  TIME_LINES.set(music, lines);
  const known = lines.get(part) ?? timeLineOf(music, part, performanceFor(music));
  lines.set(part, known);
  return known;
}

/** Of the side of the stand, or of the instrument. */
function typedTime(document: Document, grip: Grip): Seconds | null {
  const item = find(document, asId(grip.item));
  if (item?.kind === 'instrument') return item.freeTime;
  if (item?.kind !== 'stand') return null;
  return item.sides.find((side) => side.turned && side.reader === grip.player)?.freeTime ?? null;
}
