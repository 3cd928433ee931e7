/** A changeover as a whole in words: how long, whether that is enough, and what to mind. */

import { clock } from './step-words.ts';
import type { Changeover, Step } from './changeover.ts';
import { restsOn } from './hindrances.ts';

/** "9 steps, about 2:09 (1:19 to 5:15), 4 things stay". */
export function changeoverSummary({ steps, time, stays }: Changeover): string {
  if (steps.length === 0) return 'nothing to carry';
  const count = `${steps.length} ${steps.length === 1 ? 'step' : 'steps'}`;
  const kept =
    stays.length === 0 ? '' : `, ${stays.length} ${stays.length === 1 ? 'thing stays' : 'things stay'}`;
  return `${count}, about ${clock(time.usual)} (${clock(time.least)} to ${clock(time.most)})${kept}`;
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
  if (available === null) return 'The time there is for it has not been given.';
  const there = `There are ${clock(available)}`;
  switch (enoughTime(change)) {
    case 'unknown':
      return `${there}: whether that is enough cannot be told while ${things(withoutWay(steps))} ${withoutWay(steps) === 1 ? 'has' : 'have'} no way.`;
    case 'enough':
      return `${there}: enough, even at ${clock(time.most)}.`;
    case 'tight':
      return `${there}: usually enough, but it may take up to ${clock(time.most)}.`;
    default:
      return `${there}: ${clock(time.usual - available)} too little.`;
  }
}

/** What the list takes for granted, and what it could not find out. */
export function changeoverNotes({ steps }: Changeover): string[] {
  const isAway = steps.filter(({ from, to }) => !from || !to);
  const unsaid = isAway.filter(({ storage }) => !storage).length;
  const none = withoutWay(steps);
  const stepped = steps.filter(({ step }) => step > 0).length;
  const tight = steps.filter(({ way }) => way.ease === 'tight').length;
  return [
    ...(unsaid > 0
      ? [`For ${things(unsaid)} nobody said where it waits: the way is counted to the nearest opening.`]
      : []),
    ...asideNotes(steps),
    ...(tight > 0
      ? [`For ${things(tight)} the way is narrower than a route should be, or goes over the edge of a level.`]
      : []),
    ...(stepped > 0
      ? [
          `${things(stepped)} that two carry or roll ${stepped === 1 ? 'goes' : 'go'} over a step: see how that can be done, and who can do it.`,
        ]
      : []),
    ...(none > 0
      ? [
          `For ${things(none)} no way was found that it fits through as it stands: see how it can go, and who can take it.`,
        ]
      : []),
  ];
}

/** Why things are put aside: with what they stand on, or because there is no other beginning. */
function asideNotes(steps: readonly Step[]): string[] {
  const apart = steps.filter(({ work }) => work === 'aside');
  const lifted = apart.filter((step) => standsOnWhatMoves(step, steps)).length;
  const exchanged = apart.length - lifted;
  return [
    ...(lifted > 0
      ? [
          `${things(lifted)} put aside first, because what ${lifted === 1 ? 'it stands' : 'they stand'} on is moved.`,
        ]
      : []),
    ...(exchanged > 0
      ? [
          `${things(exchanged)} put aside first, because ${exchanged === 1 ? 'its place and another’s are' : 'their places and others’ are'} exchanged.`,
        ]
      : []),
  ];
}

function standsOnWhatMoves({ from }: Step, steps: readonly Step[]): boolean {
  return steps.some((lower) => from && lower.from && lower.from !== from && restsOn(from, lower.from));
}

/** So many have no way by which they fit through. */
function withoutWay(steps: readonly Step[]): number {
  return steps.filter(({ way }) => way.ease === 'none').length;
}

const things = (count: number): string => `${count} ${count === 1 ? 'thing' : 'things'}`;

export const CARRYING_CAUTION =
  'Carrying can hurt. What one person takes here may be too heavy or too awkward for whoever is there: let the venue and those who are trained for it decide who lifts what and how. ' +
  'Pianos, large instruments and risers are moved by people who know them. Keep ways and exits clear and lit, mind open edges and steps, and unplug before you carry. ' +
  'Local codes, the venue and licensed practice come before this list.';
