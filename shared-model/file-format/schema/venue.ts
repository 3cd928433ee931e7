/** Schemas of the records that stay for the whole concert: the concert itself, its setups, the platform, the house. */

import * as v from 'valibot';
import type { PlayerPair } from '../../document/records.ts';
import {
  field,
  fields,
  idOf,
  lengthBetween,
  line,
  lines,
  listOf,
  oneOf,
  secondsUpTo,
  share,
  textLike,
  wholeBetween,
  yesOrNo,
} from '../fields.ts';
import {
  LONGEST_NAME,
  LONGEST_NOTES,
  MOST_CONTACTS,
  MOST_OUTLINE_CORNERS,
  MOST_PAIRS,
  MOST_VIEWS,
} from '../limits.ts';
import { common, outline, position, requiredFacing } from './common.ts';
import { t } from '../../words/say.ts';

const floorHeight = v.optional(
  field(
    'Floor height',
    'Height of its floor above the house floor, millimetres; of a block: of its front row.',
    lengthBetween(-10_000, 50_000),
  ),
  0,
);

const eyeHeightSchema = lengthBetween(300, 2500);

const limits = fields({
  seesWell: v.optional(
    field(
      'Sees well',
      'A place sees a player well when at least this share (0 to 1) of what there is to see of him is visible.',
      share(),
    ),
    0.9,
  ),
  houseShare: v.optional(
    field(
      'Share of the house',
      'At least this share (0 to 1) of the places must see each player well.',
      share(),
    ),
    0.75,
  ),
  edgeDistance: v.optional(
    field(
      'Distance to open edges',
      'Least distance from a player, chair or stand to an open edge, millimetres.',
      lengthBetween(0, 10_000),
    ),
    600,
  ),
  routeWidth: v.optional(
    field('Route width', 'Least width of a walking route, millimetres.', lengthBetween(0, 10_000)),
    915,
  ),
});

const contact = fields({
  name: v.optional(field('Name', 'Who it is.', line(LONGEST_NAME)), ''),
  role: v.optional(field('Role', 'What he is there for.', line(LONGEST_NAME)), ''),
  reachedAt: v.optional(field('Reached at', 'Telephone, mail or both.', line(LONGEST_NAME)), ''),
});

export const concert = fields({
  ...common('concert'),
  venue: v.optional(field('Venue', 'Where the concert is.', line(LONGEST_NAME)), ''),
  date: v.optional(
    field(
      'Date',
      'Date of the concert as YYYY-MM-DD, or empty.',
      textLike(
        /^(?:\d{4}-\d{2}-\d{2})?$/,
        () => t`give a date as YYYY-MM-DD, for instance 2027-03-14, or nothing`,
      ),
    ),
    '',
  ),
  revision: v.optional(field('Revision', 'Which state of the plan this is.', line(LONGEST_NAME)), ''),
  author: v.optional(field('Author', 'Who drew it.', line(LONGEST_NAME)), ''),
  units: v.optional(
    field(
      'Units',
      'Units that people read on screen and paper. The file itself is always in millimetres.',
      oneOf(['metric', 'imperial']),
    ),
    'metric',
  ),
  headsInFront: v.optional(
    field(
      'Heads in front',
      'Whether the heads of the rows in front count as obstacles to the view.',
      yesOrNo(),
    ),
    false,
  ),
  limits: v.optional(
    field(
      'Limits',
      'What the director asks for. The tool’s own cautions, not the demands of any code.',
      limits,
    ),
    {},
  ),
  contacts: v.optional(field('Contacts', 'Whom to call.', listOf(contact, 0, MOST_CONTACTS)), []),
  views: v.optional(
    field(
      'Views',
      'Places of the house whose views are printed: a seat as "block/A-12" (block, row and seat from 1), a single place by its id.',
      listOf(line(LONGEST_NAME), 0, MOST_VIEWS),
    ),
    [],
  ),
});

const pair = listOf(idOf<'player'>(), 2, 2) as unknown as v.GenericSchema<string[], PlayerPair>;

export const setup = fields({
  ...common('setup'),
  order: v.optional(field('Order', 'Place in the programme, from 1.', wholeBetween(1, 999)), 1),
  notes: v.optional(field('Notes', 'Remarks for the crew.', lines(LONGEST_NOTES)), ''),
  needNotSee: v.optional(
    field(
      'Need not see each other',
      'Pairs of players, each by its two ids, who may do without seeing each other; all others must.',
      listOf(pair, 0, MOST_PAIRS),
    ),
    [],
  ),
  variantOf: v.optional(
    field(
      'Variant of',
      'Id of the setup that this one is another version of; null: it is in the programme.',
      v.nullable(idOf<'setup'>()),
    ),
    null,
  ),
  changeTime: v.optional(
    field(
      'Change time',
      'Seconds there are to set it after what comes before; null: not known.',
      v.nullable(secondsUpTo(36_000)),
    ),
    null,
  ),
});

export const platform = fields({
  ...common('platform'),
  outline: outline(
    'Corners of the platform in order, either way round, without crossing itself. Edge 0 runs from the first ' +
      'corner to the second, and so on; the last edge closes the ring.',
  ),
  height: field(
    'Height',
    'Height of the platform’s floor above the house floor, millimetres.',
    lengthBetween(0, 10_000),
  ),
  openEdges: field(
    'Open edges',
    'Numbers, from 0, of the edges with an unguarded drop; an empty list when there are none.',
    listOf(wholeBetween(0, MOST_OUTLINE_CORNERS - 1), 0, MOST_OUTLINE_CORNERS),
  ),
});

export const door = fields({
  ...common('door'),
  edge: field(
    'Edge',
    'Number, from 0, of the platform’s edge that it is in.',
    wholeBetween(0, MOST_OUTLINE_CORNERS - 1),
  ),
  offset: field(
    'Offset',
    'Millimetres along the edge from its first corner to the near jamb.',
    lengthBetween(0, 1_000_000),
  ),
  width: field('Width', 'Clear width, millimetres.', lengthBetween(1, 100_000)),
  exit: field('Exit', 'Whether people may leave the platform here.', yesOrNo()),
  stepFree: v.optional(field('Step-free', 'Whether it can be passed without a step.', yesOrNo()), false),
});

const MOST_ROWS_OF_A_BLOCK = 200;
const seats = wholeBetween(0, 1000);

const aisle = fields({
  afterSeat: field(
    'After seat',
    'The aisle lies after this many seats, counted from the first seat of the row.',
    wholeBetween(1, 999),
  ),
  width: field('Width', 'Clear width, millimetres.', lengthBetween(1, 20_000)),
});

export const seatBlock = fields({
  ...common('seatBlock'),
  ...position,
  facing: v.optional(requiredFacing, 180),
  rows: field('Rows', 'Number of rows.', wholeBetween(1, MOST_ROWS_OF_A_BLOCK)),
  seatsPerRow: field(
    'Seats per row',
    'Seats in every row, or a list with one number a row from the front.',
    v.union(
      [seats, listOf(seats, 1, MOST_ROWS_OF_A_BLOCK)],
      () => t`give a whole number from 0 to 1000, or a list of such numbers, one a row`,
    ),
  ),
  seatPitch: field(
    'Seat pitch',
    'From the middle of a seat to the middle of the next, millimetres.',
    lengthBetween(100, 5000),
  ),
  rowDepth: field('Row depth', 'From a row to the next, millimetres.', lengthBetween(100, 10_000)),
  riser: v.optional(
    field(
      'Riser',
      'How much higher the floor of each row is than that of the row before it, millimetres.',
      lengthBetween(0, 2000),
    ),
    0,
  ),
  floor: floorHeight,
  curveRadius: v.optional(
    field(
      'Curve radius',
      '0: straight rows. Otherwise the radius of the front row about a centre before the seats, millimetres.',
      lengthBetween(0, 1_000_000),
    ),
    0,
  ),
  staggered: v.optional(
    field('Staggered', 'Whether every second row is shifted by half a seat.', yesOrNo()),
    false,
  ),
  aisles: v.optional(
    field('Aisles', 'Aisles from front to back through the block.', listOf(aisle, 0, 20)),
    [],
  ),
  frontRail: v.optional(
    field(
      'Front rail',
      'Height of a rail before the block above the floor of its front row, millimetres; 0: none.',
      lengthBetween(0, 2500),
    ),
    0,
  ),
  eyeHeight: v.optional(
    field('Eye height', 'Seated eye height above the floor of the row, millimetres.', eyeHeightSchema),
    1200,
  ),
  firstRow: v.optional(
    field(
      'First row',
      'Letter or number of the front row: "A" goes on with B, C.',
      textLike(
        /^(?:[A-Za-z]{1,2}|\d{1,3})$/,
        () => t`give one or two letters, or a number of up to three digits`,
      ),
    ),
    'A',
  ),
});

export const place = fields({
  ...common('place'),
  ...position,
  use: field('Use', 'Who or what looks from here.', oneOf(['standing', 'wheelchair', 'camera'])),
  floor: floorHeight,
  eyeHeight: field('Eye height', 'Height of the eye or lens above its floor, millimetres.', eyeHeightSchema),
});
