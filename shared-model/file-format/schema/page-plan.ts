/** Schema of the page plan of a setup. */

import * as v from 'valibot';
import { MOST_PLAYED_BARS } from '../../score/limits.ts';
import { field, fields, idOf, listOf, numberBetween, oneOf, wholeBetween, type Advice } from '../fields.ts';
import {
  MOST_LEAVES,
  MOST_PAGE,
  MOST_PAGES_ACROSS,
  MOST_PINS,
  MOST_STATIONS,
  MOST_TURNS,
} from '../limits.ts';
import { common } from './common.ts';
import { t } from '../../words/say.ts';

const PLACE_UNIT = 'bars as performed: 47.25 is a quarter through the 48th bar that is played';

const place = numberBetween(
  0,
  MOST_PLAYED_BARS,
  () => t`give a place from 0 to ${MOST_PLAYED_BARS} bars as performed`,
);
const pageOrTurn: Advice = () => t`give "page" or "turn"`;
const state = wholeBetween(0, MOST_LEAVES);
const page = wholeBetween(1, MOST_PAGE);
const side = v.picklist([0, 1], () => t`give 0 or 1`);

const atStation = { station: field('Stand', 'Id of the stand.', idOf<'stand'>()) };
const byPlayer = { player: field('Player', 'Id of the player who turns.', idOf<'player'>()) };

const view = listOf(v.nullable(page), 0, MOST_PAGES_ACROSS);

const station = fields({
  ...atStation,
  kind: field('Binding', 'How its pages are bound.', oneOf(['loose', 'book', 'concertina', 'ridge'])),
  leaves: field('Leaves', 'Leaves that can be turned; there is one state more.', state),
  pagesAcross: field(
    'Pages across',
    'Pages side by side, for each side of the stand.',
    listOf(wholeBetween(0, MOST_PAGES_ACROSS), 1, 2),
  ),
  stackSide: field(
    'Stack side',
    'Of a ridge booklet the side on which all leaves lie at first; otherwise 0.',
    side,
  ),
  views: field(
    'Views',
    'For each side, for each state: pages from left to right as the reader sees them; null: a blank.',
    listOf(listOf(view, 1, MOST_LEAVES + 1), 1, 2),
  ),
});

const turn = fields({
  ...atStation,
  ...byPlayer,
  hand: field('Hand', 'The hand that turns.', oneOf(['left', 'right'])),
  place: field('Place', `When the hand leaves, in ${PLACE_UNIT}.`, place),
  fromState: field('From state', 'Leaves turned before.', state),
  toState: field('To state', 'Leaves turned afterwards.', state),
});

const pagePin = fields({
  kind: field('Kind', 'A page that stays where it is.', v.literal('page', pageOrTurn)),
  ...atStation,
  side: field('Side', 'Side of the stand.', side),
  state: field('State', 'Leaves turned.', state),
  slot: field(
    'Slot',
    'From 0 at the reader’s left; null: anywhere in the view.',
    v.nullable(wholeBetween(0, MOST_PAGES_ACROSS - 1)),
  ),
  page: field('Page', 'The page that has to stand there.', page),
});

const turnPin = fields({
  kind: field('Kind', 'A turn that stays.', v.literal('turn', pageOrTurn)),
  ...atStation,
  ...byPlayer,
  from: field('From', `The turn lies after this, in ${PLACE_UNIT}.`, place),
  to: field('To', `The turn is over before this, in ${PLACE_UNIT}.`, place),
});

export const pagePlan = fields({
  ...common('pagePlan'),
  setup: field('Setup', 'Id of the setup whose plan it is.', idOf<'setup'>()),
  score: field('Score', 'Id of the music whose pages and bars it names.', idOf<'score'>()),
  stations: field(
    'Stands',
    'The stands that hold paper, and which page is where.',
    listOf(station, 0, MOST_STATIONS),
  ),
  turns: field('Turns', 'Who turns where and when.', listOf(turn, 0, MOST_TURNS)),
  pins: v.optional(
    field(
      'Pins',
      'What another planning has to keep.',
      listOf(v.variant('kind', [pagePin, turnPin], pageOrTurn), 0, MOST_PINS),
    ),
    [],
  ),
});
