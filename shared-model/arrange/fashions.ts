/**
 * In how many ways a shape is set: how far it is open, how much room there is between people, how far their pages are
 * turned from the house, how low and flat the desks are. The first of each is the usual one; the others are what is tried
 * so that the house sees past the desks and the players see each other. Common practice, no source.
 */

import type { Degrees, Millimetres } from '../document/records.ts';
import type { Shape } from './shapes.ts';

export interface Fashion {
  /**
   * How far an arc or a horseshoe is open, degrees; by how much the middle of a row stands farther upstage than its ends,
   * mm; by how much each facing pair sits farther apart than the pair behind it, mm.
   */
  readonly open: number;
  /** Nobody's page lies nearer to his line to the house than this; in facing pairs it lies just there, and 90 is opposite. */
  readonly aside: Degrees;
  /** How much more room than they need they have between them: 1 is none. */
  readonly roomy: number;
  readonly desk: DeskFashion;
  /** Farther upstage than the edge asks for. */
  readonly back: Millimetres;
  readonly piano: PianoFashion;
}

/** A grand behind the others, its keyboard to stage right. */
export interface PianoFashion {
  /** How far its tail is turned upstage, so that it lies less before the pianist. */
  readonly turned: Degrees;
  /** By how much the others stand farther towards stage left, so that they lie less before the pianist. */
  readonly clear: Millimetres;
}

export interface DeskFashion {
  /** Below where the reader would have the lip, as far as the stand goes down. */
  readonly lower: Millimetres;
  /** From the horizontal; null: as its model usually is. */
  readonly tilt: Degrees | null;
}

const USUAL_DESK: DeskFashion = { lower: 0, tilt: null };
const DESKS: readonly DeskFashion[] = [USUAL_DESK, { lower: 200, tilt: 30 }, { lower: 200, tilt: 20 }];
const USUAL_PIANO: PianoFashion = { turned: 0, clear: 0 };
const PIANOS: readonly PianoFashion[] = [
  USUAL_PIANO,
  { turned: 15, clear: 700 },
  { turned: 25, clear: 1100 },
];
const ROOMY = [1, 1.25, 1.5];

interface Choices {
  readonly open: readonly number[];
  readonly aside: readonly Degrees[];
}

const CHOICES: Readonly<Record<Shape, Choices>> = {
  arc: { open: [130, 110, 180], aside: [0, 45, 60, 75] },
  row: { open: [0, 300, 600], aside: [0, 45, 60, 75] },
  horseshoe: { open: [200, 190, 240], aside: [0, 45, 60, 75] },
  pairs: { open: [0, 800, 1600], aside: [90, 75, 60] },
};

export function usualFashion(shape: Shape): Fashion {
  const [open = 0] = CHOICES[shape].open;
  const [aside = 0] = CHOICES[shape].aside;
  return { open, aside, roomy: 1, desk: USUAL_DESK, back: 0, piano: USUAL_PIANO };
}

/** A fashion, and how far it is from the usual one: of two that do as well the less odd one is taken. */
export interface OddFashion {
  readonly fashion: Fashion;
  readonly oddness: number;
}

/** All that are tried of a shape, the usual one first; a piano is set in several ways, too. */
export function fashionsOf(shape: Shape, withPiano = false): OddFashion[] {
  const { open, aside } = CHOICES[shape];
  const pianos = withPiano ? PIANOS : [USUAL_PIANO];
  // As many again for each way the piano is set, so less is tried of what matters less to a few.
  const spaces = withPiano ? ROOMY.slice(0, 2) : ROOMY;
  const desks = withPiano ? DESKS.slice(0, 2) : DESKS;
  const all = open.flatMap((open, a) =>
    aside.flatMap((aside, b) =>
      spaces.flatMap((roomy, c) =>
        desks.flatMap((desk, d) =>
          pianos.map((piano, e) => ({
            fashion: { open, aside, roomy, desk, back: 0, piano },
            oddness: a + b + c + d + e,
          })),
        ),
      ),
    ),
  );
  return all.sort((one, other) => one.oddness - other.oddness);
}

const BACK: Millimetres = 800;

/** The same farther upstage, as it makes way before doors at the front; null: it is there already. */
export function fartherBack({ fashion, oddness }: OddFashion): OddFashion | null {
  return fashion.back === 0 ? { fashion: { ...fashion, back: BACK }, oddness: oddness + 1 } : null;
}
