/** Pages of parts when a score of the command line takes the place of the music in the file: which stay, and which nobody knows. */

import { keptParts } from '#model/commands/keep-parts.ts';
import { labelOf } from '#model/document/labels.ts';
import type { Document } from '#model/document/document.ts';
import type { Music, Part } from '#model/document/music.ts';
import type { Player, ScoreRecord, Setup } from '#model/document/records.ts';
import { nameFrom } from '#model/score/table/bar-cells.ts';
import { UsageError } from './usage.ts';

export interface Replaced {
  /** The music in the file. */
  readonly known: ScoreRecord;
  /** As the other score has it. */
  readonly opened: Music;
  /** What is made of both. */
  readonly given: ScoreRecord;
  /** Parts whose pages the command line gives, by index. */
  readonly typed: ReadonlySet<number>;
  readonly players: readonly Player[];
}

/** Sentences for stderr. */
export function keptNotes({ known, opened, given, typed, players }: Replaced): string[] {
  const kept = given.music.parts.flatMap((part, index) => {
    const isOld = part.ownPages && !typed.has(index) && opened.parts[index]?.ownPages !== true;
    return isOld
      ? [
          `"${part.name || part.id}" keeps the pages that FILE gives it: they begin with ${barsOf(given.music, part)}. ` +
            `${othersWith(part)} gives it others.`,
        ]
      : [];
  });
  const { dropped } = keptParts(opened, known, players);
  return [...kept, ...(dropped.length > 0 ? [`Not kept of the music in FILE: ${dropped.join('; ')}.`] : [])];
}

function barsOf(music: Music, { pages }: Part): string {
  const names = pages.map(({ bar }, index) => nameFrom(music, bar, pages[index - 1]?.bar ?? 0));
  return `${names.length === 1 ? 'bar' : 'bars'} ${names.join(', ')}`;
}

function othersWith({ name, id }: Part): string {
  return `--pages "${name || id}=1,38"`;
}

/** Throws `UsageError` when somebody plays a part whose pages nobody gave. */
export function refuseUnknownPages(document: Document, setup: Setup, score: ScoreRecord): void {
  const unknown = score.music.parts.filter(({ ownPages }, index) => !ownPages && score.players[index]);
  if (unknown.length === 0) return;
  const whose = unknown.map((part) => {
    const player = score.players[score.music.parts.indexOf(part)];
    return `"${part.name || part.id}" (${player ? labelOf(document, setup.id, player) : ''})`;
  });
  throw new UsageError(
    `the pages of ${whose.join(', ')} are not known: a score tells only its own; give the bar that each page begins ` +
      `with, as in ${unknown.map(othersWith).join(' ')}`,
  );
}
