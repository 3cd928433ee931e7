/** How large something looks: minutes of arc from a height and a distance, and back. */

import { degrees, radians } from '../../geometry/frame.ts';

const MINUTES = 60;

/** Minutes of arc under which `height` appears at `distance`, square to the line of sight; any one unit of length. */
export function minutesOfArc(height: number, distance: number): number {
  return degrees(2 * Math.atan2(height / 2, distance)) * MINUTES;
}

/** The height that appears under so many minutes of arc at `distance`, in its unit. */
export function heightSeenUnder(minutes: number, distance: number): number {
  return 2 * distance * Math.tan(radians(minutes / MINUTES) / 2);
}
