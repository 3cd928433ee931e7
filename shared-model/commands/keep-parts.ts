/** What of the music before goes on when music is opened again: players, typed pages and PDFs stay with their parts. */

import type { Id } from '../document/ids.ts';
import type { Music, Part } from '../document/music.ts';
import type { PartPdf, Player, ScoreRecord } from '../document/records.ts';
import { isVoice } from '../score/parts/part-name.ts';
import { isTyped, isTypedPart } from '../score/table/part-table.ts';
import { t } from '../words/say.ts';
import { playersFor } from './part-players.ts';
import { hasAllBars, isSamePiece } from './same-piece.ts';

export interface KeptParts {
  readonly music: Music;
  readonly players: readonly (Id<'player'> | null)[];
  readonly pdfs: readonly (PartPdf | null)[];
  /** What had to be let go, a phrase each. */
  readonly dropped: readonly string[];
}

/**
 * A part is the one before of its id and name; else of its name, the first for the first; else of its id, for parts are
 * given other names; else that in its place, when neither has a name. Of another piece only names count, and typed pages
 * and PDFs go. A new part goes to the player of its name, or of
 * its instrument where that is plain; `instrumentsOf`: the names of what a player plays.
 */
export function keptParts(
  opened: Music,
  known: ScoreRecord | undefined,
  there: readonly Player[],
  instrumentsOf: (player: Id<'player'>) => readonly string[] = () => [],
): KeptParts {
  const same = known !== undefined && isSamePiece(known.music, opened) ? known : undefined;
  const music = withTypedParts(opened, same);
  const before = partsBefore(music.parts, known?.music.parts ?? [], same !== undefined);
  const kept = before.map((index) => known?.players[index] ?? null);
  const parts = music.parts.map((part, index) =>
    withPagesOf(part, same?.music.parts[before[index] ?? -1], same, music),
  );
  const namesakes = withNamesakes(music.parts, kept, there, (id) => instrumentsOf(id).length > 0);
  const playing = there.map(({ id, name }) => ({ id, names: [name, ...instrumentsOf(id)] }));
  const taken = new Set<string>(namesakes.filter((player) => player !== null));
  // A part that was there before and has nobody was left so.
  const found = playersFor(
    music.parts,
    playing,
    taken,
    (index) => before[index] === -1 && namesakes[index] === null,
  );
  return {
    music: parts.every((part, index) => part === opened.parts[index]) ? opened : { ...music, parts },
    players: namesakes.map(
      (player, index) => player ?? there.find(({ id }) => id === found.get(index))?.id ?? null,
    ),
    pdfs: before.map((index) => same?.pdfs[index] ?? null),
    dropped: known ? droppedFrom({ known, before, music, parts, isOther: same === undefined }) : [],
  };
}

/** Parts that were typed beside those of a score go on beside it, as long as its bars are the same. */
function withTypedParts(music: Music, known: ScoreRecord | undefined): Music {
  if (!known || isTyped(known.music) || isTyped(music)) return music;
  const isInTicks = known.music.ticksPerQuarter === music.ticksPerQuarter;
  if (!isInTicks || !hasAllBars(known.music, music)) return music;
  const typed = known.music.parts.filter(isTypedPart);
  const missing = typed.filter(({ name }) => !music.parts.some((part) => isSameName(part.name, name)));
  return missing.length === 0 ? music : { ...music, parts: [...music.parts, ...missing] };
}

/** For each part the index of the one before that it is; -1: it is new. Ids mean nothing from piece to piece. */
function partsBefore(parts: readonly Part[], old: readonly Part[], isSame: boolean): number[] {
  const found = parts.map(() => -1);
  const match = (isOne: (a: Part, b: Part, index: number, other: number) => boolean): void => {
    parts.forEach((part, index) => {
      if (found[index] !== -1) return;
      found[index] = old.findIndex((one, other) => !found.includes(other) && isOne(part, one, index, other));
    });
  };
  match((a, b) => a.id === b.id && a.name === b.name && (isSame || !isUnnamed(a)));
  match((a, b) => isSameName(a.name, b.name));
  if (!isSame) return found;
  match((a, b) => a.id === b.id);
  match((a, b, index, other) => index === other && isUnnamed(a) && isUnnamed(b));
  return found;
}

function isUnnamed({ name }: Part): boolean {
  return name.trim() === '';
}

function isSameName(a: string, b: string): boolean {
  return a.trim() !== '' && a.trim().toLowerCase() === b.trim().toLowerCase();
}

/** A part that is headed as voices are may be sung or played: nobody who has an instrument is given it by his name alone. */
function withNamesakes(
  parts: readonly Part[],
  kept: readonly (Id<'player'> | null)[],
  there: readonly Player[],
  isPlaying: (player: Id<'player'>) => boolean,
): (Id<'player'> | null)[] {
  const taken = new Set<string>(kept.filter((player) => player !== null));
  return parts.map(({ name }, index) => {
    const isMeant = (one: Player): boolean =>
      isSameName(one.name, name) && !taken.has(one.id) && !(isVoice(name) && isPlaying(one.id));
    const player = kept[index] ?? there.find(isMeant)?.id ?? null;
    if (player !== null) taken.add(player);
    return player;
  });
}

/** Pages that were typed over a score's own, when the bars they begin with are still there. */
function withPagesOf(
  part: Part,
  before: Part | undefined,
  known: ScoreRecord | undefined,
  music: Music,
): Part {
  if (!before?.ownPages || part.ownPages || !known) return part;
  return hasSameBars(known.music, music, before) ? { ...part, pages: before.pages, ownPages: true } : part;
}

function hasSameBars(old: Music, music: Music, { pages }: Part): boolean {
  return pages.every(({ bar }) => old.bars[bar]?.number === music.bars[bar]?.number);
}

interface Opened {
  readonly known: ScoreRecord;
  readonly before: readonly number[];
  readonly music: Music;
  readonly parts: readonly Part[];
  /** It is another piece. */
  readonly isOther: boolean;
}

function droppedFrom({ known, before, music, parts, isOther }: Opened): string[] {
  const gone = known.music.parts.flatMap((part, index) => {
    if (before.includes(index)) return [];
    const [player, pdf] = [known.players[index] ?? null, known.pdfs[index] ?? null];
    return player || pdf ? [goneWords(nameOf(part, index), player !== null, pdf !== null)] : [];
  });
  const repaged = parts.flatMap((part, index) => {
    const old = known.music.parts[before[index] ?? -1];
    const lost = old?.ownPages === true && !part.ownPages;
    return lost ? [repagedWords(nameOf(part, index), isOther)] : [];
  });
  const unprinted = parts.flatMap((part, index) => {
    const lost = isOther && known.pdfs[before[index] ?? -1];
    return lost ? [t`the PDF of ${nameOf(part, index)} belongs to other music`] : [];
  });
  const retimed =
    known.music.tempos.some(({ source }) => source === 'typed') &&
    !music.tempos.some(({ source }) => source === 'typed');
  return [...gone, ...repaged, ...unprinted, ...(retimed ? [t`the tempo that was typed`] : [])];
}

function goneWords(part: string, hadPlayer: boolean, hadPdf: boolean): string {
  if (hadPlayer && hadPdf) return t`${part} is not there any more, nor are its player and its PDF`;
  return hadPlayer
    ? t`${part} is not there any more, nor is its player`
    : t`${part} is not there any more, nor is its PDF`;
}

function repagedWords(part: string, isOther: boolean): string {
  return isOther
    ? t`the pages typed for ${part} belong to other music`
    : t`the pages typed for ${part} begin with other bars now`;
}

function nameOf({ name }: Part, index: number): string {
  return name.trim() === '' ? t`part ${index + 1}` : t`"${name}"`;
}
