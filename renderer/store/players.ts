/** A new player: with the instrument, the usual seat, and a stand to read from. */

import type { InstrumentModel } from '#model/catalogue/instruments.ts';
import { largeInstrumentModel } from '#model/catalogue/large-instruments.ts';
import { pianoModel } from '#model/catalogue/pianos.ts';
import { addRecords } from '#model/commands/add.ts';
import type { Outcome } from '#model/commands/command.ts';
import { freshIds } from '#model/commands/fresh-id.ts';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { AnyRecord, Chair, Instrument, Player, Stand } from '#model/document/records.ts';
import { facingVector, placed } from '#model/geometry/frame.ts';
import {
  chairOf,
  newSide,
  newStand,
  SOMEBODY,
  usualChair,
  usualLip,
  usualStandModel,
  type Spot,
} from './recipes.ts';

/** From the player's axis to the middle of the desk; common practice, no source. */
export const STAND_AHEAD = 620;

export interface NewPlayer {
  readonly spot: Spot;
  readonly withStand: boolean;
}

export function addPlayer(
  document: Document,
  instrument: InstrumentModel,
  { spot, withStand }: NewPlayer,
): Outcome {
  const ids = freshIds(document);
  const player = playerAt(ids('player'), instrument.name, spot, usualChair(instrument));
  const records: AnyRecord[] = [player, held(ids('instrument'), instrument.id, player)];
  if (withStand) records.push(standBefore(ids('stand'), player, spot));
  return selecting(player.id, addRecords(document, { records }));
}

/** A pianist with the piano, or a percussionist with the instrument on the floor; the spot is the instrument's. */
export function addPlayerAt(document: Document, what: PlayedThing, spot: Spot): Outcome {
  const [player, item] = itemWithPlayer(what, spot, freshIds(document));
  return selecting(item.id, addRecords(document, { records: [player, item] }));
}

/** A piano, or an instrument that stands on the floor. */
interface PlayedThing {
  readonly kind: 'piano' | 'largeInstrument';
  readonly model: string;
}

/** Whoever plays it first, then the thing itself; a piano's tail turned upstage by `turned` degrees. */
export function itemWithPlayer(
  { kind, model: id }: PlayedThing,
  spot: Spot,
  ids: ReturnType<typeof freshIds>,
  turned = 0,
): [Player, AnyRecord] {
  const model = kind === 'piano' ? pianoModel(id) : largeInstrumentModel(id);
  const facing = kind === 'piano' ? 90 + turned : spot.facing;
  const seat = kind === 'piano' ? chairOf('piano-bench') : null;
  const stands = placed({ ...spot, facing }, model?.playerAt ?? { x: 0, y: 900 });
  const player = playerAt(ids('player'), model?.name ?? '', { ...spot, ...stands, facing }, seat);
  const { setup, x, y } = spot;
  const common = { name: '', setup, x, y, facing, model: id, player: player.id };
  return [
    player,
    kind === 'piano'
      ? { ...common, id: ids('piano'), kind, lid: 'half' }
      : { ...common, id: ids('largeInstrument'), kind },
  ];
}

export function playerAt(
  id: Id<'player'>,
  name: string,
  { setup, x, y, facing }: Spot,
  chair: Chair | null,
): Player {
  return { id, kind: 'player', name, setup, x, y, facing, person: SOMEBODY, chair, mobility: 'walks' };
}

export function held(id: Id<'instrument'>, model: string, { id: player, setup }: Player): Instrument {
  return { id, kind: 'instrument', name: '', setup, model, player, support: null, freeTime: null };
}

/** A stand before the player, its page towards him. */
export function standBefore(id: Id<'stand'>, player: Player, spot: Spot): Stand {
  const ahead = facingVector(player.facing);
  const model = usualStandModel();
  const at = {
    ...spot,
    x: Math.round(player.x + ahead.x * STAND_AHEAD),
    y: Math.round(player.y + ahead.y * STAND_AHEAD),
    facing: player.facing + 180,
  };
  return {
    ...newStand(model, 'single', at),
    id,
    lip: usualLip(model, player.person, player.chair),
    sides: [newSide(player.id, spot.units)],
  };
}

/** One thing is selected, so that its numbers show; the rest belongs to it and is found through it. */
function selecting(id: string, outcome: Outcome): Outcome {
  return outcome.ok ? { ...outcome, select: [id] } : outcome;
}
