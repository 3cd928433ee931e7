import { TURN_LIMITS } from '../reading/gaze.ts';
import {
  EDGE_ON,
  GREATEST_ANGLE,
  LEAST_LETTERING,
  LEAST_SPACE,
  MARGIN,
  SPACES_OF_STAFF,
  STAFF,
} from '../reading/published.ts';
import { staff } from '../sentence-parts.ts';
import { atMost } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import type { AboutPage, Teller } from './check-page.ts';
import { DISPLAY_ANGLE, GAZE, LETTERING, LIBRARIANS, LIBRARIANS_PAPER, OWN } from './cited.ts';

export function readingPage({ length }: Teller): AboutPage<'reading'> {
  return {
    id: 'reading',
    title: t`Reading: angle, distance, width of the row, size of the staves`,
    asks: t`Can the player read every page from where he sits or stands?`,
    computes: [
      t`From the eyes to each page as it lies on the desk: the distance to the nearest and the farthest line, and the angle between the line of sight and the upright on the page, at its middle and at the line that is worst off.`,
      t`How high a space of the staves looks, in minutes of arc, with the tilt of the page reckoned in; and how far eyes and head turn from the middle of a row of pages to its end.`,
      t`The printed size of the staves, if it is known, is compared with what orchestra librarians ask for. Where anyone may play, the small and the tall end are both looked at and the worse one is told.`,
    ],
    verdicts: [
      {
        code: 'reading.angle',
        severity: 'fail',
        when: t`The page is seen on edge or from behind (${EDGE_ON}° or more).`,
      },
      {
        code: 'reading.angle',
        severity: 'caution',
        when: t`The middle of the page is seen at more than ${GREATEST_ANGLE}°.`,
      },
      {
        code: 'reading.angle',
        severity: 'note',
        when: t`Only outer lines are seen at more than ${GREATEST_ANGLE}°.`,
      },
      {
        code: 'reading.turn',
        severity: 'caution',
        when: t`The row is so wide that the body turns (over ${TURN_LIMITS.head}° to one side).`,
      },
      { code: 'reading.turn', severity: 'note', when: t`The head turns (over ${TURN_LIMITS.eyes}°).` },
      { code: 'reading.staff', severity: 'caution', when: t`Staves are lower than ${staff(STAFF.least)}.` },
      {
        code: 'reading.staff',
        severity: 'caution',
        when: t`Two read from staves lower than ${staff(STAFF.good)}.`,
      },
      {
        code: 'reading.staff',
        severity: 'note',
        when: t`Staves are higher than ${staff(STAFF.most)}, which librarians avoid.`,
      },
      {
        code: 'reading.far',
        severity: 'caution',
        when: t`A space of the staves looks lower than ${atMost(LEAST_SPACE, 2)} minutes of arc.`,
      },
    ],
    figures: [
      { what: t`Steepest angle of a page`, value: `${GREATEST_ANGLE}°`, source: DISPLAY_ANGLE },
      {
        what: t`A glance, with the eyes, with the head: up to`,
        value: `${TURN_LIMITS.glance}°, ${TURN_LIMITS.eyes}°, ${TURN_LIMITS.head}°`,
        source: GAZE,
      },
      {
        what: t`Staves: least, most readable, to be avoided above`,
        value: `${staff(STAFF.least)}, ${staff(STAFF.good)}, ${staff(STAFF.most)}`,
        source: LIBRARIANS,
      },
      {
        what: t`Margin between the edge of a page and its lines`,
        value: length(MARGIN),
        source: LIBRARIANS_PAPER,
      },
      { what: t`Least height of lettering`, value: t`${LEAST_LETTERING} minutes of arc`, source: LETTERING },
      {
        what: t`Least height of one of the ${SPACES_OF_STAFF} spaces of a staff, taken from that of lettering`,
        value: t`${atMost(LEAST_SPACE, 2)} minutes of arc`,
        source: OWN,
      },
    ],
    settings: [
      {
        kind: 'form',
        form: 'stand',
        what: t`Height and tilt of the desk, pages side by side, size of the staves`,
      },
      { kind: 'form', form: 'player', what: t`How high the eyes are` },
      { kind: 'form', form: 'music', what: t`The staff size of a part, from its PDF` },
    ],
    unknown: [
      t`No published source gives a least angle for a music staff: the number is shown, and only its caution is this tool’s own.`,
      t`Light, print, glasses and eyesight are not known. Whoever reads there decides.`,
      t`Eyes are taken on the axis of the head, some centimetres behind where they are, so pages look a little farther away than they are.`,
    ],
    caution: null,
    related: ['seeing', 'tried'],
  };
}
