/** Which records name which others, in one place: reading, removing and copying all depend on it. */

import type { Id } from './ids.ts';
import type { KeptPin } from './kept-plan.ts';
import {
  PLACED_KINDS,
  type AnyRecord,
  type Group,
  type Kind,
  type PagePlanRecord,
  type PlayerPair,
  type Setup,
} from './records.ts';

export interface Reference {
  /** Where the id stands in its record: "reader of side 0" is `sides[0].reader`. */
  readonly field: string;
  readonly id: string;
  readonly kinds: readonly Kind[];
}

/** Everything that `record` names, its setup first. */
export function referencesOf(record: AnyRecord): Reference[] {
  const found: Reference[] = [];
  const note = (field: string, id: string | null, ...kinds: Kind[]): void => {
    if (id !== null) found.push({ field, id, kinds });
  };
  if ('setup' in record) note('setup', record.setup, 'setup');
  switch (record.kind) {
    case 'setup':
      record.needNotSee.forEach((pair, index) =>
        pair.forEach((player, place) => note(`needNotSee[${index}][${place}]`, player, 'player')),
      );
      note('variantOf', record.variantOf, 'setup');
      break;
    case 'storage':
      note('door', record.door, 'door');
      break;
    case 'stock':
      note('storage', record.storage, 'storage');
      break;
    case 'score':
      record.players.forEach((player, index) => note(`players[${index}]`, player, 'player'));
      break;
    case 'pagePlan':
      note('score', record.score, 'score');
      record.stations.forEach(({ station }, index) => note(`stations[${index}].station`, station, 'stand'));
      record.turns.forEach(({ station, player }, index) => {
        note(`turns[${index}].station`, station, 'stand');
        note(`turns[${index}].player`, player, 'player');
      });
      record.pins.forEach((pin, index) => {
        note(`pins[${index}].station`, pin.station, 'stand');
        if (pin.kind === 'turn') note(`pins[${index}].player`, pin.player, 'player');
      });
      break;
    case 'stand':
      record.sides.forEach((side, index) => note(`sides[${index}].reader`, side.reader, 'player'));
      break;
    case 'instrument':
      note('player', record.player, 'player');
      note('support', record.support, 'instrumentStand', 'table');
      break;
    case 'piano':
    case 'largeInstrument':
      note('player', record.player, 'player');
      break;
    case 'group':
      record.members.forEach((member, index) => note(`members[${index}]`, member, ...PLACED_KINDS));
      break;
    default:
  }
  return found;
}

/** The new id for an old one; null lets go of what it named. */
export type Rename = <K extends Kind>(id: Id<K>) => Id<K> | null;

/**
 * The record with every id it names replaced; null when it cannot be without what it lost (an instrument its
 * player, an item its setup, a page plan its music, a group all that is in it). The record itself, when nothing changes.
 */
export function withReferences<R extends AnyRecord>(record: R, rename: Rename): R | null;
export function withReferences(record: AnyRecord, rename: Rename): AnyRecord | null {
  const renamed = <K extends Kind>(id: Id<K> | null): Id<K> | null => (id === null ? null : rename(id));
  const references = referencesOf(record);
  if (references.every(({ id }) => rename(id as Id) === id)) return record;
  if (record.kind === 'setup') return setupWith(record, rename);
  if (record.kind === 'storage') return { ...record, door: renamed(record.door) };
  if (record.kind === 'stock') return { ...record, storage: renamed(record.storage) };
  if (!('setup' in record)) return record;
  const setup = renamed(record.setup);
  if (setup === null && record.setup !== null) return null;
  if (record.kind === 'score') return setup && { ...record, setup, players: record.players.map(renamed) };
  if (record.kind === 'pagePlan') {
    const score = rename(record.score);
    return setup && score && { ...planWith(record, rename), setup, score };
  }
  switch (record.kind) {
    case 'stand': {
      const [first, second] = record.sides;
      const readBy = <S extends typeof first>(side: S): S => ({ ...side, reader: renamed(side.reader) });
      return { ...record, setup, sides: second ? [readBy(first), readBy(second)] : [readBy(first)] };
    }
    case 'instrument': {
      const player = rename(record.player);
      return player && { ...record, setup, player, support: renamed(record.support) };
    }
    case 'piano':
    case 'largeInstrument':
      return { ...record, setup, player: renamed(record.player) };
    case 'group':
      return groupWith({ ...record, setup }, rename);
    default:
      return { ...record, setup };
  }
}

/** A variant of a setup that is gone stands by itself, in the programme. */
function setupWith(setup: Setup, rename: Rename): Setup {
  return {
    ...setup,
    needNotSee: renamedPairs(setup.needNotSee, rename),
    variantOf: setup.variantOf && rename(setup.variantOf),
  };
}

/** One that lost members until a single one is left is no group any more, unless it keeps that one locked or hidden. */
function groupWith(group: Group, rename: Rename): Group | null {
  const members = group.members.flatMap((member) => rename(member) ?? []);
  const isLeft = members.length > 1 || (members.length === 1 && group.members.length === 1);
  return isLeft || (members.length === 1 && (group.locked || group.hidden)) ? { ...group, members } : null;
}

/** A pair that lost one of its players is none. */
function renamedPairs(pairs: readonly PlayerPair[], rename: Rename): PlayerPair[] {
  return pairs.flatMap(([a, b]) => {
    const [first, second] = [rename(a), rename(b)];
    return first && second ? [[first, second]] : [];
  });
}

/** A plan goes on without a stand or a player that is gone: what hangs on them goes out of it. */
function planWith(plan: PagePlanRecord, rename: Rename): PagePlanRecord {
  const atStation = <T extends { readonly station: Id<'stand'> }>(item: T): T[] => {
    const station = rename(item.station);
    return station ? [{ ...item, station }] : [];
  };
  const byPlayer = <T extends { readonly player: Id<'player'> }>(item: T): T[] => {
    const player = rename(item.player);
    return player ? [{ ...item, player }] : [];
  };
  return {
    ...plan,
    stations: plan.stations.flatMap(atStation),
    turns: plan.turns.flatMap(atStation).flatMap(byPlayer),
    pins: plan.pins
      .flatMap(atStation)
      .flatMap((pin): KeptPin[] => (pin.kind === 'turn' ? byPlayer(pin) : [pin])),
  };
}
