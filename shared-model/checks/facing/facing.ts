/** Whether players who must see each other do, how far they have to turn for it, and how far they face from the house. */

import { inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Degrees, Player } from '../../document/records.ts';
import { normaliseFacing } from '../../geometry/frame.ts';
import { eyesOf } from '../reading/eyes.ts';
import { buildScene } from '../scene/build-scene.ts';
import type { Occluder } from '../scene.ts';
import { glanceAt, readingGazes, type Glance } from './bearings.ts';
import { eyeContact, solidsOf, type EyeContact } from './blockers.ts';
import { pairsToSee } from './pairs.ts';

export interface PairFacing extends EyeContact {
  readonly players: readonly [Id<'player'>, Id<'player'>];
  /** The first player's look at the second, and back. */
  readonly glances: readonly [Glance, Glance];
}

export interface HouseAngle {
  readonly player: Id<'player'>;
  /** Between where he faces and straight at the house: 0 to 180, in profile at 90. */
  readonly angle: Degrees;
}

export interface FacingResults {
  /** Every pair that must see each other. */
  readonly pairs: readonly PairFacing[];
  /** Every player of the setup. */
  readonly toHouse: readonly HouseAngle[];
}

/** `occluders`: those of the setup's scene, if it is built already. */
export function facingResults(
  document: Document,
  setup: Id<'setup'>,
  occluders: readonly Occluder[] = buildScene(document, setup).occluders,
): FacingResults {
  const solids = solidsOf(occluders);
  const gazes = readingGazes(document, setup);
  const players = inSetup(document, setup, 'player');
  const eyes = new Map(players.map((player) => [player.id, eyesOf(document, setup, player)]));
  const glance = (looker: Player, partner: Player): Glance =>
    glanceAt(looker, partner, gazes.get(looker.id) ?? []);
  return {
    pairs: pairsToSee(document, setup).map(([a, b]) => ({
      players: [a.id, b.id],
      glances: [glance(a, b), glance(b, a)],
      ...eyeContact(solids, [a.id, b.id], [eyes.get(a.id) ?? [], eyes.get(b.id) ?? []]),
    })),
    toHouse: players.map(({ id, facing }) => ({ player: id, angle: Math.abs(normaliseFacing(facing)) })),
  };
}
