/**
 * A player as a plain figure that says at a glance who plays what, and which way he looks: as broad and as high as the
 * body that the sight check counts, with arms and legs, which it leaves out.
 */

import type { Millimetres, Player } from '../../../document/records.ts';
import { radians } from '../../../geometry/frame.ts';
import { floorUnder, placeOn, type ViewContext } from '../context.ts';
import { limb, loft, type Part, type Place, type Solid } from '../mesh.ts';
import { armParts } from './arms.ts';
import { chairParts } from './chairs.ts';
import { playingOf } from './playing.ts';
import { buildOf, hipHeight, sectionAngles, trunkPart, type Build } from './trunk.ts';

export function playerSolid(context: ViewContext, player: Player): Solid {
  const place = placeOn(player, floorUnder(context, player));
  const build = buildOf(player);
  const playing = playingOf(context, player, build);
  return {
    subject: player.id,
    parts: [
      ...(player.chair ? chairParts(context, player.chair, place) : []),
      ...legParts(context, build, place),
      ...armParts(context, build, playing.hands, place),
      trunkPart(context.tints, build, place),
      ...headParts(context, build, place),
      ...playing.parts(place),
    ],
  };
}

/** Latitudes of the sections through a head, about an axis that leans back: from the hairline up it is hair. */
const LATITUDES = [-80, -60, -40, -20, 0, 20, 40, 60, 80];
const HAIRLINE = 0;
const LEAN = (40 * Math.PI) / 180;

function headParts({ tints }: ViewContext, { body }: Build, place: Place): Part[] {
  const [rx, ry, rz] = [body.headBreadth / 2, body.headLength / 2, HEAD_HEIGHT / 2];
  const z = body.crown - rz;
  const [leanSine, leanCosine] = [Math.sin(LEAN), Math.cos(LEAN)];
  const rings = LATITUDES.map((latitude) => {
    const [c, s] = [Math.cos(radians(latitude)), Math.sin(radians(latitude))];
    return sectionAngles.map((angle) => {
      const [across, back] = [c * Math.cos(angle), c * Math.sin(angle)];
      return place(
        rx * across,
        ry * (s * leanSine + back * leanCosine),
        z + rz * (s * leanCosine - back * leanSine),
      );
    });
  });
  const neck = limb(place(0, 8, body.shoulderHeight - 30), place(0, 4, z - rz * 0.5), NECK, tints.skin);
  const nose = limb(place(0, -ry * 0.93, z + 6), place(0, -ry - 9, z - 26), [8, 13], tints.skin);
  return [
    neck,
    loft(rings, (ring) => ((LATITUDES[ring] ?? 90) >= HAIRLINE ? tints.hair : tints.skin)),
    { ...nose, bare: true },
  ];
}

/** Chin to crown. From memory: an eighth of the stature and a little. */
export const HEAD_HEIGHT = 232;

/** Radius of a neck, from memory. */
const NECK = 52;

function legParts(context: ViewContext, build: Build, place: Place): Part[] {
  return [1, -1].flatMap((side) =>
    build.seat === null
      ? standingLeg(context, build, place, side)
      : sittingLeg(context, build.seat, place, side),
  );
}

function standingLeg({ tints }: ViewContext, { body }: Build, place: Place, side: number): Part[] {
  const hip = hipHeight(body);
  const leg = limb(place(side * 84, 0, hip - 10), place(side * 104, 12, 85), [92, 54], tints.trousers);
  return [shoe(tints.shoe, place, [side * 105, 0]), leg];
}

function sittingLeg({ tints }: ViewContext, seat: Millimetres, place: Place, side: number): Part[] {
  const knee = place(side * 150, -430, seat + 62);
  const shin = limb(knee, place(side * 150, -415, 85), [64, 48], tints.trousers);
  const thigh = limb(place(side * 100, -40, seat + 80), knee, [84, 66], tints.trousers);
  return [
    shoe(tints.shoe, place, [side * 150, -420]),
    { ...shin, joined: [thigh] },
    { ...thigh, joined: [shin] },
  ];
}

function shoe(fill: string, place: Place, [x, y]: readonly [number, number]): Part {
  return limb(place(x, y + 40, 42), place(x * 1.15, y - 165, 34), [42, 32], fill);
}
