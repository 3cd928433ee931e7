/** What a place of the house sees, read from the report that is there already. */

import type { Report } from '#model/checks/report.ts';
import type { SeatPoint } from '#model/checks/scene.ts';
import { WORST_SEEN } from '#model/drawing/plan.ts';

export interface SeatFigure {
  readonly seat: SeatPoint;
  readonly player: string;
  readonly share: number;
}

/** Of the player that the house is coloured by, or of whom the place sees least; null when nobody plays. */
export function seatFigure({ sight }: Report, seatId: string, colouring: string): SeatFigure | null {
  const { seats, targets } = sight.scene;
  const row = seats.findIndex(({ id }) => id === seatId);
  const seat = seats[row];
  if (!seat) return null;
  let least: SeatFigure | null = null;
  targets.forEach(({ id }, column) => {
    const share = sight.visible[row * targets.length + column] ?? 1;
    if ((colouring === WORST_SEEN || id === colouring) && (!least || share < least.share)) {
      least = { seat, player: id, share };
    }
  });
  return least;
}
