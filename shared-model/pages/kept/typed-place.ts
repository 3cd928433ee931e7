/** A place in the music as people type it: a time, or a bar. */

import type { Place } from '../../document/kept-plan.ts';
import type { Music } from '../../document/music.ts';
import { barsCalled } from '../../score/music/bar-names.ts';
import type { Performance } from '../../score/music/performance.ts';
import { placeAt } from '../../score/music/places.ts';
import { passesOf, withoutTime } from '../../score/words/bar-words.ts';
import { OF_MOVEMENT } from '../../score/words/movement-words.ts';

/**
 * "2:17" or "2:17.5", minutes and seconds from the beginning; or a bar in any words in which this program tells one:
 * "48", "bar 48, second time", "Takt 48, 2. Mal", "12 of movement 2", "#47"; "48.25" is a quarter through it. Of a bar that is played more than
 * once the time nearest to `near` is meant where none is said. Null: there is no such place.
 */
export function typedPlace(typed: string, music: Music, performance: Performance, near: Place): Place | null {
  const clock = /^(\d{1,4}):([0-5]?\d(?:[.,]\d{1,6})?)$/.exec(typed.trim());
  if (clock) {
    const time = Number(clock[1]) * 60 + Number((clock[2] ?? '').replace(',', '.'));
    return time <= performance.seconds ? placeAt(performance, time) : null;
  }
  const { bar, time } = withoutTime(typed);
  const movement = OF_MOVEMENT.exec(bar)?.[0] ?? '';
  const [, name, digits] = /^(.+)[.,](\d{1,9})$/.exec(bar.slice(0, bar.length - movement.length)) ?? [];
  const whole = playedBar(bar, 0);
  if (whole !== null || name === undefined) return whole;
  return playedBar(name + movement, Number(`0.${digits}`));

  function playedBar(called: string, share: number): Place | null {
    const bars = new Set(barsCalled(music, called));
    const passes = passesOf(performance.played);
    const places = Array.from(performance.played, (_, index) => index)
      .filter((index) => bars.has(performance.played[index] ?? -1))
      .filter((index) => time === null || passes[index]?.time === time)
      .map((index) => index + share);
    const away = (place: Place): number => Math.abs(place - near);
    return places.toSorted((a, b) => away(a) - away(b))[0] ?? null;
  }
}
