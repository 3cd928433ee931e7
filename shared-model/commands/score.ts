/** Gives a setup its music, and says who plays which part of it. */

import { inSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Music } from '../document/music.ts';
import { scoreOf } from '../document/parts.ts';
import type { PartPdf, ScoreRecord } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { freshId } from './fresh-id.ts';
import { keptParts } from './keep-parts.ts';
import { editsOf, propose } from './propose.ts';
import { theRecord } from './targets.ts';
import { nameOf } from './words.ts';

export interface SetScore {
  readonly setup: Id<'setup'>;
  readonly music: Music;
  /** The name of the file that it was read from. */
  readonly source: string;
  /** Who plays each part; left out: as `keptParts` finds. */
  readonly players?: ScoreRecord['players'];
}

/**
 * Takes the place of the music that the setup had. Players, typed pages and PDFs stay with their parts as `keptParts`
 * finds them; a new part is given to the player of its name or of its instrument, where there is no doubt.
 */
export const setScore: Command<SetScore> = (document, { setup, music, source, players }) => {
  const target = theRecord(document, setup, 'setup');
  if (!target.ok) return target;
  const known = scoreOf(document, setup);
  const kept = keptParts(music, known, inSetup(document, setup, 'player'), instrumentsIn(document, setup));
  const score: ScoreRecord = {
    id: known?.id ?? freshId(document, 'score'),
    kind: 'score',
    name: '',
    setup,
    source,
    music: kept.music,
    players: players ?? kept.players,
    pdfs: kept.pdfs,
  };
  return propose(document, editsOf([score]), { label: t`give ${nameOf(document, target.record)} its music` });
};

/** What each player has in his hands or before him. */
function instrumentsIn(document: Document, setup: Id<'setup'>): (player: Id<'player'>) => string[] {
  const models = [
    ...inSetup(document, setup, 'instrument'),
    ...inSetup(document, setup, 'largeInstrument'),
    ...inSetup(document, setup, 'piano').map(({ player }) => ({ player, model: 'piano' })),
  ];
  return (wanted) =>
    models.flatMap(({ player, model }) => (player === wanted ? [model.replaceAll('-', ' ')] : []));
}

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
  if (name === undefined) return refuse(t`Give one of the ${target.record.music.parts.length} parts.`);
  const players = target.record.players.map((other, index) =>
    index === part ? player : other === player ? null : other,
  );
  return propose(document, editsOf([{ ...target.record, players }]), {
    label: name.trim() === '' ? t`say who plays` : t`say who plays ${name.trimEnd()}`,
  });
};

export interface SetPartPdf {
  readonly score: Id<'score'>;
  /** Index in `music.parts`. */
  readonly part: number;
  /** Null: none is known any more. */
  readonly pdf: PartPdf | null;
}

/** Says what a part is printed in. */
export const setPartPdf: Command<SetPartPdf> = (document, { score, part, pdf }) => {
  const target = theRecord(document, score, 'score');
  if (!target.ok) return target;
  const { music, pdfs } = target.record;
  const name = music.parts[part]?.name;
  if (name === undefined) return refuse(t`Give one of the ${music.parts.length} parts.`);
  const changed = pdfs.map((other, index) => (index === part ? pdf : other));
  return propose(document, editsOf([{ ...target.record, pdfs: changed }]), {
    label: t`say what ${name || t`part ${part + 1}`} is printed in`,
  });
};
