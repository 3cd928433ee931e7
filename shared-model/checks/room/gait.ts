/** How somebody gets along a way out: what he needs of it. */

import { concertOf, inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Millimetres, Player, Seat } from '../../document/records.ts';
import { WHEELCHAIR } from '../../catalogue/seats.ts';
import { SQUEEZE } from './first-step.ts';
import { HIGHEST_STEP, LEAST_STEP } from './level-edges.ts';
import { CLEAR_WIDTH, PINCH_WIDTH } from './pinch-points.ts';

export interface Gait {
  /** On wheels: no level and no exit with a step will do, and nobody goes sideways. */
  readonly onWheels: boolean;
  /** Least width asked for. */
  readonly asked: Millimetres;
  /** Width that will do within the first step out of his own place. */
  readonly squeeze: Millimetres;
  /** Over the edge of a level higher than this he does not go. */
  readonly highestStep: Millimetres;
}

/** As wide as the director asks for. */
export function onFoot(document: Document): Gait {
  const asked = concertOf(document).limits.routeWidth;
  return { onWheels: false, asked, squeeze: SQUEEZE, highestStep: HIGHEST_STEP };
}

/** Up and down the edge of any level, where there is no other way. */
export function climbing(document: Document): Gait {
  return { ...onFoot(document), highestStep: Infinity };
}

/**
 * As the director asks for, and no less than 36 in (915 mm); 32 in (815 mm) will do over at most 24 in (610 mm), which is
 * what the first step is taken for (ADA/ABA 403.5.1).
 */
export function onWheels(document: Document): Gait {
  const asked = Math.max(concertOf(document).limits.routeWidth, CLEAR_WIDTH);
  return { onWheels: true, asked, squeeze: PINCH_WIDTH, highestStep: LEAST_STEP };
}

/**
 * Who has to get to his place in a wheelchair: players who use one, and wheelchairs set where no player sits, for
 * whoever else has to be there (who turns pages, speaks, works the stage).
 */
export function wheelchairUsers(document: Document, setup: Id<'setup'>): readonly (Player | Seat)[] {
  return [
    ...inSetup(document, setup, 'player').filter(({ mobility }) => mobility === 'wheelchair'),
    ...inSetup(document, setup, 'seat').filter(({ model }) => model === WHEELCHAIR.id),
  ];
}
