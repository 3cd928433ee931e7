/** The records of an ensemble: each player with what he plays, sits on and reads from. */

import { usualFashion, type Fashion } from '#model/arrange/fashions.ts';
import type { Member } from '#model/arrange/instrument-words.ts';
import type { Place, Shape } from '#model/arrange/shapes.ts';
import { standModel, USUAL_STAND } from '#model/catalogue/stands.ts';
import { tableModel } from '#model/catalogue/tables.ts';
import type { freshIds } from '#model/commands/fresh-id.ts';
import type { Id } from '#model/document/ids.ts';
import type { Units } from '#model/document/measures.ts';
import type { AnyRecord, Player, Stand } from '#model/document/records.ts';
import { placed } from '#model/geometry/frame.ts';
import { held, itemWithPlayer, playerAt, standBefore } from './players.ts';
import { newSide, newStand, newTable, usualChair, usualLip, usualStandModel, type Spot } from './recipes.ts';

export interface EnsembleOrder {
  readonly setup: Id<'setup'>;
  readonly units: Units;
  readonly shape: Shape;
  readonly withStands: boolean;
  /** In facing pairs: one stand back to back for each two. */
  readonly shared: boolean;
}

export type Large = Extract<Member, { readonly kind: 'piano' | 'largeInstrument' }>;

export function isLarge(member: Member): member is Large {
  return member.kind === 'piano' || member.kind === 'largeInstrument';
}

/** Where somebody sits, and which way his page lies. */
interface PageSpot extends Spot {
  readonly page: number;
}

/** Makes the records of one member after the other. */
export class EnsembleRecords {
  readonly records: AnyRecord[] = [];
  readonly players: string[] = [];
  private readonly waiting: Player[] = [];

  constructor(
    private readonly order: EnsembleOrder,
    private readonly ids: ReturnType<typeof freshIds>,
    private readonly fashion: Fashion = usualFashion(order.shape),
  ) {}

  member(member: Member, { x, y, facing, page }: Place): void {
    const { setup, units } = this.order;
    const spot: PageSpot = { x, y, facing, page, setup, units };
    if (isLarge(member)) this.large(member, spot);
    else if (member.kind === 'percussion') this.atTable(member.name, spot);
    else this.carrying(member, spot);
  }

  /** One between each two who face each other, in the order they came in. */
  sharedStands(): void {
    for (let index = 0; index < this.waiting.length; index += 2) {
      const [first, second] = [this.waiting[index], this.waiting[index + 1]];
      if (first && second) this.records.push(this.between(first, second));
      else if (first) this.ownStand(first, first.facing);
    }
  }

  private large({ kind, model, name }: Large, spot: Spot): void {
    const [player, item] = itemWithPlayer({ kind, model }, spot, this.ids, this.fashion.piano.turned);
    this.records.push({ ...player, name }, item);
    this.players.push(player.id);
  }

  private atTable(name: string, spot: PageSpot): void {
    const player = this.player(name, spot, null);
    const model = tableModel('percussion-table');
    if (model) {
      const turned = { ...spot, facing: spot.page };
      const beside = placed(turned, { x: -650, y: -350 });
      this.records.push({
        ...newTable(model, { ...turned, ...beside }),
        id: this.ids('table'),
      } as AnyRecord);
    }
    if (this.order.withStands) this.ownStand(player, spot.page);
  }

  private carrying({ name, model }: Extract<Member, { readonly kind: 'carried' }>, spot: PageSpot): void {
    const player = this.player(name, spot, usualChair(model));
    this.records.push(held(this.ids('instrument'), model.id, player));
    if (!this.order.withStands) return;
    if (this.order.shared && this.order.shape === 'pairs') this.waiting.push(player);
    else this.ownStand(player, spot.page);
  }

  private player(name: string, spot: Spot, chair: Player['chair']): Player {
    const player = playerAt(this.ids('player'), name, spot, chair);
    this.records.push(player);
    this.players.push(player.id);
    return player;
  }

  private ownStand(player: Player, page: number): void {
    const { setup, units } = this.order;
    const reader = { ...player, facing: page };
    this.records.push(this.set(standBefore(this.ids('stand'), reader, { ...reader, setup, units })));
  }

  /** The desk as low and as flat as the fashion wants it, as far as its model goes. */
  private set(stand: Stand): Stand {
    const { lower, tilt } = this.fashion.desk;
    const { lip } = standModel(stand.model) ?? USUAL_STAND;
    return { ...stand, lip: Math.max(lip.least, stand.lip - lower), tilt: tilt ?? stand.tilt };
  }

  private between(first: Player, second: Player): Stand {
    const { setup, units } = this.order;
    const model = usualStandModel();
    const spot = { x: (first.x + second.x) / 2, y: (first.y + second.y) / 2, facing: first.facing + 180 };
    return this.set({
      ...newStand(model, 'backToBack', { ...spot, setup, units }),
      id: this.ids('stand'),
      lip: Math.min(usualLip(model, first.person, first.chair), usualLip(model, second.person, second.chair)),
      sides: [newSide(first.id, units), newSide(second.id, units)],
    });
  }
}
