/** Players as what is to be seen, and as what hides others. */

import { instrumentModel, type HeldBox } from '../../catalogue/instruments.ts';
import { BODY_DEPTH } from '../../catalogue/outlines.ts';
import { bodies, type Body } from '../../catalogue/people.ts';
import { placed } from '../../geometry/frame.ts';
import type { Instrument, Millimetres, Player } from '../../document/records.ts';
import type { BoxOccluder, CapsuleOccluder, Occluder, Target } from '../scene.ts';

/** A player with what he holds, on a floor `floor` mm above the platform's. */
export interface PlayerOnFloor {
  readonly player: Player;
  readonly floor: Millimetres;
  readonly held: readonly Instrument[];
}

/**
 * The window of a player: shoulders wide, from the waist (or the lowest point his instrument shows) to the top of the
 * head. Where anyone may play it is the window of the small body, which is the easier one to hide.
 */
export function targetOf({ player, floor, held }: PlayerOnFloor): Target {
  const body = bodies(player.person, player.chair?.height ?? null).small;
  const below = held.reduce((most, { model }) => Math.max(most, instrumentModel(model)?.showsDownTo ?? 0), 0);
  const lowest = body.waistHeight - below;
  return {
    id: player.id,
    x: player.x,
    y: player.y,
    z0: floor + Math.max(0, lowest),
    z1: floor + body.crown,
    width: body.shoulderBreadth,
    chin: floor + chinHeight(body),
  };
}

/** Eyes are half-way up a head: the proportion that drawing is taught with. Common practice, no source. */
function chinHeight({ crown, eyeHeight }: Body): Millimetres {
  return eyeHeight - (crown - eyeHeight);
}

/**
 * What a player hides of others: two upright capsules side by side make the trunk, as broad as his shoulders and as deep
 * as a body; a third is the head. Where anyone may play it is the tall body. Nothing of this hides himself.
 */
export function bodyOccluders({ player, floor, held }: PlayerOnFloor): Occluder[] {
  const body = bodies(player.person, player.chair?.height ?? null).tall;
  const boxes = held.flatMap((instrument) => heldBox(player, instrument, body, floor));
  return [...trunkOf(player, body, floor), headOf(player, body, floor), ...boxes];
}

function trunkOf(player: Player, body: Body, floor: Millimetres): CapsuleOccluder[] {
  const r = BODY_DEPTH / 2;
  const apart = Math.max(0, body.shoulderBreadth / 2 - r);
  return (['left', 'right'] as const).map((side) => {
    const { x, y } = placed(player, { x: side === 'left' ? apart : -apart, y: 0 });
    const z1 = floor + Math.max(r, body.shoulderHeight - r);
    return capsule(player, `trunk-${side}`, { x, y, z0: floor + r, z1, r });
  });
}

function headOf(player: Player, body: Body, floor: Millimetres): CapsuleOccluder {
  const r = headRadius(body);
  const z1 = floor + body.crown - r;
  const z0 = Math.min(z1, floor + body.shoulderHeight);
  return capsule(player, 'head', { x: player.x, y: player.y, z0, z1, r });
}

/** A round head between its breadth and its length. */
export function headRadius(body: Pick<Body, 'headBreadth' | 'headLength'>): Millimetres {
  return (body.headBreadth + body.headLength) / 4;
}

type Roundness = Pick<CapsuleOccluder, 'x' | 'y' | 'z0' | 'z1' | 'r'>;

function capsule(player: Player, part: string, round: Roundness): CapsuleOccluder {
  return { id: `${player.id}:${part}`, record: player.id, owner: player.id, kind: 'capsule', ...round };
}

function heldBox(player: Player, instrument: Instrument, body: Body, floor: Millimetres): BoxOccluder[] {
  const box = instrumentModel(instrument.model)?.held;
  if (!box) return [];
  const { x, y } = placed(player, { x: box.left, y: -box.ahead });
  const foot = floor + heightFrom(box, body);
  return [
    {
      id: `${instrument.id}:held`,
      record: instrument.id,
      owner: player.id,
      kind: 'box',
      center: [x, y, foot + (box.bottom + box.top) / 2],
      size: [box.width, box.depth, box.top - box.bottom],
      yaw: player.facing,
    },
  ];
}

function heightFrom(box: HeldBox, body: Body): Millimetres {
  return box.from === 'floor' ? 0 : body.waistHeight;
}
