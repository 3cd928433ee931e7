/** A changeover as a whole in words: how long, whether that is enough, and what to mind. */

import { msgid, ngettext, t } from '../words/say.ts';
import { clock } from './step-words.ts';
import type { Changeover, Step } from './changeover.ts';
import { restsOn } from './hindrances.ts';

/** "9 steps, about 2:09 (1:19 to 5:15), 4 things stay". */
export function changeoverSummary({ steps, time, stays }: Changeover): string {
  if (steps.length === 0) return t`nothing to carry`;
  return [
    stepCount(steps.length),
    t`about ${clock(time.usual)} (${clock(time.least)} to ${clock(time.most)})`,
    ...(stays.length === 0 ? [] : [stayCount(stays.length)]),
  ].join(', ');
}

function stepCount(count: number): string {
  return ngettext(msgid`${count} step`, `${count} steps`, count);
}

function stayCount(count: number): string {
  return ngettext(msgid`${count} thing stays`, `${count} things stay`, count);
}

export type Enough = 'unknown' | 'enough' | 'tight' | 'short';

/**
 * Enough: even at its longest. Tight: usually. Short: it usually takes longer than there is. Unknown: nobody said how long
 * there is, or something cannot get where it goes, so that how long it takes says nothing.
 */
export function enoughTime({ available, time, steps }: Changeover): Enough {
  if (available === null || withoutWay(steps) > 0) return 'unknown';
  if (time.most <= available) return 'enough';
  return time.usual <= available ? 'tight' : 'short';
}

export function timeVerdict(change: Changeover): string {
  const { available, time, steps } = change;
  if (available === null) return t`The time there is for it has not been given.`;
  const there = clock(available);
  switch (enoughTime(change)) {
    case 'unknown':
      return unknownWords(there, withoutWay(steps));
    case 'enough':
      return t`There are ${there}: enough, even at ${clock(time.most)}.`;
    case 'tight':
      return t`There are ${there}: usually enough, but it may take up to ${clock(time.most)}.`;
    default:
      return t`There are ${there}: ${clock(time.usual - available)} too little.`;
  }
}

function unknownWords(there: string, count: number): string {
  return ngettext(
    msgid`There are ${there}: whether that is enough cannot be told while ${count} thing has no way.`,
    `There are ${there}: whether that is enough cannot be told while ${count} things have no way.`,
    count,
  );
}

/** What the list takes for granted, and what it could not find out. */
export function changeoverNotes({ steps }: Changeover): string[] {
  const isAway = steps.filter(({ from, to }) => !from || !to);
  const unsaid = isAway.filter(({ storage }) => !storage).length;
  const none = withoutWay(steps);
  const stepped = steps.filter(({ step }) => step > 0).length;
  const tight = steps.filter(({ way }) => way.ease === 'tight').length;
  return [
    ...(unsaid > 0 ? [unsaidNote(unsaid)] : []),
    ...asideNotes(steps),
    ...(tight > 0 ? [tightNote(tight)] : []),
    ...(stepped > 0 ? [steppedNote(stepped)] : []),
    ...(none > 0 ? [noWayNote(none)] : []),
  ];
}

function unsaidNote(count: number): string {
  return ngettext(
    msgid`For ${count} thing nobody said where it waits: the way is counted to the nearest opening.`,
    `For ${count} things nobody said where it waits: the way is counted to the nearest opening.`,
    count,
  );
}

function tightNote(count: number): string {
  return ngettext(
    msgid`For ${count} thing the way is narrower than a route should be, or goes over the edge of a level.`,
    `For ${count} things the way is narrower than a route should be, or goes over the edge of a level.`,
    count,
  );
}

function steppedNote(count: number): string {
  return ngettext(
    msgid`${count} thing that two carry or roll goes over a step: see how that can be done, and who can do it.`,
    `${count} things that two carry or roll go over a step: see how that can be done, and who can do it.`,
    count,
  );
}

function noWayNote(count: number): string {
  return ngettext(
    msgid`For ${count} thing no way was found that it fits through as it stands: see how it can go, and who can take it.`,
    `For ${count} things no way was found that it fits through as it stands: see how it can go, and who can take it.`,
    count,
  );
}

/** Why things are put aside: with what they stand on, or because there is no other beginning. */
function asideNotes(steps: readonly Step[]): string[] {
  const apart = steps.filter(({ work }) => work === 'aside');
  const lifted = apart.filter((step) => standsOnWhatMoves(step, steps)).length;
  const exchanged = apart.length - lifted;
  return [...(lifted > 0 ? [liftedNote(lifted)] : []), ...(exchanged > 0 ? [exchangedNote(exchanged)] : [])];
}

function liftedNote(count: number): string {
  return ngettext(
    msgid`${count} thing put aside first, because what it stands on is moved.`,
    `${count} things put aside first, because what they stand on is moved.`,
    count,
  );
}

function exchangedNote(count: number): string {
  return ngettext(
    msgid`${count} thing put aside first, because its place and another’s are exchanged.`,
    `${count} things put aside first, because their places and others’ are exchanged.`,
    count,
  );
}

function standsOnWhatMoves({ from }: Step, steps: readonly Step[]): boolean {
  return steps.some((lower) => from && lower.from && lower.from !== from && restsOn(from, lower.from));
}

/** So many have no way by which they fit through. */
function withoutWay(steps: readonly Step[]): number {
  return steps.filter(({ way }) => way.ease === 'none').length;
}

export function carryingCaution(): string {
  return [
    t`Carrying can hurt. What one person takes here may be too heavy or too awkward for whoever is there: let the venue and those who are trained for it decide who lifts what and how.`,
    t`Pianos, large instruments and risers are moved by people who know them. Keep ways and exits clear and lit, mind open edges and steps, and unplug before you carry.`,
    t`Local codes, the venue and licensed practice come before this list.`,
  ].join(' ');
}
