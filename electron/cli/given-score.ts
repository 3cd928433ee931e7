/** Music named on the command line, put into a copy of the document. */

import { basename, resolve } from 'node:path';
import { assignPart, setScore } from '#model/commands/score.ts';
import { scoreOf } from '#model/document/parts.ts';
import type { Outcome as Proposed } from '#model/commands/command.ts';
import { applyDiff } from '#model/document/diff.ts';
import { inSetup, type Document } from '#model/document/document.ts';
import type { Music } from '#model/document/music.ts';
import { labelOf, markOf } from '#model/document/labels.ts';
import type { Player, ScoreRecord, Setup } from '#model/document/records.ts';
import { withPages } from '#model/score/music/typed-over.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { faultOf } from '../services/faults.ts';
import type { Fs } from '../services/fs.ts';
import { openScore } from '../services/score-file.ts';
import { keptNotes, refuseUnknownPages } from './kept-pages.ts';
import { UsageError, type GivenMusic, type Said } from './usage.ts';

export interface WithMusic {
  readonly document: Document;
  /** What of the music in the file goes on with another score, and what does not: sentences. */
  readonly notes: readonly string[];
}

/** Throws `UsageError`, also where somebody plays a part whose pages nobody gave. */
export async function givenScore(
  document: Document,
  setup: Setup,
  { score, plays, pages }: GivenMusic,
  fs: Fs,
): Promise<WithMusic> {
  const opened = score === null ? null : await openedScore(score, fs);
  const scored = opened ? carriedOut(document, setScore(document, { setup: setup.id, ...opened })) : document;
  let given = withPlayers(scored, setup, plays);
  for (const said of pages) given = withTypedPages(given, setup, said);
  const [known, record] = [scoreOf(document, setup.id), scoreOf(given, setup.id)];
  if (record) refuseUnknownPages(given, setup, record);
  if (!known || !record || !opened) return { document: given, notes: [] };
  const typed = new Set(pages.map(({ part }) => partNamed(given, setup, part).index));
  const players = inSetup(document, setup.id, 'player');
  return {
    document: given,
    notes: keptNotes({ known, opened: opened.music, given: record, typed, players }),
  };
}

async function openedScore(file: string, fs: Fs): Promise<{ music: Music; source: string }> {
  const path = resolve(file);
  const { music } = await openScore(fs, path, { root: null, repeatsAfterJump: false }).catch(
    (error: unknown) => {
      throw new UsageError(faultOf(error, path).message);
    },
  );
  return { music, source: basename(path) };
}

function withPlayers(document: Document, setup: Setup, plays: readonly Said[]): Document {
  const partsOf = new Map<string, string>();
  let given = document;
  for (const { part, value } of plays) {
    const { score, index } = partNamed(given, setup, part);
    const { id } = playerNamed(given, setup, value);
    const other = partsOf.get(id);
    if (other !== undefined)
      throw new UsageError(
        `--plays: ${labelOf(given, setup.id, id)} cannot play both "${other}" and "${part}"`,
      );
    partsOf.set(id, part);
    given = carriedOut(given, assignPart(given, { score: score.id, part: index, player: id }));
  }
  return given;
}

/** By id, by label ("Violin (player 1)"), by mark ("player 1") or by a name that only one has. Throws `UsageError`. */
function playerNamed(document: Document, setup: Setup, said: string): Player {
  const players = inSetup(document, setup.id, 'player');
  const label = ({ id }: Player): string => labelOf(document, setup.id, id);
  const isSaid = (words: string): boolean => words.trim().toLowerCase() === said.trim().toLowerCase();
  const plain =
    players.find(({ id }) => id === said.trim()) ?? players.find((player) => isSaid(label(player)));
  if (plain) return plain;
  const meant = players.filter((player) => isSaid(player.name) || isSaid(markOf(document, setup.id, player)));
  const [only, another] = meant;
  if (only && !another) return only;
  const labels = (some: readonly Player[]): string => some.map((one) => `"${label(one)}"`).join(', ');
  const short = said.slice(0, 60);
  if (only) throw new UsageError(`--plays: several are called "${short}"; write which: ${labels(meant)}`);
  throw new UsageError(`--plays: nobody is called "${short}"; there are ${labels(players)}`);
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
