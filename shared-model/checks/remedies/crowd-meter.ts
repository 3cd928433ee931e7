/** Whether a change takes a player from the house's view. */

import { concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Scene } from '../scene.ts';
import { shareOfPlaces, sharesOf } from '../sightlines/house-figures.ts';
import { createSightEngine } from '../sightlines/sight-engine.ts';
import { scenesOf } from './scenes.ts';

export interface CrowdMeter {
  /** Somebody is seen well from too small a share of the places, and from a smaller one than before. */
  losesSight(changed: Document): boolean;
}

/** A share of the places that is lost without anybody minding, where too few saw him well already. */
const NOTICED = 0.01;

/** For all players of a setup. */
export function createCrowdMeter(document: Document, setup: Id<'setup'>): CrowdMeter {
  const { seesWell, houseShare } = concertOf(document).limits;
  const scenes = scenesOf(document, setup);
  const engine = createSightEngine(scenes.base);
  const figures = (scene: Scene, visible: Float64Array): number[] =>
    scene.targets.map((_, target) => shareOfPlaces(sharesOf(scene, visible, target), seesWell));
  const before = figures(scenes.base, engine.visible);
  return {
    losesSight(changed) {
      const scene = scenes.of(changed);
      return figures(scene, engine.update(scene).visible).some((share, target) => {
        const then = before[target] ?? 0;
        return share < houseShare && share < then - (then < houseShare ? NOTICED : 0);
      });
    },
  };
}
