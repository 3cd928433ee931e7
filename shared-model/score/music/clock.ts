/** Seconds within bars. Tempo belongs to a place in the score, so that a jump back brings its target's tempo back. */

import { ASSUMED_TEMPO, type Music, type Tempo } from '../music.ts';
import type { Seconds } from '../time-line.ts';

export interface Clock {
  /** From the beginning of the bar to `at` ticks in it. */
  readonly into: (bar: number, at: number) => Seconds;
  /** Length of each bar. */
  readonly lengths: Float64Array;
}

/** From `from` ticks on, one tick takes `perTick` seconds; `before` seconds of the bar have gone by then. */
interface Stretch {
  readonly from: number;
  readonly perTick: number;
  readonly before: Seconds;
}

export function clockOf({ bars, tempos, ticksPerQuarter }: Music): Clock {
  const perTick = ({ quartersPerMinute }: Pick<Tempo, 'quartersPerMinute'>) =>
    60 / quartersPerMinute / ticksPerQuarter;
  const stretches: Stretch[][] = [];
  let current = perTick({ quartersPerMinute: ASSUMED_TEMPO });
  let next = 0;
  bars.forEach((_, bar) => {
    const inBar: Stretch[] = [{ from: 0, perTick: current, before: 0 }];
    for (let tempo = tempos[next]; tempo && tempo.bar === bar; tempo = tempos[next]) {
      current = perTick(tempo);
      inBar.push({ from: tempo.at, perTick: current, before: secondsAt(inBar, tempo.at) });
      next += 1;
    }
    stretches.push(inBar);
  });
  const into = (bar: number, at: number) => secondsAt(stretches[bar] ?? [], at);
  return { into, lengths: Float64Array.from(bars, ({ ticks }, bar) => into(bar, ticks)) };
}

function secondsAt(stretches: readonly Stretch[], at: number): Seconds {
  const last = stretches.findLast(({ from }) => from <= at);
  return last ? last.before + (at - last.from) * last.perTick : 0;
}
