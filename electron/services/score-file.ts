/** A score file on disk as music. */

import { basename } from 'node:path';
import { musicFromScore } from '#model/score/music/from-score.ts';
import type { Music } from '#model/score/music.ts';
import type { Score } from '#model/score/score.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import type { Fs } from './fs.ts';
import { openBytes } from './open-file.ts';
import { readScoreBytes } from './score-container.ts';

export interface OpenedScore {
  readonly score: Score;
  readonly music: Music;
  /** As in `ReadScore`. */
  readonly root: string | null;
  readonly roots: readonly string[];
  readonly rootParts: readonly (readonly string[])[];
}

export interface ScoreChoice {
  /** The score to take from a compressed file; null: the first. */
  readonly root: string | null;
  readonly repeatsAfterJump: boolean;
}

/** Throws `FaultError` or the system's error. */
export async function openScore(fs: Fs, path: string, choice: ScoreChoice): Promise<OpenedScore> {
  const name = basename(path);
  const bytes = await openBytes(fs, path, 'score');
  const { score, root, roots, rootParts } = readScoreBytes(bytes, name, choice.root);
  const outcome = musicFromScore(score, { repeatsAfterJump: choice.repeatsAfterJump });
  if (!outcome.ok)
    throw new FaultError(outcome.problem.code, t`"${name}": ${problemSentence(outcome.problem)}`);
  return { score, music: outcome.value, root, roots, rootParts };
}
