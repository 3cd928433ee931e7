/** Clearance of one row over another, both seen from the side, and how the handbooks judge it. */

import type { Millimetres } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { cValue, riserForC, type RowPair } from './c-value.ts';

/** A point of the upright plane: distance from the focus grows with `out`. */
export interface PlaneSpot {
  readonly out: Millimetres;
  readonly z: Millimetres;
}

/** Clearances that the literature names, mm. */
export const NAMED_CLEARANCES = [60, 90, 120] as const;

export interface NeededRiser {
  readonly clearance: Millimetres;
  /** From the front eye up to the rear eye. */
  readonly riser: Millimetres;
}

/** Of a rear eye over a front eye; `RowPair` has D, R and T, all of the front eye. */
export interface RowClearance extends RowPair {
  /** Name of the row in front. */
  readonly over: string;
  /** N: how much higher the rear eye is, over however many rows lie between. */
  readonly riser: Millimetres;
  /** C: how far above the front eye the rear line of sight passes. */
  readonly clearance: Millimetres;
  readonly needed: readonly NeededRiser[];
}

export interface Eyes {
  readonly front: PlaneSpot;
  readonly rear: PlaneSpot;
  readonly focus: PlaneSpot;
}

/** Null when the focus does not lie before the front eye, or the rear eye not behind it. */
export function clearanceOver(over: string, { front, rear, focus }: Eyes): RowClearance | null {
  const pair: RowPair = {
    distance: front.out - focus.out,
    height: front.z - focus.z,
    rowDepth: rear.out - front.out,
  };
  if (!(pair.distance > 0 && pair.rowDepth > 0)) return null;
  const riser = rear.z - front.z;
  return {
    over,
    ...pair,
    riser,
    clearance: cValue(pair, riser),
    needed: NAMED_CLEARANCES.map((clearance) => ({ clearance, riser: riserForC(pair, clearance) })),
  };
}

export interface ClearanceBand {
  /** Least C of the band, mm. */
  readonly from: Millimetres;
  /** How somebody sees with it. */
  readonly words: string;
  readonly source: string;
  /** `quoted`: read as somebody else quotes it. */
  readonly standing: 'published' | 'quoted';
}

/** From poor to excellent. They judge a row over the head in line before it. */
export const CLEARANCE_BANDS: readonly [
  ClearanceBand,
  ClearanceBand,
  ClearanceBand,
  ClearanceBand,
  ClearanceBand,
] = [
  {
    from: -Infinity,
    standing: 'quoted',
    get words() {
      return t`poor`;
    },
    get source() {
      return t`an article for architects after FIFA, as quoted`;
    },
  },
  fromWorksheet(60, () => t`between the heads in front`),
  fromWorksheet(90, () => t`well, with the head tilted back`),
  fromWorksheet(120, () => t`optimal`),
  fromWorksheet(150, () => t`even over hats`),
];

function fromWorksheet(from: Millimetres, sight: () => string): ClearanceBand {
  return {
    from,
    standing: 'published',
    get words() {
      return sight();
    },
    get source() {
      return t`P. Shepherd, "Sightlines", University of Bath, 2012, for stadiums`;
    },
  };
}

export type ClearanceLevel = 0 | 1 | 2 | 3 | 4;

/** A clearance this near below a bound counts as the bound. */
const ROUNDING = 1e-9;

/** Which of the bands a clearance C (mm) falls in. */
export function clearanceLevel(clearance: Millimetres): ClearanceLevel {
  let level: ClearanceLevel = 0;
  CLEARANCE_BANDS.forEach(({ from }, index) => {
    if (clearance >= from - ROUNDING) level = index as ClearanceLevel;
  });
  return level;
}
