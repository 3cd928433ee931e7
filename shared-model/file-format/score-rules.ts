/** What has to hold within the music of a setup beyond the type and range of its fields. */

import type { BarRange, Music, Part } from '../document/music.ts';
import type { ScoreRecord } from '../document/records.ts';
import { MOST_PLAYED_BARS } from '../score/limits.ts';
import { notAllowed, type Complaint } from './complaint.ts';
import { t } from '../words/say.ts';

/** The first rule that is broken, or null. */
export function scoreBroken({ music, players, pdfs }: ScoreRecord): Complaint | null {
  return (
    playersBroken(music, players) ??
    pdfsBroken(music, pdfs) ??
    orderBroken(music.order, 'music.order', music) ??
    orderBroken(music.afterJump?.otherwise ?? [], 'music.afterJump.otherwise', music) ??
    marksBroken(music) ??
    partsBroken(music)
  );
}

function playersBroken({ parts }: Music, players: ScoreRecord['players']): Complaint | null {
  if (players.length !== parts.length) return oneForEach('players', players.length, parts.length);
  const twice = players.findIndex((player, index) => player !== null && players.indexOf(player) < index);
  return twice < 0 ? null : notAllowed(`players[${twice}]`, players[twice], t`a player plays one part`);
}

function oneForEach(field: string, given: number, parts: number): Complaint {
  const text = t` has ${given} entries but there are ${parts} parts; give one for each, or null`;
  return { field, text };
}

function pdfsBroken({ parts }: Music, pdfs: ScoreRecord['pdfs']): Complaint | null {
  if (pdfs.length !== parts.length) return oneForEach('pdfs', pdfs.length, parts.length);
  for (const [index, pdf] of pdfs.entries()) {
    const count = pdf?.sizes.length ?? 0;
    const wrong = pdf?.pages.findIndex((page) => page !== null && page > count) ?? -1;
    if (wrong >= 0)
      return notAllowed(
        `pdfs[${index}].pages[${wrong}]`,
        pdf?.pages[wrong],
        t`the PDF has pages 1 to ${count}; give one of them, or null`,
      );
  }
  return null;
}

function orderBroken(
  order: readonly BarRange[],
  path: string,
  { bars }: Pick<Music, 'bars'>,
): Complaint | null {
  let played = 0;
  for (const [index, [first, last]] of order.entries()) {
    const field = `${path}[${index}]`;
    if (first > last || last >= bars.length) {
      const range: BarRange = [first, last];
      return notAllowed(field, range, t`give two of the bars 0 to ${bars.length - 1}, the earlier one first`);
    }
    played += last - first + 1;
    if (played > MOST_PLAYED_BARS) {
      return { field, text: t`: more than ${MOST_PLAYED_BARS} bars are played; leave out repeats` };
    }
  }
  return null;
}

function marksBroken({ bars, tempos, movements }: Music): Complaint | null {
  let [bar, at] = [-1, 0];
  for (const [index, tempo] of tempos.entries()) {
    const isLater = tempo.bar > bar || (tempo.bar === bar && tempo.at > at);
    if (!isLater || !isWithin(bars, tempo.bar, tempo.at)) {
      return notAllowed(`music.tempos[${index}]`, tempo, t`give tempos in order, each within its bar`);
    }
    [bar, at] = [tempo.bar, tempo.at];
  }
  const wrong = movements.findIndex((first, index) =>
    index === 0 ? first !== 0 : first <= (movements[index - 1] ?? 0) || first >= bars.length,
  );
  return wrong < 0
    ? null
    : notAllowed(`music.movements[${wrong}]`, movements[wrong], t`give first bars in order; the first is 0`);
}

function isWithin(bars: Music['bars'], bar: number, at: number): boolean {
  const found = bars[bar];
  return found !== undefined && at <= found.ticks;
}

function partsBroken({ bars, parts }: Music): Complaint | null {
  for (const [index, part] of parts.entries()) {
    const broken = silencesBroken(bars, part) ?? pagesBroken(bars, part);
    if (broken) return { ...broken, field: `music.parts[${index}].${broken.field}` };
  }
  return null;
}

function silencesBroken(bars: Music['bars'], { silences }: Part): Complaint | null {
  let [before, end] = [-1, 0];
  for (const [index, [bar, from, to]] of silences.entries()) {
    const isLater = bar > before || (bar === before && from >= end);
    if (!isLater || from > to || !isWithin(bars, bar, to)) {
      return notAllowed(
        `silences[${index}]`,
        [bar, from, to],
        t`give the bar, and from and to within it, in the order of the music`,
      );
    }
    [before, end] = [bar, to];
  }
  return null;
}

function pagesBroken(bars: Music['bars'], { pages, instruments }: Part): Complaint | null {
  const wrong = pages.findIndex(({ bar }, index) =>
    index === 0 ? bar !== 0 : bar <= (pages[index - 1]?.bar ?? 0) || bar >= bars.length,
  );
  if (wrong >= 0) {
    return notAllowed(
      `pages[${wrong}]`,
      pages[wrong],
      t`give pages in the order of their first bars; the first begins with bar 0`,
    );
  }
  const late = instruments.findIndex(({ bar }) => bar >= bars.length);
  return late < 0
    ? null
    : notAllowed(`instruments[${late}].bar`, instruments[late]?.bar, t`there are ${bars.length} bars`);
}
