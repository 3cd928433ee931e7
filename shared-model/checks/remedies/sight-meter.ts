/** Measures again and again how well the house sees, on scenes that differ little. */

import { concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Scene } from '../scene.ts';
import { shareOfPlaces } from '../sightlines/house-figures.ts';
import { lossesByRecord } from '../sightlines/losses.ts';
import { createSightEngine } from '../sightlines/sight-engine.ts';
import { scenesOf } from './scenes.ts';

export interface SightMeter {
  /** Records that cover the player, worst first. */
  readonly covers: readonly string[];
  /** Share of places (0..1) that see the player well in a changed document; 0 when he is not there. */
  seenWell(changed: Document): number;
  /** The same without these records: more than any move, turn or lowering of them can bring. */
  seenWellWithout(records: ReadonlySet<string>): number;
}

/** For one player of a setup: only his window is looked at. */
export function createSightMeter(document: Document, setup: Id<'setup'>, player: string): SightMeter {
  const limit = concertOf(document).limits.seesWell;
  const scenes = scenesOf(document, setup);
  const base = onlyTarget(scenes.base, player);
  const engine = createSightEngine(base);
  const measured = (scene: Scene): number => {
    const { visible } = engine.update(scene);
    return scene.targets.length === 0 ? 0 : shareOfPlaces(visible, limit);
  };
  return {
    covers: (lossesByRecord(base)[0] ?? []).map(({ record }) => record),
    seenWell: (changed) => measured(onlyTarget(scenes.of(changed), player)),
    seenWellWithout: (records) =>
      measured({ ...base, occluders: base.occluders.filter(({ record }) => !records.has(record)) }),
  };
}

function onlyTarget(scene: Scene, player: string): Scene {
  return { ...scene, targets: scene.targets.filter(({ id }) => id === player) };
}
