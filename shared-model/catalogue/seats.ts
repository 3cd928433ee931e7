/** Chairs, stools and benches for players. */

import type { Millimetres, Point } from '../document/records.ts';
import { t } from '../words/say.ts';
import { COMMON_PRACTICE, finder, FROM_MEMORY, range, type Model, type Range } from './sources.ts';

export interface SeatModel extends Model {
  /** Of the seat above the floor. */
  readonly height: Range;
  /** Footprint: across the sitter and along the way he looks. */
  readonly width: Millimetres;
  readonly depth: Millimetres;
  readonly round: boolean;
  readonly back: boolean;
  /** Where its footprint is no rectangle about the sitter's axis: corners, the sitter looking along -y. */
  readonly outline?: readonly Point[];
}

/** ADA Standards 1991, appendix, figure A3: a wheelchair with a large man in it. */
const FIGURE_A3 = 'ADA Standards 1991, figure A3';
/** Over the rear wheels, over the footrests, and from the back of the wheels to the toes. */
const [OVER_WHEELS, OVER_FOOTRESTS, TO_TOES] = [660, 455, 1065 + 150];
/** How far the back of the wheels lies behind the sitter's axis, and how long the wheels are. Common practice, no source. */
const [BEHIND, WHEELS] = [400, 650];

/** What its user sits in; `width` and `depth` are those of the outline. */
export const WHEELCHAIR: SeatModel = {
  id: 'wheelchair',
  get name() {
    return t`Wheelchair`;
  },
  height: range(400, 485, 560),
  width: OVER_WHEELS,
  depth: TO_TOES,
  round: false,
  back: true,
  outline: wheelchairOutline(),
  source: FIGURE_A3,
  sourceOf: { height: `${FIGURE_A3}, 485; its range ${COMMON_PRACTICE}` },
};

/** Wide over the wheels, narrower at the footrests. */
function wheelchairOutline(): Point[] {
  const [wheel, foot, toes] = [OVER_WHEELS / 2, OVER_FOOTRESTS / 2, BEHIND - TO_TOES];
  return [
    { x: -wheel, y: BEHIND },
    { x: -wheel, y: BEHIND - WHEELS },
    { x: -foot, y: BEHIND - WHEELS },
    { x: -foot, y: toes },
    { x: foot, y: toes },
    { x: foot, y: BEHIND - WHEELS },
    { x: wheel, y: BEHIND - WHEELS },
    { x: wheel, y: BEHIND },
  ];
}

const ORCHESTRA_CHAIR: SeatModel = {
  id: 'orchestra-chair',
  get name() {
    return t`Orchestra chair`;
  },
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
    get name() {
      return t`Cello chair`;
    },
    height: range(450, 490, 560),
    depth: 480,
    sourceOf: { height: COMMON_PRACTICE },
  },
  {
    ...ORCHESTRA_CHAIR,
    id: 'folding-chair',
    get name() {
      return t`Folding chair`;
    },
    height: range(440, 440, 440),
    width: 450,
    depth: 470,
  },
  {
    ...ORCHESTRA_CHAIR,
    id: 'conductor-chair',
    get name() {
      return t`Conductor's chair`;
    },
    height: range(600, 750, 900),
    width: 520,
    depth: 560,
  },
  bench('piano-bench', () => t`Piano bench`, { height: range(450, 490, 570), width: 560, depth: 340 }),
  bench('duet-bench', () => t`Duet bench`, { height: range(450, 490, 570), width: 1000, depth: 350 }),
  bench('bench', () => t`Bench for two`, { height: range(430, 450, 470), width: 1100, depth: 380 }),
  stool('drum-throne', () => t`Drum throne`, { height: range(430, 520, 650), diameter: 380 }),
  stool('high-stool', () => t`High stool`, { height: range(600, 720, 850), diameter: 420 }),
  stool('percussion-stool', () => t`Percussion stool`, { height: range(550, 700, 900), diameter: 400 }),
  WHEELCHAIR,
];

function bench(
  id: string,
  name: () => string,
  measures: Pick<SeatModel, 'height' | 'width' | 'depth'>,
): SeatModel {
  return {
    id,
    get name() {
      return name();
    },
    ...measures,
    round: false,
    back: false,
    source: FROM_MEMORY,
  };
}

interface StoolSize {
  readonly height: Range;
  readonly diameter: Millimetres;
}

function stool(id: string, name: () => string, { height, diameter }: StoolSize): SeatModel {
  return {
    id,
    get name() {
      return name();
    },
    height,
    width: diameter,
    depth: diameter,
    round: true,
    back: false,
    source: FROM_MEMORY,
  };
}

/** What a seat of an unknown model is taken for. */
export const USUAL_SEAT = ORCHESTRA_CHAIR;

export const seatModel = finder(SEAT_MODELS);
