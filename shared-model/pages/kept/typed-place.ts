/** A place in the music as people type it: a time, or a bar. */

import type { Place } from '../../document/kept-plan.ts';
import type { Music } from '../../document/music.ts';
import type { Performance } from '../../score/music/performance.ts';
import { placeAt } from '../../score/music/places.ts';

/**
 * "2:17" or "2:17.5", minutes and seconds from the beginning; "48" or "bar 48", the bar as printed, and "48.25" a quarter through
 * it. Of a bar that is played more than once the time nearest to `near` is meant. Null: there is no such place.
 */
export function typedPlace(typed: string, music: Music, performance: Performance, near: Place): Place | null {
  const words = typed.trim();
  const clock = /^(\d{1,4}):(\d{1,2}(?:[.,]\d{1,6})?)$/.exec(words);
  if (clock) {
    const time = Number(clock[1]) * 60 + Number((clock[2] ?? '').replace(',', '.'));
    return time <= performance.seconds ? placeAt(performance, time) : null;
  }
  const bar = words.replace(/^bar\s+/i, '');
  return playedBar(bar, 0) ?? shareOfBar(bar);

  function shareOfBar(name: string): Place | null {
    const [, whole, digits] = /^(.+)[.,](\d{1,9})$/.exec(name) ?? [];
    return whole === undefined ? null : playedBar(whole, Number(`0.${digits}`));
  }

  function playedBar(name: string, share: number): Place | null {
    let nearest: Place | null = null;
    for (const [index, bar] of performance.played.entries()) {
      if (music.bars[bar]?.number !== name) continue;
      const place = index + share;
      if (nearest === null || Math.abs(place - near) < Math.abs(nearest - near)) nearest = place;
    }
    return nearest;
  }
}
