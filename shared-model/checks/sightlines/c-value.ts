/**
 * The classical clearance of one row over the row before it. Formula: NRICH "Arsenal Collection: Stadium Sightline"
 * (University of Cambridge, no. 8823) and P. Shepherd, "Sightlines" (University of Bath, 2012). Any one unit of
 * length for all.
 */

/** Two neighbouring rows and the point they look at. Distance and height are those of the eye in the front row. */
export interface RowPair {
  /** D: horizontally from the front eye to the point of focus. */
  readonly distance: number;
  /** R: of the front eye above the point of focus; negative when it looks up. */
  readonly height: number;
  /** T: from row to row. */
  readonly rowDepth: number;
}

/** C: how far above the front eye the rear person's line of sight passes. `riser` is N, the step between the rows. */
export function cValue({ distance, height, rowDepth }: RowPair, riser: number): number {
  return (distance * (riser + height)) / (distance + rowDepth) - height;
}

/** N: the step between the rows that gives a wanted clearance C. */
export function riserForC({ distance, height, rowDepth }: RowPair, clearance: number): number {
  return ((height + clearance) * (distance + rowDepth)) / distance - height;
}
