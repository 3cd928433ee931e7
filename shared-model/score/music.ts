/** A piece as it is performed; the document keeps it. */

export type { Bar, BarRange, BarSilence, Music, PageStart, Part, Tempo } from '../document/music.ts';

/** Until the first tempo mark. Common practice of player programs, no source. */
export const ASSUMED_TEMPO = 120;
