/** Small scores for tests: bars as they would be typed, each element spelled out once. */

import { musicFromScore } from '#model/score/music/from-score.ts';
import type { Music } from '#model/score/music.ts';
import { readScore } from '#model/score/reading/score-reader.ts';
import type { Score } from '#model/score/score.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';

/** Four divisions a quarter, unless a bar says otherwise. */
export const DIVISIONS = '<attributes><divisions>4</divisions></attributes>';

export const note = (quarters: number, more = '') =>
  `<note>${more}<pitch><step>C</step><octave>4</octave></pitch><duration>${quarters * 4}</duration></note>`;
export const rest = (quarters: number) => `<note><rest/><duration>${quarters * 4}</duration></note>`;
export const grace = '<note><grace/><pitch><step>D</step><octave>4</octave></pitch></note>';
export const cue = (quarters: number) => note(quarters, '<cue/>');
export const backup = (quarters: number) => `<backup><duration>${quarters * 4}</duration></backup>`;
export const forward = (quarters: number) => `<forward><duration>${quarters * 4}</duration></forward>`;
export const time = (beats: string, type: number) =>
  `<attributes><time><beats>${beats}</beats><beat-type>${type}</beat-type></time></attributes>`;
export const sound = (attributes: string) => `<direction><direction-type/><sound ${attributes}/></direction>`;
export const words = (text: string) =>
  `<direction><direction-type><words>${text}</words></direction-type></direction>`;
export const newPage = '<print new-page="yes"/>';

export const BEGIN = '<barline location="left"><repeat direction="forward"/></barline>';
export const END = '<barline location="right"><repeat direction="backward"/></barline>';
export const endTimes = (times: number) =>
  `<barline location="right"><repeat direction="backward" times="${times}"/></barline>`;
export const ending = (number: string) =>
  `<barline location="left"><ending number="${number}" type="start"/></barline>`;
export const endingStops = (number: string, repeat: 'repeat' | 'goes on') =>
  `<barline location="right"><ending number="${number}" type="${repeat === 'repeat' ? 'stop' : 'discontinue'}"/>${
    repeat === 'repeat' ? '<repeat direction="backward"/>' : ''
  }</barline>`;

/** One part of bars; each string is what stands in a bar. Numbers count from 1 unless given. */
export function part(bars: readonly string[], numbers?: readonly string[], id = 'P1'): string {
  const measures = bars.map(
    (bar, index) => `<measure number="${numbers?.[index] ?? index + 1}">${bar}</measure>`,
  );
  return `<part id="${id}">${measures.join('')}</part>`;
}

export function scoreXml(
  parts: string,
  list = '<score-part id="P1"><part-name>Viola</part-name></score-part>',
): string {
  return `<?xml version="1.0"?><score-partwise version="4.0"><part-list>${list}</part-list>${parts}</score-partwise>`;
}

/** Bars of one part in which nothing but `bars` matters: each is filled with a whole note. */
export function filled(bars: readonly string[], numbers?: readonly string[]): string {
  return scoreXml(
    part(
      bars.map((bar, index) => `${index === 0 ? DIVISIONS : ''}${noteBetween(bar)}`),
      numbers,
    ),
  );
}

/** The note goes before the marks of the bar's end. */
function noteBetween(bar: string): string {
  const right = bar.indexOf('<barline location="right"');
  return right < 0 ? `${bar}${note(4)}` : `${bar.slice(0, right)}${note(4)}${bar.slice(right)}`;
}

export function scoreOf(xml: string): Score {
  const outcome = readScore(xml);
  if (!outcome.ok) throw new Error(problemSentence(outcome.problem));
  return outcome.value;
}

export function musicOf(xml: string, repeatsAfterJump = false): Music {
  const outcome = musicFromScore(scoreOf(xml), { repeatsAfterJump });
  if (!outcome.ok) throw new Error(problemSentence(outcome.problem));
  return outcome.value;
}

/** Why it is refused; null: it is not. */
export function refusal(xml: string): string | null {
  const outcome = readScore(xml);
  const made = outcome.ok ? musicFromScore(outcome.value) : outcome;
  return made.ok ? null : problemSentence(made.problem);
}

export function codesOf({ remarks }: { readonly remarks: readonly { readonly code: string }[] }): string[] {
  return remarks.map(({ code }) => code);
}
