/** Chairs, stools and benches for players. */

import type { Millimetres } from '../document/records.ts';
import { COMMON_PRACTICE, finder, FROM_MEMORY, range, type Model, type Range } from './sources.ts';

export interface SeatModel extends Model {
  /** Of the seat above the floor. */
  readonly height: Range;
  /** Footprint: across the sitter and along the way he looks. */
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly round: boolean;
  readonly back: boolean;
}

const ORCHESTRA_CHAIR: SeatModel = {
  id: 'orchestra-chair',
  name: 'Orchestra chair',
  height: range(430, 460, 490),
  width: 460,
  depth: 520,
  round: false,
  back: true,
  source: FROM_MEMORY,
};

export const SEAT_MODELS: readonly SeatModel[] = [
  ORCHESTRA_CHAIR,
  {
    ...ORCHESTRA_CHAIR,
    id: 'cello-chair',
    name: 'Cello chair',
    height: range(450, 490, 560),
    depth: 480,
    sourceOf: { height: COMMON_PRACTICE },
  },
  {
    ...ORCHESTRA_CHAIR,
    id: 'folding-chair',
    name: 'Folding chair',
    height: range(440, 440, 440),
    width: 450,
    depth: 470,
  },
  {
    ...ORCHESTRA_CHAIR,
    id: 'conductor-chair',
    name: "Conductor's chair",
    height: range(600, 750, 900),
    width: 520,
    depth: 560,
  },
  seat('piano-bench', 'Piano bench', range(450, 490, 570), [560, 340]),
  seat('duet-bench', 'Duet bench', range(450, 490, 570), [1000, 350]),
  seat('bench', 'Bench for two', range(430, 450, 470), [1100, 380]),
  { ...seat('drum-throne', 'Drum throne', range(430, 520, 650), [380, 380]), round: true },
  { ...seat('high-stool', 'High stool', range(600, 720, 850), [420, 420]), round: true },
  { ...seat('percussion-stool', 'Percussion stool', range(550, 700, 900), [400, 400]), round: true },
];

function seat(
  id: string,
  name: string,
  height: Range,
  [width, depth]: readonly [Millimetres, Millimetres],
): SeatModel {
  return { id, name, height, width, depth, round: false, back: false, source: FROM_MEMORY };
}

/** What a seat of an unknown model is taken for. */
export const USUAL_SEAT = ORCHESTRA_CHAIR;

export const seatModel = finder(SEAT_MODELS);
