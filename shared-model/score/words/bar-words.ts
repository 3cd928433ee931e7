/** Bars as people call them when they are played more than once. */

import { labelsWords } from './bar-labels.ts';
import { t } from '../../words/say.ts';

/** Which of the times that the same bar is played. */
export interface Pass {
  /** 1: the first. */
  readonly time: number;
  /** How often it is played in all. */
  readonly of: number;
}

const TIMES = [
  () => t`first time`,
  () => t`second time`,
  () => t`third time`,
  () => t`fourth time`,
  () => t`fifth time`,
  () => t`sixth time`,
] as const;

/** "bar 48"; "bar 48, second time" of one that is played more than once. */
export function barWords(label: string, pass: Pass | null): string {
  return pass === null || pass.of === 1 ? t`bar ${label}` : t`bar ${label}, ${timeWords(pass.time)}`;
}

/** As `barWords`; of two it is "bars 3 to 4, second time", or "bar 3, first time, to bar 4", or "bar 2 to bar 3, first time". */
export function stretchOfBars(first: PassedBar, last: PassedBar): string {
  const [time, other] = [timeOf(first), timeOf(last)];
  if (time !== other) return betweenBars(first, last, time !== null);
  const bars = labelsWords(first.label, last.label);
  return time === null ? bars : `${bars}, ${timeWords(time)}`;
}

function betweenBars(first: PassedBar, last: PassedBar, isFirstTimed: boolean): string {
  const [from, to] = [barWords(first.label, first.pass), barWords(last.label, last.pass)];
  return isFirstTimed ? t`${from}, to ${to}` : t`${from} to ${to}`;
}

/** Null: it is played once, or not known. */
function timeOf({ pass }: PassedBar): number | null {
  return pass === null || pass.of === 1 ? null : pass.time;
}

export interface PassedBar {
  /** As of `barLabels`. */
  readonly label: string;
  /** Null: played once, or not known. */
  readonly pass: Pass | null;
}

function timeWords(time: number): string {
  return TIMES[time - 1]?.() ?? t`${time}th time`;
}

/**
 * What is typed of a bar as `barWords` writes it, in whichever language, taken apart: the bar, and which time through it;
 * null: that is not said.
 */
export function withoutTime(typed: string): { readonly bar: string; readonly time: number | null } {
  const [, bar, word = ''] =
    /^(.*?)[,\s]+(?:(?:zum|beim)\s+)?(\S+)\s+(?:time|mal)$/i.exec(typed.trim()) ?? [];
  const figure = /^(\d{1,4})(?:st|nd|rd|th|\.)$/i.exec(word)?.[1];
  const time = figure === undefined ? ORDINALS.findIndex((one) => one.test(word)) + 1 : Number(figure);
  return bar === undefined || time === 0 ? { bar: typed.trim(), time: null } : { bar, time };
}

/** What people type for the first, the second and so on, in English and German. */
const ORDINALS = [
  /^(?:first|erste[snm]?)$/i,
  /^(?:second|zweite[snm]?)$/i,
  /^(?:third|dritte[snm]?)$/i,
  /^(?:fourth|vierte[snm]?)$/i,
  /^(?:fifth|fünfte[snm]?)$/i,
  /^(?:sixth|sechste[snm]?)$/i,
];

/**
 * For every bar of a performance, given by its index in the score: which time it is. Two bars of the same number, as in two
 * movements, are two bars.
 */
export function passesOf(played: ArrayLike<number>): Pass[] {
  const counts = new Map<number, number>();
  const times = Array.from(played, (bar) => {
    const time = (counts.get(bar) ?? 0) + 1;
    counts.set(bar, time);
    return { bar, time };
  });
  return times.map(({ bar, time }) => ({ time, of: counts.get(bar) ?? time }));
}
