/** What a picture is taken from: a point, a direction, and how much round it has to be in the picture. */

import type { Degrees } from '../../document/records.ts';
import type { Vec3 } from '../../geometry/frame.ts';

/**
 * The least that has to be in the picture, as tangents of the angles from the middle of the view: to the left and
 * down negative, to the right and up positive.
 */
export interface Field {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export interface View {
  /** The place of the house (`block/A-12`) or the player whose eye it is. */
  readonly subject: string;
  /** "C 12", or the player's name. */
  readonly label: string;
  readonly from: 'seat' | 'player';
  readonly eye: Vec3;
  /** The middle of the view, seen from above. */
  readonly facing: Degrees;
  /** How far the middle of the view is bent down. At 0 uprights stay upright in the picture. */
  readonly pitch: Degrees;
  readonly field: Field;
}

/** Heights of a picture as shares of its width: not so low that names find no room, nor higher than a screen. */
const LOWEST = 0.42;
const HIGHEST = 0.75;

/** How high a picture so many mm wide has to be to hold just what belongs into the view. */
export function pictureHeight({ field }: View, width: number): number {
  const share = (field.top - field.bottom) / (field.right - field.left);
  return width * Math.max(LOWEST, Math.min(HIGHEST, share));
}
