/** Gives a setup its music, and says who plays which part of it. */

import { inSetup } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Music } from '../document/music.ts';
import { scoreOf } from '../document/parts.ts';
import type { Player, ScoreRecord } from '../document/records.ts';
import { refuse, type Command } from './command.ts';
import { freshId } from './fresh-id.ts';
import { editsOf, propose } from './propose.ts';
import { theRecord } from './targets.ts';
import { nameOf } from './words.ts';

export interface SetScore {
  readonly setup: Id<'setup'>;
  readonly music: Music;
  /** The name of the file that it was read from. */
  readonly source: string;
}

/**
 * Takes the place of the music that the setup had. A part is given to whoever played the part of that name before, else
 * to the player of that name; nobody else is guessed.
 */
export const setScore: Command<SetScore> = (document, { setup, music, source }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const known = scoreOf(document, setup);
  const score: ScoreRecord = {
    id: known?.id ?? freshId(document, 'score'),
    kind: 'score',
    name: '',
    setup,
    source,
    music,
    players: playersFor(music, known, inSetup(document, setup, 'player')),
    pdfs: music.parts.map(() => null),
  };
  return propose(document, editsOf([score]), { label: `give ${nameOf(document, target.record)} its music` });
};

export interface AssignPart {
  readonly score: Id<'score'>;
  /** Index in `music.parts`. */
  readonly part: number;
  readonly player: Id<'player'> | null;
}

/** The player's part before it has nobody then. */
export const assignPart: Command<AssignPart> = (document, { score, part, player }) => {
  const target = theRecord(document, score, 'score');
  if (!target.ok) return target;
  const name = target.record.music.parts[part]?.name;
  if (name === undefined) return refuse(`Give one of the ${target.record.music.parts.length} parts.`);
  const players = target.record.players.map((other, index) =>
    index === part ? player : other === player ? null : other,
  );
  return propose(document, editsOf([{ ...target.record, players }]), {
    label: `say who plays ${name}`.trimEnd(),
  });
};

function playersFor(
  { parts }: Music,
  known: ScoreRecord | undefined,
  there: readonly Player[],
): (Id<'player'> | null)[] {
  const taken = new Set<string>();
  return parts.map(({ name }) => {
    const before = known?.music.parts.findIndex((part) => isSameName(part.name, name)) ?? -1;
    const player =
      known?.players[before] ??
      there.find((one) => isSameName(one.name, name) && !taken.has(one.id))?.id ??
      null;
    if (player === null || taken.has(player)) return null;
    taken.add(player);
    return player;
  });
}

function isSameName(a: string, b: string): boolean {
  return a.trim() !== '' && a.trim().toLowerCase() === b.trim().toLowerCase();
}
