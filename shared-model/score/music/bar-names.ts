/**
 * Bars as people name them, which is also how `words/bar-labels.ts` writes them: by the printed number, as "12 of movement 2",
 * or as "#14", the fourteenth bar of the file, counted from 1; with or without "bar" before it; and the same in German.
 */

import type { Music } from '../music.ts';
import { Refusal, type TypedThing } from '../problem.ts';
import { withoutMovement } from '../words/movement-words.ts';
import { t } from '../../words/say.ts';

/** Index of the bar. Throws `Refusal` for a number that no bar, or more than one, prints. */
export function barNamed(music: Music, name: string, what: TypedThing): number {
  const found = barsNamed(music, name, what);
  const [only, another] = found;
  if (only !== undefined && another === undefined) return only;
  throw refusalOf(what, name, whichOf(found));
}

/**
 * The first bars of pages, which go on from bar to bar: a number that several bars print is the next of them after the
 * page before. Throws `Refusal` when there is none, and when two of one movement are possible.
 */
export function pageBarsNamed(music: Music, names: readonly string[]): number[] {
  const possible = names.map((name) => barsNamed(music, name, PAGE));
  const latest = latestOf(possible);
  const taken: number[] = [];
  possible.forEach((bars, index) => {
    const name = names[index] ?? '';
    const before = taken.at(-1) ?? -1;
    const after = bars.filter((bar) => bar > before);
    const [next] = after;
    if (next === undefined) throw refusalOf(PAGE, name, noneAfter(music, before, bars));
    const open = after.filter((bar) => bar <= (latest[index] ?? Infinity));
    const isFirstOfAll = next === 0;
    const alike = open.filter((bar) => movementOf(music, bar) === movementOf(music, next));
    if (alike.length > 1 && !isFirstOfAll) throw refusalOf(PAGE, name, whichOf(alike));
    taken.push(next);
  });
  return taken;
}

const PAGE = 'first bar of a page' satisfies TypedThing;

/** The last bar that each page can begin with, so that those after it still find theirs; undefined: none. */
function latestOf(possible: readonly (readonly number[])[]): (number | undefined)[] {
  let end: number | undefined = Infinity;
  return possible
    .toReversed()
    .map((bars) => (end = bars.findLast((bar) => bar < (end ?? Infinity))))
    .toReversed();
}

/** From 0. */
export function movementOf({ movements }: Pick<Music, 'movements'>, bar: number): number {
  return Math.max(
    0,
    movements.findLastIndex((first) => first <= bar),
  );
}

/** Indices of the bars that can be meant, rising; empty: there is none. */
export function barsCalled(music: Pick<Music, 'bars' | 'movements'>, name: string): readonly number[] {
  const { bar: called, movement } = withoutMovement(name.trim().replace(BAR, ''));
  const ordinal = movement === null ? ORDINAL.exec(called)?.[1] : undefined;
  const indices = music.bars.map((_, bar) => bar);
  if (ordinal !== undefined) return indices.filter((bar) => bar === Number(ordinal) - 1);
  const found = indices.filter((bar) => called !== '' && music.bars[bar]?.number === called);
  if (movement === null) return found;
  return found.filter((bar) => movementOf(music, bar) === movement - 1);
}

/** "bar 12", and in German "Takt 12", "T. 12". */
const BAR = /^(?:(?:bars?|takte?)\s+|t\.\s*)/i;
const ORDINAL = /^#(\d{1,6})$/;

/** Rising. Throws `Refusal` when there is none. */
function barsNamed(music: Music, name: string, what: TypedThing): readonly number[] {
  const found = barsCalled(music, name);
  if (found.length > 0) return found;
  if (/^#\d+$/.test(name.trim().replace(BAR, '')))
    throw refusalOf(what, name, t`the score has bars #1 to #${music.bars.length}`);
  throw refusalOf(what, name, t`no bar has that number; #1 is the first bar of the file`);
}

function whichOf(found: readonly number[]): string {
  const ordinals = found.slice(0, 6).map((index) => `#${index + 1}`);
  return t`${found.length} bars have that number; write which: ${ordinals.join(', ')}`;
}

function noneAfter({ bars }: Music, before: number, found: readonly number[]): string {
  const number = bars[before]?.number ?? '';
  return found.length === 1
    ? t`pages go on from bar to bar, and that bar comes no later than the page before it, with bar ${number}`
    : t`pages go on from bar to bar, and all bars of that number come no later than the page before it, with bar ${number}`;
}

function refusalOf(what: TypedThing, name: string, advice: string): Refusal {
  return new Refusal({ code: 'typed.bad', what, given: name.trim().slice(0, 60), advice });
}
