/** A tempo as it is typed: quarters a minute, and the bar from which on it holds. */

import type { Music } from '#model/document/music.ts';
import { barNamed } from '#model/score/music/bar-names.ts';
import { withTempos } from '#model/score/music/typed-over.ts';
import { outcomeOf, type Outcome } from '#model/score/problem.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { text } from '../text.ts';

/** It holds to the end; an empty `from` is the beginning. */
export function withTypedTempo(music: Music, tempo: string, from: string): Outcome<Music> {
  const bar = outcomeOf(() => (from.trim() === '' ? 0 : barNamed(music, from, 'bar')));
  if (!bar.ok) return bar;
  const quartersPerMinute = numberIn(tempo);
  if (quartersPerMinute === null) return refused(tempo, text.music.tempoWanted);
  const outcome = withTempos(music, [{ bar: bar.value, quartersPerMinute }]);
  if (outcome.ok || outcome.problem.code !== 'typed.bad') return outcome;
  // What was refused is called as it was typed, not by the bar's index.
  return refused(tempo, outcome.problem.advice);
}

/** What would be refused of it as it stands now, in words; null: nothing, or no tempo is typed. */
export function tempoComplaint(music: Music, tempo: string, from: string): string | null {
  if (tempo.trim() === '') return null;
  const outcome = withTypedTempo(music, tempo, from);
  return outcome.ok ? null : problemSentence(outcome.problem);
}

function refused(tempo: string, advice: string): Outcome<Music> {
  const given = tempo.trim().slice(0, 60);
  return { ok: false, problem: { code: 'typed.bad', what: 'tempo', given, advice } };
}

function numberIn(typed: string): number | null {
  const plain = typed.trim().replace(',', '.');
  return /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : null;
}
