/** Adds a part to the music of a setup, puts another in the place of one, and takes one out: a score need not have all. */

import type { Id } from '../document/ids.ts';
import type { Part } from '../document/music.ts';
import type { ScoreRecord } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { theRecord } from './targets.ts';

export interface SetPart {
  readonly score: Id<'score'>;
  /** Index in `music.parts` of the one whose place it takes; null: it is a further one. */
  readonly part: number | null;
  readonly content: Part;
  /** Who plays it; a part that he played before has nobody then. */
  readonly player: Id<'player'> | null;
}

/** All other parts stay as they are, and its PDF stays with a part that gets other content. */
export const setPart: Command<SetPart> = (document, { score, part, content, player }) => {
  const target = theRecord(document, score, 'score');
  if (!target.ok) return target;
  const { music, players, pdfs } = target.record;
  const place = part ?? music.parts.length;
  if (part !== null && !music.parts[part]) return refuse(t`Give one of the ${music.parts.length} parts.`);
  const others = players.map((other) => (other === player ? null : other));
  const changed: ScoreRecord = {
    ...target.record,
    music: { ...music, parts: music.parts.toSpliced(place, 1, content) },
    players: others.toSpliced(place, 1, player),
    pdfs: pdfs.toSpliced(place, 1, pdfs[place] ?? null),
  };
  return propose(document, editsOf([changed]), {
    label: part === null ? addLabel(content.name) : changeLabel(content.name),
  });
};

export interface RemovePart {
  readonly score: Id<'score'>;
  /** Index in `music.parts`. */
  readonly part: number;
}

/** With who plays it and what it is printed in. Music keeps one part. */
export const removePart: Command<RemovePart> = (document, { score, part }) => {
  const target = theRecord(document, score, 'score');
  if (!target.ok) return target;
  const { music, players, pdfs } = target.record;
  const gone = music.parts[part];
  if (!gone) return refuse(t`Give one of the ${music.parts.length} parts.`);
  if (music.parts.length === 1) return refuse(t`It is the only part: remove the music instead.`);
  const changed: ScoreRecord = {
    ...target.record,
    music: { ...music, parts: music.parts.toSpliced(part, 1) },
    players: players.toSpliced(part, 1),
    pdfs: pdfs.toSpliced(part, 1),
  };
  return propose(document, editsOf([changed]), { label: removeLabel(gone.name) });
};

/** A part need not have a name. */
function addLabel(name: string): string {
  return name.trim() === '' ? t`add the part` : t`add the part ${name.trimEnd()}`;
}

function changeLabel(name: string): string {
  return name.trim() === '' ? t`change the part` : t`change the part ${name.trimEnd()}`;
}

function removeLabel(name: string): string {
  return name.trim() === '' ? t`take out the part` : t`take out the part ${name.trimEnd()}`;
}
