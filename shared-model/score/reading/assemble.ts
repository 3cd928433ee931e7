/** From what the parts hold to the score: bars as long as their fullest part, names, and what there is to remark. */

import { compare, fraction, later, ZERO, type Fraction } from '../fraction.ts';
import { Refusal } from '../problem.ts';
import type { Remark } from '../remark.ts';
import type { Score, ScoreBar, ScorePart } from '../score.ts';
import type { Marks } from './marks.ts';
import type { ListedPart } from './part-list.ts';
import { within, type PartBar, type PartReader } from './part-reader.ts';
import { timeRemarks, withTempoFromWords } from './tempo-marks.ts';

export interface ReadParts {
  readonly title: string;
  readonly version: string | null;
  readonly listed: readonly ListedPart[];
  readonly parts: readonly PartReader[];
  readonly marks: Marks;
}

/** Throws `Refusal`. */
export function assembleScore({ title, version, listed, parts, marks }: ReadParts): Score {
  const names = parts.map((part) => nameOf(part, listed, parts));
  checkSizes(parts, names);
  const bars = barsOf(parts);
  const tempos = withTempoFromWords(marks);
  return {
    title,
    version,
    bars: bars.map(({ number, quarters }) => ({ number, quarters })),
    parts: parts.map((part, index) => scorePart(part, names[index] ?? '', bars)),
    tempos,
    barlines: {
      forward: marks.forward.filter(({ bar }) => bar < bars.length),
      backward: marks.backward,
      endings: marks.endings,
    },
    jumpMarks: marks.jumps.filter(({ bar }) => bar < bars.length),
    words: marks.words,
    remarks: [
      ...parts.flatMap((part, index) => partRemarks(part, listed, names[index] ?? '')),
      ...barRemarks(parts, names, bars),
      ...timeRemarks(marks, tempos, parts.length),
      ...insideRemarks(marks),
      ...pageRemarks(parts),
    ],
  };
}

/** A part that does not say which it is can only be the only one. */
function nameOf({ id }: PartReader, listed: readonly ListedPart[], parts: readonly PartReader[]): string {
  const [only] = listed;
  const entry = listed.find((listedPart) => listedPart.id === id);
  if (entry) return entry.name;
  return parts.length === 1 && listed.length === 1 ? (only?.name ?? '') : '';
}

function checkSizes(parts: readonly PartReader[], names: readonly string[]): void {
  const [first] = parts;
  if (!first) throw new Refusal({ code: 'score.noParts' });
  if (first.bars.length === 0) throw new Refusal({ code: 'score.noBars' });
  const size = (part: PartReader) => ({ name: names[part.index] || part.id, bars: part.bars.length });
  const other = parts.find((part) => part.bars.length !== first.bars.length);
  if (other) throw new Refusal({ code: 'parts.bars', first: size(first), other: size(other) });
}

interface Measured extends ScoreBar {
  /** Nothing says how long it is. */
  readonly unknown: boolean;
}

function barsOf(parts: readonly PartReader[]): Measured[] {
  const first = parts[0]?.bars ?? [];
  return first.map(({ number }, index) => {
    const all = parts.flatMap((part) => part.bars[index] ?? []);
    return { number, ...lengthOf(all) };
  });
}

/** The furthest cursor of all parts; a bar in which nothing stands is as long as its time signature says. */
function lengthOf(bars: readonly PartBar[]): { quarters: Fraction; unknown: boolean } {
  const reach = bars.reduce((furthest, bar) => later(furthest, bar.reach), ZERO);
  if (reach.n > 0) return { quarters: reach, unknown: false };
  const nominal = bars.find((bar) => bar.nominal !== null)?.nominal ?? null;
  return { quarters: nominal ?? fraction(4), unknown: nominal === null };
}

function scorePart(part: PartReader, name: string, bars: readonly ScoreBar[]): ScorePart {
  return {
    id: part.id,
    name,
    sounding: part.bars.map(({ sounding }, index) => within(sounding, bars[index]?.quarters ?? ZERO)),
    pageBreaks: part.pageBreaks,
    instruments: part.instruments,
    transpositions: part.transpositions,
    counts: { notes: part.notes, cueNotes: part.cueNotes },
  };
}

function partRemarks(part: PartReader, listed: readonly ListedPart[], name: string): Remark[] {
  const who = name || part.id;
  const about = (code: Remark['code'], bar: number | null = null): Remark => ({ code, bar, part: who });
  const isListed = listed.some(({ id }) => id === part.id);
  const [oddBar] = part.oddBars;
  return [
    ...(part.id === '' ? [about('part.noId')] : isListed ? [] : [about('part.unlisted')]),
    ...(part.countsWithoutDivisions ? [about('part.noDivisions')] : []),
    ...(oddBar === undefined ? [] : [about('bar.backup', oddBar)]),
  ];
}

function barRemarks(
  parts: readonly PartReader[],
  names: readonly string[],
  bars: readonly Measured[],
): Remark[] {
  const unknown = bars.findIndex((bar) => bar.unknown);
  return [
    ...parts.flatMap((part, index) => shortBars(part, names[index] || part.id, bars)),
    ...(unknown < 0 ? [] : [{ code: 'bar.lengthUnknown', bar: unknown } as const]),
  ];
}

/** A part may say nothing in a bar; one that says too little leaves the others to go on without it. */
function shortBars(part: PartReader, name: string, bars: readonly ScoreBar[]): Remark[] {
  const short = part.bars.flatMap(({ reach }, index) =>
    reach.n > 0 && compare(reach, bars[index]?.quarters ?? reach) < 0 ? [index] : [],
  );
  const [bar] = short;
  if (bar === undefined) return [];
  return [{ code: 'part.barShort', bar, part: name, count: short.length }];
}

function insideRemarks({ forward, backward }: Marks): Remark[] {
  const inside = [...forward, ...backward].find((mark) => mark.inside);
  return inside ? [{ code: 'repeat.inside', bar: inside.bar }] : [];
}

/** Where all parts turn together, it is the conductor who turns. */
function pageRemarks(parts: readonly PartReader[]): Remark[] {
  const [first, second] = parts.map(({ pageBreaks }) => pageBreaks.join());
  return parts.length > 1 && first !== '' && first === second ? [{ code: 'pages.ofScore', bar: null }] : [];
}
