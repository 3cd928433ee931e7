/** Music named on the command line, put into a copy of the document. */

import { basename, resolve } from 'node:path';
import { assignPart, setScore } from '#model/commands/score.ts';
import { scoreOf } from '#model/document/parts.ts';
import type { Outcome as Proposed } from '#model/commands/command.ts';
import { applyDiff } from '#model/document/diff.ts';
import { inSetup, type Document } from '#model/document/document.ts';
import type { ScoreRecord, Setup } from '#model/document/records.ts';
import { withPages } from '#model/score/music/typed-over.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { faultOf } from '../services/faults.ts';
import type { Fs } from '../services/fs.ts';
import { openScore } from '../services/score-file.ts';
import { UsageError, type GivenMusic, type Said } from './usage.ts';

/** Throws `UsageError`. */
export async function givenScore(
  document: Document,
  setup: Setup,
  { score, plays, pages }: GivenMusic,
  fs: Fs,
): Promise<Document> {
  let given = score === null ? document : await withScore(document, setup, score, fs);
  for (const said of plays) given = withPlayer(given, setup, said);
  for (const said of pages) given = withTypedPages(given, setup, said);
  return given;
}

async function withScore(document: Document, setup: Setup, file: string, fs: Fs): Promise<Document> {
  const path = resolve(file);
  const { music } = await openScore(fs, path, { root: null, repeatsAfterJump: false }).catch(
    (error: unknown) => {
      throw new UsageError(faultOf(error, path).message);
    },
  );
  return carriedOut(document, setScore(document, { setup: setup.id, music, source: basename(path) }));
}

function withPlayer(document: Document, setup: Setup, { part, value }: Said): Document {
  const { score, index } = partNamed(document, setup, part);
  const players = inSetup(document, setup.id, 'player');
  const player =
    players.find(({ id }) => id === value) ??
    players.find(({ name }) => name.trim().toLowerCase() === value.toLowerCase());
  if (!player) {
    const there = players.map(({ id, name }) => `"${name || id}"`).join(', ');
    throw new UsageError(`--plays: nobody is called "${value.slice(0, 60)}"; there are ${there}`);
  }
  return carriedOut(document, assignPart(document, { score: score.id, part: index, player: player.id }));
}

function withTypedPages(document: Document, setup: Setup, { part, value }: Said): Document {
  const { score, index } = partNamed(document, setup, part);
  const outcome = withPages(score.music, index, value);
  if (!outcome.ok) throw new UsageError(`--pages: ${problemSentence(outcome.problem)}`);
  const { source } = score;
  return carriedOut(document, setScore(document, { setup: setup.id, music: outcome.value, source }));
}

export function partNamed(
  document: Document,
  setup: Setup,
  part: string,
): { score: ScoreRecord; index: number } {
  const score = scoreOf(document, setup.id);
  if (!score) throw new UsageError('this setup has no music; give it with --score');
  const index = score.music.parts.findIndex(
    ({ id, name }) => id === part || name.trim().toLowerCase() === part.toLowerCase(),
  );
  if (index >= 0) return { score, index };
  const there = score.music.parts.map(({ id, name }) => `"${name || id}"`).join(', ');
  throw new UsageError(`there is no part "${part.slice(0, 60)}"; there are ${there}`);
}

function carriedOut(document: Document, outcome: Proposed): Document {
  if (!outcome.ok) throw new UsageError(outcome.reason);
  return applyDiff(document, outcome.diff);
}
