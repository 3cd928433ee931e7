/** Whether a change takes a player from the house's view. */

import { concertOf, type Document } from '../../document/document.ts';
import type { Scene } from '../scene.ts';
import { shareOfPlaces, sharesOf } from '../sightlines/house-figures.ts';
import { createSightEngine } from '../sightlines/sight-engine.ts';

export interface CrowdMeter {
  /** In this scene somebody is seen well from too small a share of the places, and from a smaller one than before. */
  losesSight(changed: Scene): boolean;
}

/** A share of the places that is lost without anybody minding, where too few saw him well already. */
const NOTICED = 0.01;

/** For all players of a scene. */
export function createCrowdMeter(document: Document, base: Scene): CrowdMeter {
  const { seesWell, houseShare } = concertOf(document).limits;
  const engine = createSightEngine(base);
  const figures = (scene: Scene, visible: Float64Array): number[] =>
    scene.targets.map((_, target) => shareOfPlaces(sharesOf(scene, visible, target), seesWell));
  const before = figures(base, engine.visible);
  return {
    losesSight: (changed) =>
      figures(changed, engine.update(changed).visible).some((share, target) => {
        const then = before[target] ?? 0;
        return share < houseShare && share < then - (then < houseShare ? NOTICED : 0);
      }),
  };
}
