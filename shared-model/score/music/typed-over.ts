/** What a user knows better than the file: tempo, order of the performance, pages of a part. Each gives new music. */

import { FASTEST_TEMPO, MOST_PLAYED_BARS, SLOWEST_TEMPO } from '../limits.ts';
import type { BarRange, Music, Part, Tempo } from '../music.ts';
import { outcomeOf, Refusal, type Outcome } from '../problem.ts';
import type { Remark } from '../remark.ts';
import { atMost } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import { barLabels } from '../words/bar-labels.ts';
import { OF_MOVEMENT } from '../words/movement-words.ts';
import { barNamed, pageBarsNamed } from './bar-names.ts';
import { pagesFrom } from './pages.ts';
import { barsIn } from './ranges.ts';

export interface TypedTempo {
  /** Index of the bar from which on it holds; 0: the whole piece. */
  readonly bar: number;
  readonly quartersPerMinute: number;
}

/** Each holds until the next one typed; marks in the score count only before the first. */
export function withTempos(music: Music, typed: readonly TypedTempo[]): Outcome<Music> {
  return outcomeOf(() => {
    const inOrder = typed.toSorted((a, b) => a.bar - b.bar);
    for (const tempo of inOrder) checkTempo(tempo, music);
    const first = inOrder[0]?.bar ?? Infinity;
    const tempos: Tempo[] = [
      ...music.tempos.filter(({ bar }) => bar < first),
      ...inOrder.map((tempo) => ({ ...tempo, at: 0, source: 'typed' as const })),
    ];
    const stays = ({ code, bar }: Remark) => !(isOfTempo(code) && (first === 0 || (bar ?? 0) >= first));
    return { ...music, tempos, remarks: music.remarks.filter(stays) };
  });
}

function checkTempo({ bar, quartersPerMinute }: TypedTempo, music: Music): void {
  const possible = quartersPerMinute >= SLOWEST_TEMPO && quartersPerMinute <= FASTEST_TEMPO;
  if (possible && Number.isInteger(bar) && bar >= 0 && bar < music.bars.length) return;
  const advice = possible
    ? t`bars are 0 to ${music.bars.length - 1}`
    : t`give ${SLOWEST_TEMPO} to ${FASTEST_TEMPO} quarters a minute`;
  const tempo = atMost(quartersPerMinute, 10);
  const given = bar === 0 ? tempo : t`${tempo} from bar ${barCalled(music, bar)}`;
  throw new Refusal({ code: 'typed.bad', what: 'tempo', given, advice });
}

/** A bar that is not there goes by the index that was given. */
function barCalled(music: Music, bar: number): string {
  return bar in music.bars ? barLabels(music)(bar) : String(bar);
}

function isOfTempo(code: Remark['code']): boolean {
  return (
    code === 'tempo.assumed' || code === 'tempo.words' || code === 'tempo.disagree' || code === 'part.alone'
  );
}

/**
 * "0-12, 4-20": ranges of printed bar numbers in the order in which they are played, both ends included; a bar is named
 * as `barNamed` says.
 */
export function withOrder(music: Music, text: string): Outcome<Music> {
  return outcomeOf(() => {
    const order = text
      .split(/[,;\n]/)
      .filter((piece) => piece.trim() !== '')
      .map((piece) => rangeIn(music, piece));
    if (order.length === 0)
      throw new Refusal({
        code: 'typed.bad',
        what: 'order',
        given: text.slice(0, 60),
        advice: t`write for instance 1-12, 5-20`,
      });
    if (barsIn(order) > MOST_PLAYED_BARS)
      throw new Refusal({ code: 'jumps.endless', most: MOST_PLAYED_BARS });
    const stays = ({ code }: Remark) => !/^(?:jump|repeat|ending)\./.test(code);
    return { ...music, order, afterJump: null, ambiguous: false, remarks: music.remarks.filter(stays) };
  });
}

/** Makes the repeats after D.C. and D.S., or leaves them out; the music as it is where nothing depends on it. */
export function withRepeatsAfterJump(music: Music, repeats: boolean): Music {
  const { afterJump, order } = music;
  if (!afterJump || afterJump.repeats === repeats) return music;
  return { ...music, order: afterJump.otherwise, afterJump: { repeats, otherwise: order } };
}

function rangeIn(music: Music, piece: string): BarRange {
  const [first = '', last = first, ...more] = piece.split(/[-\u2013]|\s+(?:to|bis)\s+/i);
  const range: BarRange = [barNamed(music, movedTo(first, last), 'bar'), barNamed(music, last, 'bar')];
  if (more.length === 0 && range[0] <= range[1]) return range;
  const advice = more.length > 0 ? t`write a range as 5-20` : t`the first bar stands behind the last one`;
  throw new Refusal({ code: 'typed.bad', what: 'range', given: piece.trim().slice(0, 60), advice });
}

/** Of "3 to 4 of movement 2" the first bar is of that movement, too. */
function movedTo(first: string, last: string): string {
  const isWhole = first.includes('#') || OF_MOVEMENT.test(first.trimEnd());
  return isWhole ? first : first.trimEnd() + (OF_MOVEMENT.exec(last.trimEnd())?.[0] ?? '');
}

/** "1, 38, 77": the first bar of each page of that part, as `pageBarsNamed` says. */
export function withPages(music: Music, partIndex: number, text: string): Outcome<Music> {
  return outcomeOf(() => {
    const bars = pageBarsNamed(
      music,
      text.split(/[,;\n]/).filter((piece) => piece.trim() !== ''),
    );
    return {
      ...music,
      parts: music.parts.map((part, index) => (index === partIndex ? paged(part, bars) : part)),
    };
  });
}

function paged(part: Part, bars: readonly number[]): Part {
  return { ...part, pages: pagesFrom(bars), ownPages: true };
}
