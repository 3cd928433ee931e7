/** A whole ensemble set down at once: players with their instruments, seats and stands, in a shape that fits the platform. */

import type { Member } from '#model/arrange/instrument-words.ts';
import { roomFor, type Footprint } from '#model/arrange/room-for.ts';
import { placesOf, type Place, type Shape } from '#model/arrange/shapes.ts';
import { largeInstrumentModel } from '#model/catalogue/large-instruments.ts';
import { pianoModel, USUAL_PIANO } from '#model/catalogue/pianos.ts';
import { tableModel } from '#model/catalogue/tables.ts';
import { addRecords } from '#model/commands/add.ts';
import { refuse, type Outcome } from '#model/commands/command.ts';
import { freshIds } from '#model/commands/fresh-id.ts';
import { concertOf, placedInSetup, platformOf, type Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Units } from '#model/document/measures.ts';
import type { AnyRecord, Player, Stand } from '#model/document/records.ts';
import { facingVector, placed, type Vec2 } from '#model/geometry/frame.ts';
import { boundsOf } from '#model/geometry/polygon.ts';
import { text } from '../app/text.ts';
import { held, itemWithPlayer, playerAt, STAND_AHEAD, standBefore } from './players.ts';
import { newSide, newStand, newTable, usualChair, usualLip, usualStandModel, type Spot } from './recipes.ts';

export interface EnsembleOrder {
  readonly setup: Id<'setup'>;
  readonly units: Units;
  readonly shape: Shape;
  readonly withStands: boolean;
  /** In facing pairs: one stand back to back for each two. */
  readonly shared: boolean;
}

/** Everybody in one step; refused where they do not go on the platform in this shape. */
export function addEnsemble(document: Document, members: readonly Member[], order: EnsembleOrder): Outcome {
  const seats = relativeSeats(members, order);
  const shift = roomFor({
    footprints: seats.flatMap(footprintsOf),
    outline: platformOf(document).outline,
    taken: placedInSetup(document, order.setup),
    fromEdge: concertOf(document).limits.edgeDistance,
  });
  if (!shift) return refuse(text.toPlace.noRoom);
  const ids = freshIds(document);
  const set = new Setting(order, ids);
  for (const seat of seats) set.member(seat, moved(seat, shift));
  set.sharedStands();
  const outcome = addRecords(document, { records: set.records });
  const label = text.toPlace.addedPlayers(members.length);
  return outcome.ok ? { ...outcome, label, select: set.players } : outcome;
}

/** One of the ensemble and where, about the group's own spot. */
interface Seat extends Place {
  readonly member: Member;
}

function moved({ x, y, facing }: Place, by: Vec2): Place {
  const round = (length: number): number => Math.round(length / 10) * 10;
  return { x: round(x + by.x), y: round(y + by.y), facing: Math.round(facing) };
}

/** Who carries his instrument is in the shape; what stands on the floor goes behind, side by side. */
function relativeSeats(members: readonly Member[], { shape, shared, withStands }: EnsembleOrder): Seat[] {
  const inShape = members.filter((member) => !isLarge(member));
  const behind = members.filter(isLarge);
  const places = placesOf({ shape, widths: inShape.map(widthOf), shared: shared && withStands });
  const seats = inShape.map((member, index) => ({ member, ...(places[index] ?? { x: 0, y: 0, facing: 0 }) }));
  const top = seats.reduce((most, { y }) => Math.max(most, y + BEHIND_PLAYERS), 0);
  const depth = behind.reduce((most, member) => Math.max(most, sizeOf(member).depth), 0);
  const row = placesOf({ shape: 'row', widths: behind.map((member) => sizeOf(member).width), shared: false });
  return [
    ...seats,
    ...behind.map((member, index) => ({ member, x: row[index]?.x ?? 0, y: top + depth / 2, facing: 0 })),
  ];
}

type Large = Extract<Member, { readonly kind: 'piano' | 'largeInstrument' }>;

function isLarge(member: Member): member is Large {
  return member.kind === 'piano' || member.kind === 'largeInstrument';
}

/** Behind the last chairs, before what stands at the back. Common practice, no source. */
const BEHIND_PLAYERS = 900;
const SHOULDERS = 480;
const BETWEEN = 250;
const LEAST_WIDTH = 1000;
const AT_A_TABLE = 1700;
/** Room for whoever plays it. */
const PLAYER_ROOM = 1100;

function widthOf(member: Member): number {
  if (member.kind !== 'carried') return AT_A_TABLE;
  const { left, right } = member.model.elbowRoom;
  return Math.max(LEAST_WIDTH, SHOULDERS + left + right + BETWEEN);
}

/** On the plan, its player included; a piano lies across. */
function sizeOf({ kind, model }: Large): { readonly width: number; readonly depth: number } {
  if (kind === 'piano') {
    const { length, width } = pianoModel(model) ?? USUAL_PIANO;
    return { width: length + PLAYER_ROOM, depth: width };
  }
  const { minX, maxX, minY, maxY } = boundsOf(largeInstrumentModel(model)?.outline ?? [{ x: 0, y: 0 }]);
  return { width: maxX - minX + 400, depth: maxY - minY + PLAYER_ROOM };
}

/** Of a player: himself with his chair, and the stand before him. Of something large: its box. */
function footprintsOf(seat: Seat): Footprint[] {
  const { member, x, y, facing } = seat;
  if (isLarge(member)) {
    const { width, depth } = sizeOf(member);
    const radius = depth / 2;
    const reach = Math.max(0, width / 2 - radius);
    return [-reach, 0, reach].map((by) => ({ x: x + by, y, radius }));
  }
  const ahead = facingVector(facing);
  return [
    { x, y, radius: 400 },
    { x: x + ahead.x * STAND_AHEAD, y: y + ahead.y * STAND_AHEAD, radius: 300 },
  ];
}

/** Makes the records of one member after the other. */
class Setting {
  readonly records: AnyRecord[] = [];
  readonly players: string[] = [];
  private readonly waiting: Player[] = [];

  constructor(
    private readonly order: EnsembleOrder,
    private readonly ids: ReturnType<typeof freshIds>,
  ) {}

  member({ member }: Seat, place: Place): void {
    const spot: Spot = { ...place, setup: this.order.setup, units: this.order.units };
    if (isLarge(member)) this.large(member, spot);
    else if (member.kind === 'percussion') this.atTable(member.name, spot);
    else this.carrying(member, spot);
  }

  /** One between each two who face each other, in the order they came in. */
  sharedStands(): void {
    for (let index = 0; index < this.waiting.length; index += 2) {
      const [first, second] = [this.waiting[index], this.waiting[index + 1]];
      if (first && second) this.records.push(this.between(first, second));
      else if (first) this.ownStand(first);
    }
  }

  private large({ kind, model, name }: Large, spot: Spot): void {
    const [player, item] = itemWithPlayer({ kind, model }, spot, this.ids);
    this.records.push({ ...player, name }, item);
    this.players.push(player.id);
  }

  private atTable(name: string, spot: Spot): void {
    const player = this.player(name, spot, null);
    const model = tableModel('percussion-table');
    if (model) {
      const beside = placed(spot, { x: -650, y: -350 });
      this.records.push({
        ...newTable(model, { ...spot, ...beside }),
        id: this.ids('table'),
      } as AnyRecord);
    }
    if (this.order.withStands) this.ownStand(player);
  }

  private carrying({ name, model }: Extract<Member, { readonly kind: 'carried' }>, spot: Spot): void {
    const player = this.player(name, spot, usualChair(model));
    this.records.push(held(this.ids('instrument'), model.id, player));
    if (!this.order.withStands) return;
    if (this.order.shared && this.order.shape === 'pairs') this.waiting.push(player);
    else this.ownStand(player);
  }

  private player(name: string, spot: Spot, chair: Player['chair']): Player {
    const player = playerAt(this.ids('player'), name, spot, chair);
    this.records.push(player);
    this.players.push(player.id);
    return player;
  }

  private ownStand(player: Player): void {
    const { setup, units } = this.order;
    this.records.push(standBefore(this.ids('stand'), player, { ...player, setup, units }));
  }

  private between(first: Player, second: Player): Stand {
    const { setup, units } = this.order;
    const model = usualStandModel();
    const spot = { x: (first.x + second.x) / 2, y: (first.y + second.y) / 2, facing: first.facing + 180 };
    return {
      ...newStand(model, 'backToBack', { ...spot, setup, units }),
      id: this.ids('stand'),
      lip: Math.min(usualLip(model, first.person, first.chair), usualLip(model, second.person, second.chair)),
      sides: [newSide(first.id, units), newSide(second.id, units)],
    };
  }
}
