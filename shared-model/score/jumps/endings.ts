/** First, second and further endings of repeats, as passages with the passes that take them. */

import type { Remark } from '../remark.ts';
import type { EndingMark, Score } from '../score.ts';

export interface Ending {
  readonly first: number;
  readonly last: number;
  /** Passes that take it, counted from 1. */
  readonly numbers: readonly number[];
  readonly group: EndingGroup;
}

/** The endings of one repeat. */
export interface EndingGroup {
  /** Bar behind all of them. */
  readonly after: number;
  /** How often the passage is played in all; the last pass takes the last ending. */
  readonly passes: number;
}

type Passage = Omit<Ending, 'group'>;

export interface Endings {
  readonly endings: readonly Ending[];
  readonly remarks: readonly Remark[];
}

export function endingsOf({ barlines, bars }: Score): Endings {
  const backward = new Set(barlines.backward.map(({ bar }) => bar));
  const { passages, remarks } = passagesOf(barlines.endings, bars.length, backward);
  const groups = grouped(
    passages.map((passage, index) => reachingRepeat(passage, passages[index + 1], backward)),
  );
  return {
    endings: groups.flatMap((group) => withGroup(group, backward)),
    remarks: [...remarks, ...groups.flatMap((group) => contradictions(group, backward))],
  };
}

/** All parts print the same brackets; what one of them adds counts as well. */
function passagesOf(marks: readonly EndingMark[], bars: number, backward: ReadonlySet<number>) {
  const starts = new Map<number, readonly number[]>();
  for (const { bar, type, numbers } of marks)
    if (type === 'start' && !starts.get(bar)?.length) starts.set(bar, numbers);
  const stops = new Set(marks.filter(({ type }) => type !== 'start').map(({ bar }) => bar));
  const inOrder = [...starts].toSorted(([a], [b]) => a - b);
  const remarks: Remark[] = [];
  const passages: Passage[] = [];
  inOrder.forEach(([first, given], index) => {
    const limit = (inOrder[index + 1]?.[0] ?? bars) - 1;
    const stop = firstIn(stops, first, limit);
    if (stop === null) remarks.push({ code: 'ending.open', bar: first });
    if (given.length === 0) remarks.push({ code: 'ending.noNumber', bar: first });
    // A bracket that never closes reaches to the repeat, or covers its first bar.
    const last = stop ?? firstIn(backward, first, limit) ?? first;
    passages.push({ first, last, numbers: given.length > 0 ? given : [nextNumber(passages.at(-1), first)] });
  });
  return { passages, remarks };
}

function firstIn(bars: ReadonlySet<number>, from: number, to: number): number | null {
  for (let bar = from; bar <= to; bar += 1) if (bars.has(bar)) return bar;
  return null;
}

function nextNumber(before: Passage | undefined, first: number): number {
  return before && before.last + 1 === first ? highest(before.numbers) + 1 : 1;
}

/** A bracket drawn too short: its repeat stands between it and the next ending. */
function reachingRepeat(passage: Passage, next: Passage | undefined, backward: ReadonlySet<number>): Passage {
  const last = next ? next.first - 1 : passage.last;
  const gap = last - passage.last;
  return gap > 0 && gap <= 8 && !backward.has(passage.last) && backward.has(last)
    ? { ...passage, last }
    : passage;
}

/** Endings that follow one another without a gap belong together, until a pass is named again. */
function grouped(passages: readonly Passage[]): Passage[][] {
  const groups: Passage[][] = [];
  for (const passage of passages) {
    const group = groups.at(-1);
    const before = group?.at(-1);
    const again = group?.some(({ numbers }) => numbers.some((number) => passage.numbers.includes(number)));
    if (group && before && before.last + 1 === passage.first && !again) group.push(passage);
    else groups.push([passage]);
  }
  return groups;
}

function withGroup(passages: readonly Passage[], backward: ReadonlySet<number>): Ending[] {
  const after = (passages.at(-1)?.last ?? 0) + 1;
  const last = highest(passages.flatMap(({ numbers }) => numbers));
  const [only] = passages;
  const goesOn = passages.length === 1 && only !== undefined && backward.has(only.last);
  const group = { after, passes: goesOn ? last + 1 : last };
  return passages.map((passage) => ({ ...passage, group }));
}

function highest(numbers: readonly number[]): number {
  return numbers.reduce((most, number) => Math.max(most, number), 1);
}

/** An ending before the last one that leads nowhere back. */
function contradictions(passages: readonly Passage[], backward: ReadonlySet<number>): Remark[] {
  const odd = passages.slice(0, -1).find(({ last }) => !backward.has(last));
  return odd ? [{ code: 'ending.contradictory', bar: odd.first }] : [];
}
