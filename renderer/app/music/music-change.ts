/** What is typed over, carried out: a refusal comes back as words for the field. */

import type { Music } from '#model/document/music.ts';
import type { ScoreRecord } from '#model/document/records.ts';
import type { Outcome } from '#model/score/problem.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { set } from '../properties/change.ts';

/** Players stay with their parts. Null when it was done. */
export function changeMusic(editor: Editor, score: ScoreRecord, typed: Outcome<Music>): string | null {
  return typed.ok ? set(editor, score, { music: typed.value }) : problemSentence(typed.problem);
}
