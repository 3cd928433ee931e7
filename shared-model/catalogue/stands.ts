/** Music stands. */

import type { Millimetres } from '../document/records.ts';
import { t } from '../words/say.ts';
import { COMMON_PRACTICE, finder, FROM_MEMORY, range, type Model, type Range } from './sources.ts';

export interface StandModel extends Model {
  readonly deskWidth: Millimetres;
  /** Along the slope, from the lip to the upper edge. */
  readonly deskHeight: Millimetres;
  /** Height of the lip above the floor. */
  readonly lip: Range;
  /** Of the desk from the horizontal, degrees. */
  readonly tilt: Range;
  /** Of the circle that the foot or tripod needs. */
  readonly baseRadius: Millimetres;
  readonly folds: boolean;
}

const ORCHESTRAL: StandModel = {
  id: 'orchestral',
  get name() {
    return t`Orchestral stand`;
  },
  deskWidth: 510,
  deskHeight: 340,
  lip: range(650, 850, 1200),
  tilt: range(10, 65, 90),
  baseRadius: 250,
  folds: false,
  source: FROM_MEMORY,
};

export const STAND_MODELS: readonly StandModel[] = [
  ORCHESTRAL,
  {
    ...ORCHESTRAL,
    id: 'orchestral-wide',
    get name() {
      return t`Orchestral stand with wings`;
    },
    deskWidth: 800,
    sourceOf: { deskWidth: COMMON_PRACTICE },
  },
  {
    id: 'folding',
    get name() {
      return t`Folding wire stand`;
    },
    deskWidth: 470,
    deskHeight: 250,
    lip: range(550, 850, 1250),
    tilt: range(10, 65, 90),
    baseRadius: 290,
    folds: true,
    source: FROM_MEMORY,
  },
  {
    id: 'folding-solid',
    get name() {
      return t`Folding stand with a solid desk`;
    },
    deskWidth: 480,
    deskHeight: 340,
    lip: range(600, 850, 1300),
    tilt: range(10, 65, 90),
    baseRadius: 310,
    folds: true,
    source: FROM_MEMORY,
  },
  {
    id: 'conductor',
    get name() {
      return t`Conductor's stand`;
    },
    deskWidth: 760,
    deskHeight: 510,
    lip: range(700, 900, 1200),
    tilt: range(0, 35, 80),
    baseRadius: 330,
    folds: false,
    source: FROM_MEMORY,
  },
  {
    id: 'quartet',
    get name() {
      return t`Quartet desk`;
    },
    deskWidth: 430,
    deskHeight: 300,
    lip: range(650, 700, 1100),
    tilt: range(30, 65, 80),
    baseRadius: 230,
    folds: false,
    source:
      'ideal desk 300 x 430, its lower edge 700 above the floor, tilted about 65°: quartet-stand design article, woodtools.nov.ru',
    sourceOf: { baseRadius: COMMON_PRACTICE, 'lip.least': COMMON_PRACTICE, 'lip.most': COMMON_PRACTICE },
  },
  {
    id: 'table-top',
    get name() {
      return t`Table-top stand, on a table`;
    },
    deskWidth: 450,
    deskHeight: 300,
    lip: range(700, 770, 1100),
    tilt: range(45, 65, 80),
    baseRadius: 180,
    folds: true,
    source: COMMON_PRACTICE,
  },
  {
    id: 'tablet',
    get name() {
      return t`Stand for a tablet`;
    },
    deskWidth: 290,
    deskHeight: 225,
    lip: range(600, 950, 1400),
    tilt: range(0, 65, 90),
    baseRadius: 280,
    folds: true,
    source: COMMON_PRACTICE,
  },
];

/** What a stand of an unknown model is taken for. */
export const USUAL_STAND = ORCHESTRAL;

export const standModel = finder(STAND_MODELS);
