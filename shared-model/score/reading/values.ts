/** Values in a score, each checked where it is read, so that a refusal can say where it stands. */

import { decimal, type Fraction } from '../fraction.ts';
import { FASTEST_TEMPO, MOST_DIVISIONS, MOST_REPEATS, SLOWEST_TEMPO } from '../limits.ts';
import { Refusal, type InBar, type ScoreValue } from '../problem.ts';
import { t } from '../../words/say.ts';

type Where = () => InBar;

export function divisionsOf(text: string, where: Where): Fraction {
  const divisions = decimal(text);
  if (!divisions || divisions.n <= 0 || divisions.n > MOST_DIVISIONS * divisions.d)
    throw badValue('divisions', text, t`a number above 0`, where);
  return divisions;
}

/** In divisions. MusicXML asks for more than 0; 0 is met in real files and harms nobody. */
export function durationOf(text: string, where: Where): Fraction {
  const duration = decimal(text);
  if (!duration || duration.n < 0) throw badValue('duration', text, t`a number, not below 0`, where);
  return duration;
}

export function offsetOf(text: string, where: Where): Fraction {
  const offset = decimal(text);
  if (!offset) throw badValue('offset', text, t`a number`, where);
  return offset;
}

export function tempoOf(given: string | number, where: Where): number {
  const tempo = typeof given === 'number' ? given : given.trim() === '' ? NaN : Number(given);
  if (!(tempo >= SLOWEST_TEMPO && tempo <= FASTEST_TEMPO))
    throw badValue('tempo', String(given), t`${SLOWEST_TEMPO} to ${FASTEST_TEMPO} quarters a minute`, where);
  return tempo;
}

export function repeatTimesOf(text: string | undefined, where: Where): number | null {
  if (text === undefined) return null;
  const times = Number(text);
  if (!Number.isInteger(times) || times < 1 || times > MOST_REPEATS)
    throw badValue('times of a repeat', text, t`1 to ${MOST_REPEATS}`, where);
  return times;
}

/** Passes in the number of an ending: "1", "1, 2", "1-3" as well. What is no number is left out. */
export function endingNumbers(text: string | undefined, where: Where): number[] {
  const numbers = (text ?? '')
    .slice(0, 200)
    .split(/[,;\s]+/)
    .flatMap((piece) => passesIn(piece.replace(/\.$/, '')));
  if (numbers.some((number) => number > MOST_REPEATS))
    throw badValue('number of an ending', text ?? '', t`1 to ${MOST_REPEATS}`, where);
  return numbers;
}

function passesIn(piece: string): number[] {
  const [, first, last = first] = /^(\d{1,6})\.?(?:[-\u2013](\d{1,6}))?$/.exec(piece) ?? [];
  if (first === undefined) return [];
  const [from, to] = [Number(first), Number(last)];
  return to - from > MOST_REPEATS ? [to] : Array.from({ length: to - from + 1 }, (_, index) => from + index);
}

function badValue(what: ScoreValue, given: string, allowed: string, where: Where): Refusal {
  return new Refusal({ code: 'value.bad', what, given: given.slice(0, 60), allowed, ...where() });
}
