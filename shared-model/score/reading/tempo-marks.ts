/** Tempo marks of all parts together, and what there is to say about them. */

import { compare } from '../fraction.ts';
import { FASTEST_TEMPO, SLOWEST_TEMPO } from '../limits.ts';
import type { Remark } from '../remark.ts';
import type { TempoMark } from '../score.ts';
import type { Marks } from './marks.ts';
import { tempoInWords } from './tempo-words.ts';

const FREE = /\b(?:rit|ritard|riten|rall|accel|string|allarg|rubato)/i;

/** Words are the last resort: they count only where nothing else in the score gives a tempo. */
export function withTempoFromWords({ tempos, words }: Marks): readonly TempoMark[] {
  if (tempos.length > 0) return tempos;
  return words.flatMap(({ text, ...spot }) => {
    const quartersPerMinute = tempoInWords(text);
    const possible =
      quartersPerMinute !== null && quartersPerMinute >= SLOWEST_TEMPO && quartersPerMinute <= FASTEST_TEMPO;
    return possible ? [{ ...spot, quartersPerMinute, source: 'words' as const }] : [];
  });
}

export function timeRemarks(marks: Marks, tempos: readonly TempoMark[], parts: number): Remark[] {
  const free = new Set(marks.freeBars);
  for (const { bar, text } of marks.words) if (FREE.test(text)) free.add(bar);
  const [modulation] = marks.modulations;
  return [
    ...assumed(tempos),
    ...(parts === 1 && tempos.length === 0 ? [{ code: 'part.alone', bar: null } as const] : []),
    ...fromWords(marks, tempos),
    ...disagreement(tempos),
    ...(modulation === undefined ? [] : [{ code: 'tempo.modulation', bar: modulation } as const]),
    ...(free.size > 0 ? [{ code: 'tempo.free', bar: null, count: free.size } as const] : []),
  ];
}

function assumed(tempos: readonly TempoMark[]): Remark[] {
  if (tempos.length === 0) return [{ code: 'tempo.assumed', bar: null }];
  const first = tempos.reduce((early, mark) => (place(mark, early) < 0 ? mark : early));
  return first.bar === 0 && first.at.n === 0 ? [] : [{ code: 'tempo.assumed', bar: first.bar }];
}

function fromWords({ words }: Marks, tempos: readonly TempoMark[]): Remark[] {
  const mark = tempos.find(({ source }) => source === 'words');
  if (!mark) return [];
  const said = words.find(({ bar, text }) => bar === mark.bar && tempoInWords(text) !== null);
  return [{ code: 'tempo.words', bar: mark.bar, text: said?.text ?? '' }];
}

/** The first place where the last mark of one part is not that of another. */
function disagreement(tempos: readonly TempoMark[]): Remark[] {
  const last = new Map<string, TempoMark>();
  for (const mark of tempos) last.set(`${mark.bar} ${mark.at.n}/${mark.at.d} ${mark.part}`, mark);
  const inOrder = [...last.values()].toSorted(place);
  const other = inOrder.find((mark, index) => {
    const before = inOrder[index - 1];
    return before && place(before, mark) === 0 && before.quartersPerMinute !== mark.quartersPerMinute;
  });
  return other ? [{ code: 'tempo.disagree', bar: other.bar }] : [];
}

/** By place in the score; those of one place are equal. */
export function place(a: TempoMark, b: TempoMark): number {
  return a.bar - b.bar || compare(a.at, b.at);
}
