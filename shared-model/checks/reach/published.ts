/** Every constant of the reach check with its source, in one place. */

const INCH = 25.4;

/** One time measurement unit, s. Source: MTM-1 data card (MTM Association e.V., 2019). */
export const TMU = 0.036;

/** A: fixed place. B: a single object whose place varies slightly. C: a precise grasp, or one out of several. */
export type ReachCase = 'A' | 'B' | 'C';

interface ReachRow extends Readonly<Record<ReachCase, number>> {
  readonly distance: number;
}

const row = (inches: number, A: number, B: number, C: number): ReachRow => ({
  distance: inches * INCH,
  A,
  B,
  C,
});

/**
 * MTM-1 Reach: TMU by the way of the hand, mm. Source: the MTM-1 table in two independent copies that agree;
 * its column for very small objects (D) is the same as C.
 */
export const REACH_TABLE: readonly ReachRow[] = [
  row(1, 2.5, 2.5, 3.6),
  row(4, 6.1, 6.4, 8.4),
  row(6, 7.0, 8.6, 10.1),
  row(10, 8.7, 11.5, 12.9),
  row(12, 9.6, 12.9, 14.2),
  row(16, 11.4, 15.8, 17.0),
  row(20, 13.1, 18.6, 19.8),
  row(24, 14.9, 21.5, 22.5),
  row(30, 17.5, 25.8, 26.7),
];

/** TMU for every mm beyond the table: 0.4 (A) or 0.7 (B, C) an inch. Source: the same table. */
export const REACH_BEYOND: Readonly<Record<ReachCase, number>> = {
  A: 0.4 / INCH,
  B: 0.7 / INCH,
  C: 0.7 / INCH,
};

/** TMU of a turn of the body: done when the leading leg lands, or with both. Source: MTM-1 data card (TBC1, TBC2). */
export const TURN_BODY = { leading: 18.6, both: 37.2 } as const;

/** TMU of a sidestep of 300 mm and of every mm more. Source: MTM-1 data card (SS-C1, SS-C2). */
export const SIDESTEP = {
  length: 300,
  leading: { base: 17.0, beyond: 0.02 },
  both: { base: 34.1, beyond: 0.04 },
} as const;

/** TMU to bend so far that a hand gets below the knee, and to rise again. MTM-1, from memory. */
export const BEND_AND_RISE = 29.0 + 31.9;

/** TMU to get up from a seat and to sit down. MTM-1, from memory. */
export const STAND_AND_SIT = 43.4 + 34.7;

/**
 * Walking speeds, m/s. Comfortable gait is faster (1.27 to 1.46: Bohannon, Age Ageing 26 (1997) 15-19), but those who
 * measured it warn that it does not hold for short walks from a stand; so `usual` is the pedestrian design speed of
 * 3.5 ft/s (TxDOT Roadway Design Manual), `brisk` the usual outdoor pace, `slow` the slow one (Murtagh et al., Sports Med 2020).
 */
export const WALKING = { brisk: 1.31, usual: 1.0668, slow: 0.82 } as const;

/** Seconds to get going. Common practice, no source. */
export const START = { brisk: 0.2, usual: 0.5, slow: 1 } as const;

/** How much longer a quiet and careful motion on a platform may take than the table's. Common practice, no source. */
export const CARE = 1.5;

/** What pushing the shoulder forward adds to a reach, mm. Source: NUREG-0700 rev 3 table 11.4, 56 to 58 mm. */
export const SHOULDER_PUSH = 57;

/** How far the trunk leans for a reach, degrees, when nobody says otherwise. ISO 11226 trunk 0-20°, from memory. */
export const TRUNK_LEAN = 20;

/** How far one step brings the shoulder, mm; a pace of MTM-1 is 864. Common practice, no source. */
export const STEP = 600;

/** Lowest that the shoulders come when somebody stoops or squats to pick a thing up, mm. Common practice, no source. */
export const STOOPED_SHOULDERS = 700;

/** Where the hands are while playing: this far before the axis, halfway from waist to shoulders. Common practice, no source. */
export const HANDS_AHEAD = 300;

/** Nobody walks up closer to a thing than this, in plan, mm. Common practice, no source. */
export const STAND_OFF = 250;
